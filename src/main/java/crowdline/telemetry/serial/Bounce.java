package crowdline.telemetry.serial;

import java.util.HashMap;
import java.util.Map;

/**
 * Tells a press from the bouncing of a contact. A signal counts if its byte or line was quiet before; for a line, turning
 * back counts as noise too, since a contact bounces when it is let go as well.
 */
final class Bounce {
    /** A pedal that is held may send its byte again ten times a second; no foot presses twice as fast. Tuned. */
    private static final double REPEATED_S = 0.13;

    private final double quietS;
    private final Map<Object, Double> lastS = new HashMap<>();

    /** @param quietS seconds of quiet before a press */
    Bounce(double quietS) {
        if (!(quietS >= 0)) {
            throw new IllegalArgumentException("quietS is " + quietS + "; it must be 0 or more");
        }
        this.quietS = quietS;
    }

    boolean isPress(HeardSignal heard) {
        Object source = heard.signal() instanceof ButtonSignal.Turned turned ? turned.line() : heard.signal();
        Double before = lastS.put(source, heard.atS());
        double quiet = heard.signal() instanceof ButtonSignal.Sent ? Math.max(quietS, REPEATED_S) : quietS;
        return before == null || heard.atS() - before >= quiet;
    }
}
