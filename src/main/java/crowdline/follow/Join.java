package crowdline.follow;

/** The predicted path around the moment one figure leads into another, which need not be the next of the plan. */
final class Join {
    private final Bins bins;
    private final int before;
    private final int figure;

    Join(Bins bins, int before, int figure) {
        this.bins = bins;
        this.before = before;
        this.figure = figure;
    }

    /** Metres along the A-axis from the join, so many seconds after it. */
    double alongM(double tS) {
        return place(0, tS);
    }

    /**
     * How far the path bends away from a straight line.
     *
     * @param axis 0 along the A-axis, 1 away from the crowd, 2 up
     * @param tS times relative to some moment, seconds
     * @param laterS when the join is, relative to that moment, seconds
     * @return metres, at each of the times
     */
    double[] bend(int axis, double[] tS, double laterS) {
        double[] place = new double[tS.length];
        for (int i = 0; i < tS.length; i++) {
            place[i] = place(axis, tS[i] - laterS);
        }
        return withoutItsLine(tS, place);
    }

    /** Values over time, less the straight line that fits them best. */
    static double[] withoutItsLine(double[] tS, double[] values) {
        int n = tS.length;
        double t = 0;
        double v = 0;
        for (int i = 0; i < n; i++) {
            t += tS[i] / n;
            v += values[i] / n;
        }
        double tt = 0;
        double tv = 0;
        for (int i = 0; i < n; i++) {
            tt += (tS[i] - t) * (tS[i] - t);
            tv += (tS[i] - t) * (values[i] - v);
        }
        double[] left = new double[n];
        for (int i = 0; i < n; i++) {
            left[i] = values[i] - v - (tt > 0 ? tv / tt * (tS[i] - t) : 0);
        }
        return left;
    }

    private double place(int axis, double tS) {
        double end = bins.first[before + 1];
        return tS < 0
                ? at(axis, end + tS / Bins.WIDTH_S) - at(axis, end)
                : at(axis, bins.first[figure] + tS / Bins.WIDTH_S) - at(axis, bins.first[figure]);
    }

    /** The predicted place at a bin, which may be a fraction; on a straight line between bins and just beyond them. */
    private double at(int axis, double bin) {
        double[] p = axis == 0 ? bins.xM : axis == 1 ? bins.yM : bins.zM;
        double centre = bin - 0.5;
        int low = (int) Math.floor(centre);
        low = Math.max(0, Math.min(low, bins.size - 2));
        double share = Math.max(-1, Math.min(centre - low, 2));
        return p[low] + share * (p[low + 1] - p[low]);
    }
}
