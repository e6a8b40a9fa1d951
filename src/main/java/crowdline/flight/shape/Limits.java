package crowdline.flight.shape;

import crowdline.flight.body.Body;
import crowdline.flight.leg.Extremes;
import crowdline.measure.Units;
import org.jspecify.annotations.Nullable;

/** What no figure is drawn beyond: a little inside what the airframe is given, and what the wing gives. */
public final class Limits {
    /** How near the limits an aircraft is drawn at most. */
    private static final double SHARE_OF_LIMIT = 0.97;
    /** Load missing at the wing that is only the roughness of the looking, g. */
    private static final double SHORT_G = 0.15;
    /** Speed missing at the wing on a path that is kept; the same, m/s. */
    private static final double SLOW_MPS = 1;

    private final double mostG;
    private final double leastG;
    private final double mostMps;

    Limits(Body body) {
        mostG = SHARE_OF_LIMIT * body.limitPositiveG();
        leastG = SHARE_OF_LIMIT * body.limitNegativeG();
        mostMps = SHARE_OF_LIMIT * body.neverExceedMps();
    }

    /**
     * What is broken by what was seen of an element; null if nothing is.
     *
     * @param over whether it is the turning over of a line up
     */
    @Nullable
    Fault broken(Extremes seen, boolean over) {
        Fault.Kind energy = over ? Fault.Kind.OVER : Fault.Kind.ENERGY;
        if (seen.shortG() > SHORT_G) {
            return Fault.of(
                    energy,
                    "is down to %.0f kt on its way, too slow for the %.1f g it needs there",
                    Units.ktFromMps(seen.shortMps()),
                    seen.shortAskedG());
        }
        if (seen.slowByMps() > SLOW_MPS) {
            return Fault.of(
                    energy,
                    "is down to %.0f kt on its way, too slow to hold its line",
                    Units.ktFromMps(seen.slowMps()));
        }
        if (seen.greatestG() > mostG) {
            return Fault.of(Fault.Kind.LOAD, "takes more than the %.1f g this aircraft is flown with at most", mostG);
        }
        if (seen.leastG() < leastG) {
            return Fault.of(Fault.Kind.LOAD, "takes more than the %.1f g this aircraft is flown with at most", leastG);
        }
        if (seen.greatestMps() > mostMps) {
            return Fault.of(
                    Fault.Kind.NEVER_EXCEED,
                    "goes beyond %.0f kt, as near its never-exceed speed as this aircraft is flown",
                    Units.ktFromMps(mostMps));
        }
        return null;
    }
}
