package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import java.util.Optional;

/**
 * Somebody at the crowd line, looking straight out.
 *
 * @param crowdM from the eye to the pane, which stands upright on the display line, metres, above 0
 * @param heightM of the eye above the datum, metres
 */
public record Eye(double crowdM, double heightM) {
    /** A grown-up's eye above the ground, metres; from memory. */
    public static final double STANDING_M = 1.6;

    /** So far off for its size a figure that stands nowhere is looked at; tuned by looking. */
    private static final double AWAY = 1.1;

    private static final double LEAST_AWAY_M = 200;

    /** Nearer to the eye than this nothing makes a picture, metres. */
    private static final double NEAREST_M = 5;

    public Eye {
        if (!(crowdM > 0) || Double.isInfinite(crowdM) || !Double.isFinite(heightM)) {
            throw new IllegalArgumentException("an eye stands a finite distance above 0 m before the display line, not "
                    + crowdM + " m, at a finite height, not " + heightM + " m");
        }
    }

    /** A grown-up standing so far before the display line, metres. */
    public static Eye standing(double crowdM) {
        return new Eye(crowdM, STANDING_M);
    }

    /** Where a figure that stands nowhere is seen well from: as far off as it is large, and behind all of it. */
    public static Eye before(Flown flown) {
        Flown.Reach all = flown.reachOfAll();
        Vec size = all.size();
        double awayM = Math.max(LEAST_AWAY_M, AWAY * Math.max(size.x(), size.z()));
        return standing(awayM + Math.max(0, -all.least().y()));
    }

    /**
     * A place as it is on the pane.
     *
     * @param alongM metres to the right of the eye
     * @param upM metres above the datum
     * @param scale how large it is there: 1 on the pane itself, less beyond it
     */
    public record Spot(double alongM, double upM, double scale) {}

    private Vec at() {
        return new Vec(0, -crowdM, heightM);
    }

    /** Where a place in the display frame is on the pane; nowhere if it is beside or behind the eye. */
    public Optional<Spot> see(Vec place) {
        double outM = crowdM + place.y();
        if (!(outM >= NEAREST_M)) {
            return Optional.empty();
        }
        double scale = crowdM / outM;
        return Optional.of(new Spot(place.x() * scale, heightM + (place.z() - heightM) * scale, scale));
    }

    /** The direction in which a place is looked for, a unit vector; straight overhead it is a little off. */
    Vec sight(Vec place) {
        Vec sight = place.minus(at());
        boolean overhead = Math.hypot(sight.x(), sight.y()) < 1e-6 * Math.abs(sight.z());
        return (overhead ? sight.plus(new Vec(0, 1e-6 * Math.abs(sight.z()), 0)) : sight).unit();
    }

    /** True if the outer side of a flat piece is turned to the eye. */
    public boolean faces(Vec at, Vec outward) {
        return at().minus(at).dot(outward) > 0;
    }
}
