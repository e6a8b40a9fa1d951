package crowdline.show.catalogue;

import crowdline.show.aircraft.Usual;
import org.jspecify.annotations.Nullable;

/** How fast a figure is usually begun, which every kind of aircraft has in its own knots. */
public enum EntrySpeed {
    LOOP,
    VERTICAL,
    ROLL,
    PASS,
    FLICK,
    /** Just fast enough to fly comfortably, as before a spin or a half roll and pull through. */
    SLOW;

    /** Above the stall by this much; common practice. */
    private static final double SLOW_IN_STALLS = 1.35;

    /**
     * The speed, knots; null where displays of such an aircraft show nothing of the kind.
     *
     * @param stallKt the speed at which its wing just carries it, knots
     */
    public @Nullable Double kt(Usual usual, double stallKt) {
        return switch (this) {
            case LOOP -> usual.loopKt();
            case VERTICAL -> usual.verticalKt();
            case ROLL -> usual.rollKt();
            case PASS -> usual.passKt();
            case FLICK -> usual.flickKt();
            case SLOW -> SLOW_IN_STALLS * stallKt;
        };
    }
}
