package crowdline.telemetry.serial;

/**
 * How a port with buttons stands.
 *
 * @param text in one phrase; with what to do where it cannot be opened
 */
public record ButtonStatus(State state, String text) {
    /** Whether presses are heard. */
    public enum State {
        /** Not tried yet. */
        LOOKING,
        /** They are. */
        READY,
        /** Refused or unplugged; it is tried again. */
        GONE
    }
}
