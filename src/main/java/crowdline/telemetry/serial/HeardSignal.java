package crowdline.telemetry.serial;

/**
 * A signal and when it was heard.
 *
 * @param atS seconds on the machine's monotonic clock
 */
public record HeardSignal(ButtonSignal signal, double atS) {
    public HeardSignal {
        if (!Double.isFinite(atS)) {
            throw new IllegalArgumentException("atS is " + atS + "; it must be a number");
        }
    }
}
