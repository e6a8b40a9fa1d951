package crowdline.layout;

import crowdline.flight.body.FlightState;

/** About what it takes to come from one place to another, for choosing among ways. */
final class Estimating {
    /** A line back to the display line for each metre of distance from it, and how far along it leads. */
    private static final double CUT_IN = 1.74;

    private static final double CUT_ALONG = 1.43;

    /** What coming round twice takes beyond its turns, or is worth not to be watched, seconds; tuned. */
    private static final double TWICE_S = 30;

    private final Straight straight;

    Estimating(Straight straight) {
        this.straight = straight;
    }

    /**
     * What it will take, for choosing among ways.
     *
     * @param seconds about how long
     * @param reachM about how far it comes from the middle of the display line, metres
     */
    record Estimate(double seconds, double reachM) {}

    /** About what it will take to come to a beginning. */
    Estimate estimate(FlightState at, Entry to) {
        double v = (at.speedMps() + to.mps()) / 2;
        double radius = straight.radiusM(at, to);
        double restM = (to.alongM() - at.place().x()) * to.way();
        double needM = straight.needM(at, to);
        double asideM = Math.max(at.place().y() - to.awayM(), 0);
        if (Fit.isAcross(at)) {
            // A turn through 125 degrees and a line back to the display line.
            double depthM = asideM + 0.64 * radius;
            double runInM = restM - 2.15 * radius - CUT_ALONG * depthM;
            double outM = Math.max(needM - Math.max(runInM, 0), -Math.min(runInM, 0) * 2);
            double metres = 2.8 * radius + CUT_IN * depthM + Math.max(runInM, 0) + outM;
            return new Estimate(metres / v, Math.abs(at.place().x()) + outM / 2 + radius);
        }
        double turnS = (4.36 * radius + CUT_IN * 1.64 * radius) / v;
        double outwards = at.place().x() * (at.toRight() ? 1 : -1);
        if (at.toRight() == to.toRight()) {
            double behindM = (Joining.BACK_RADII + 1) * radius - to.alongM() * to.way();
            return restM >= needM && restM >= -Joining.NEAR_M
                    ? new Estimate(Math.max(restM, 0) / v, 0)
                    : new Estimate(
                            TWICE_S + 2 * turnS + (Math.abs(restM) + needM + CUT_IN * asideM) / v,
                            Math.max(outwards + radius, behindM));
        }
        // Going out by some metres and back again leaves the run in so much longer at both ends.
        double runInM = restM - 3.5 * radius - CUT_ALONG * asideM;
        double outM = Math.max(needM - Math.max(runInM, 0), -Math.min(runInM, 0) * 2);
        return new Estimate(turnS + (Math.max(runInM, 0) + outM + CUT_IN * asideM) / v, outwards + outM / 2 + radius);
    }
}
