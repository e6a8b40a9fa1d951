package crowdline.telemetry;

/** A flight log that cannot be read; the message is one sentence with the name of the file, what is wrong and what to do. */
public final class FlightLogException extends Exception {
    private static final long serialVersionUID = 1L;

    FlightLogException(String message) {
        super(message);
    }
}
