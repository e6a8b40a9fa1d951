package crowdline.telemetry.serial;

import java.util.HashMap;
import java.util.Map;

/**
 * Tells a press from the bouncing of a contact. A signal counts if its byte or line was quiet before; for a line, turning
 * back counts as noise too, since a contact bounces when it is let go as well.
 */
final class Bounce {
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
        return before == null || heard.atS() - before >= quietS;
    }
}
