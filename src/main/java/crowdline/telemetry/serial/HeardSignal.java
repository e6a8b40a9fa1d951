package crowdline.telemetry.serial;

import crowdline.measure.Must;

/**
 * A signal and when it was heard.
 *
 * @param atS seconds on the machine's monotonic clock
 */
public record HeardSignal(ButtonSignal signal, double atS) {
    public HeardSignal {
        Must.beFinite("atS", atS);
    }
}
