package crowdline.telemetry.serial;

/**
 * How a port with buttons stands.
 *
 * @param text in one phrase; with what to do where it cannot be opened
 */
public record ButtonStatus(State state, String text) {
    /** Whether presses are heard. */
    public enum State {
        /** Not known yet. */
        LOOKING,
        /** They are. */
        READY,
        /** What is there sends all the time, as no pedal does; nothing it sends is heard. */
        SENDING,
        /** Refused or unplugged; it is tried again. */
        GONE
    }
}
