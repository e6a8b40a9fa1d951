package crowdline.telemetry;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds where a flight log moves as no display aircraft does. Nothing is left out for it: that is for the follower. */
final class Jumps {
    /** Speed of sound at 15 °C in metres a second: ISO 2533, table 1. Nobody displays faster, across or up. */
    private static final double FASTEST_MPS = 340.3;

    private static final double EARTH_M = 6_371_000;

    private Jumps() {}

    /** One sentence on all of them, with the place of the first. */
    static Optional<String> sentence(List<Fix> fixes) {
        int count = 0;
        Fix first = null;
        for (int i = 1; i < fixes.size(); i++) {
            if (isJump(fixes.get(i - 1), fixes.get(i))) {
                count++;
                first = first == null ? fixes.get(i) : first;
            }
        }
        if (first == null) {
            return Optional.empty();
        }
        String where = first.utc() == null
                ? String.format(
                        Locale.ROOT,
                        "%.1f s after the first",
                        first.tS() - fixes.get(0).tS())
                : "at " + first.utc();
        return Optional.of(count + " positions lie further from the one before than sound travels meanwhile, the first "
                + where + "; they are kept, though the recorder was probably wrong");
    }

    private static boolean isJump(Fix from, Fix to) {
        double mostM = FASTEST_MPS * (to.tS() - from.tS());
        double northM = EARTH_M * Math.toRadians(to.latDeg() - from.latDeg());
        double turnDeg = Math.IEEEremainder(to.lonDeg() - from.lonDeg(), 360);
        double eastM = EARTH_M * Math.toRadians(turnDeg) * Math.cos(Math.toRadians(to.latDeg()));
        return Math.hypot(northM, eastM) > mostM || Math.abs(to.heightM() - from.heightM()) > mostM;
    }
}
