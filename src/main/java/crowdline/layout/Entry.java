package crowdline.layout;

/**
 * Where, how high, how fast and which way a figure is to begin.
 *
 * @param alongM on the A-axis, metres to the commentator's right
 * @param awayM beyond the display line, metres
 * @param heightM above the datum
 * @param mps airspeed
 * @param slowestMps the least that does
 * @param fastestMps the most that does
 * @param toRight which way
 */
record Entry(
        double alongM,
        double awayM,
        double heightM,
        double mps,
        double slowestMps,
        double fastestMps,
        boolean toRight) {
    int way() {
        return toRight ? 1 : -1;
    }

    Entry raised(double byM) {
        return byM == 0 ? this : new Entry(alongM, awayM, heightM + byM, mps, slowestMps, fastestMps, toRight);
    }

    /** The same elsewhere along the line. */
    Entry at(double otherM) {
        return new Entry(otherM, awayM, heightM, mps, slowestMps, fastestMps, toRight);
    }

    /** The same further from the crowd or nearer. */
    Entry away(double otherM) {
        return new Entry(alongM, otherM, heightM, mps, slowestMps, fastestMps, toRight);
    }

    /** With speeds that do, as shares of the one wanted. */
    Entry within(double slowest, double fastest) {
        return new Entry(alongM, awayM, heightM, mps, slowest * mps, fastest * mps, toRight);
    }

    /** The same begun at this speed or hardly less. */
    Entry atLeast(double faster) {
        return new Entry(alongM, awayM, heightM, faster, 0.98 * faster, Math.max(fastestMps, 1.1 * faster), toRight);
    }

    /** The same begun at other speeds, by a factor. */
    Entry faster(double factor) {
        return new Entry(alongM, awayM, heightM, factor * mps, factor * slowestMps, factor * fastestMps, toRight);
    }

    /** The same with less that does, by a factor. */
    Entry slower(double factor) {
        return new Entry(alongM, awayM, heightM, mps, factor * slowestMps, fastestMps, toRight);
    }

    /** The same with no more that does than so much of the speed wanted. */
    Entry noFaster(double share) {
        return new Entry(
                alongM,
                awayM,
                heightM,
                mps,
                slowestMps,
                Math.min(fastestMps, Math.max(share * mps, slowestMps)),
                toRight);
    }

    boolean isAnyhow() {
        return slowestMps == 0 && Double.isInfinite(fastestMps);
    }

    /** Somewhere on the way to another, where height and speed are of no matter. */
    static Entry anyhow(double alongM, double awayM, double heightM, double mps, boolean toRight) {
        return new Entry(alongM, awayM, heightM, mps, 0, Double.POSITIVE_INFINITY, toRight);
    }
}
