package crowdline.flight.moment;

import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import java.util.ArrayList;
import java.util.List;

/** A nose that turns evenly from knot to knot, up to and beyond straight up; the pilot's up turns with it. */
record Nose(boolean inverted, Knots knots) {
    private static final double STEP_S = 0.1;

    /** @param knots times in seconds and degrees above level by turns */
    static Nose upright(double... knots) {
        return new Nose(false, new Knots(knots));
    }

    /** The same upside down. */
    static Nose inverted(double... knots) {
        return new Nose(true, new Knots(knots));
    }

    double deg(double tS) {
        return knots.deg(tS);
    }

    double endS() {
        return knots.endS();
    }

    /** A sample every tenth of a second. */
    List<Sample> samples() {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= Math.round(endS() / STEP_S); i++) {
            double tS = i * STEP_S;
            double rad = Math.toRadians(deg(tS));
            Vec up = new Vec(-Math.sin(rad), 0, Math.cos(rad));
            samples.add(new Sample(
                    tS,
                    new Vec(50 * tS, 0, 300),
                    50,
                    new Vec(Math.cos(rad), 0, Math.sin(rad)),
                    inverted ? up.times(-1) : up,
                    1,
                    0,
                    0));
        }
        return samples;
    }
}
