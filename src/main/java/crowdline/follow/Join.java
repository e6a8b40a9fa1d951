package crowdline.follow;

/** The predicted path about the moment at which one figure goes over into another, which need not be the next of the plan. */
final class Join {
    private final Bins bins;
    private final int before;
    private final int figure;
    /** −1 where the second figure is flown the other way along the A-axis than predicted, to go on from the first. */
    private final double turned;

    Join(Bins bins, int before, int figure) {
        this.bins = bins;
        this.before = before;
        this.figure = figure;
        double in = bins.vxMps[bins.first[before + 1] - 1];
        double out = bins.vxMps[bins.first[figure]];
        turned = figure != before + 1 && in * out < 0 ? -1 : 1;
    }

    /** How far along the A-axis the aircraft is from where it goes over, so long after that, metres. */
    double alongM(double tS) {
        return place(0, tS);
    }

    /**
     * How far the path bends away from a straight line.
     *
     * @param axis 0 along the A-axis, 1 away from the crowd, 2 up
     * @param tS times about some moment, seconds
     * @param laterS so much later than that moment it goes over, seconds
     * @return metres, at each of the times
     */
    double[] bend(int axis, double[] tS, double laterS) {
        double[] place = new double[tS.length];
        for (int i = 0; i < tS.length; i++) {
            place[i] = place(axis, tS[i] - laterS);
        }
        return withoutItsLine(tS, place);
    }

    /** What is left of values over time without the straight line that fits them best. */
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
        double sign = axis == 0 && tS > 0 ? turned : 1;
        double end = bins.first[before + 1];
        return tS < 0
                ? at(axis, end + tS / Bins.WIDTH_S) - at(axis, end)
                : sign * (at(axis, bins.first[figure] + tS / Bins.WIDTH_S) - at(axis, bins.first[figure]));
    }

    /** Where it is predicted so many bins on, read between and beyond the bins about there. */
    private double at(int axis, double bin) {
        double[] p = axis == 0 ? bins.xM : axis == 1 ? bins.yM : bins.zM;
        double centre = bin - 0.5;
        int low = (int) Math.floor(centre);
        low = Math.max(0, Math.min(low, bins.size - 2));
        double share = Math.max(-1, Math.min(centre - low, 2));
        return p[low] + share * (p[low + 1] - p[low]);
    }
}
