package crowdline.flight.moment;

/** An angle that changes evenly from knot to knot. */
final class Knots {
    private final double[] knots;

    /** @param knots times in seconds and degrees by turns */
    Knots(double... knots) {
        this.knots = knots.clone();
    }

    double deg(double tS) {
        int i = 0;
        while (i + 4 < knots.length && knots[i + 2] < tS) {
            i += 2;
        }
        double share = (tS - knots[i]) / (knots[i + 2] - knots[i]);
        return knots[i + 1] + Math.max(0, Math.min(1, share)) * (knots[i + 3] - knots[i + 1]);
    }

    double endS() {
        return knots[knots.length - 2];
    }
}
