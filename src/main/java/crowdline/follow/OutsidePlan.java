package crowdline.follow;

/** How the chances move that lie in no figure of the plan: before the act, off the plan, and after it. All rates are tuned. */
final class OutsidePlan {
    private static final double BACK_PER_S = 0.014;
    /** What is flown off the plan turns gentle, and wild again. */
    private static final double CALMS_PER_S = 0.1;

    private static final double TO_END_PER_S = 1 / 120.0;
    private static final double BEGINS_PER_S = 1 / 60.0;
    /** Share of what is before the act that turns out to be off the plan. */
    private static final double BEGINS_OFF = 0.03;
    /** Share of what comes back to the plan that does so within a figure and not at its start. */
    private static final double WITHIN = 0.15;

    private static final int WITHIN_EVERY = 10;
    /** The way back to the plan is tried every so many steps: chances too small for one step would be forgotten. */
    private static final int RETURN_EVERY = 5;

    private final Bins bins;
    private final Order order;
    private final double[] row;
    private long steps;
    private double atStart = 1;

    OutsidePlan(Bins bins, Order order) {
        this.bins = bins;
        this.order = order;
        row = new double[bins.figures + 2];
    }

    /** Puts a chance off the plan; whether it is flown gently is not known yet. */
    static void goOff(Belief to, double chance) {
        to.off += chance / 2;
        to.offGently += chance / 2;
    }

    /** How near the aircraft is to where the act begins: 1 there and where it is not known, towards 0 far away. */
    void isAtStart(double near) {
        atStart = near;
    }

    /** One step; what is in the figures of {@code to} is added to. */
    void step(Belief from, Belief to) {
        double begins = from.before * BEGINS_PER_S * atStart * Motion.STEP_S;
        to.before += from.before - begins;
        anyLane(to, bins.first[0], OffsetDrift.start(begins * (1 - BEGINS_OFF)));
        goOff(to, begins * BEGINS_OFF);
        boolean returns = ++steps % RETURN_EVERY == 0;
        double back = returns ? BACK_PER_S * Motion.STEP_S * RETURN_EVERY : 0;
        double ends = TO_END_PER_S * Motion.STEP_S;
        double calms = (from.off - from.offGently) * CALMS_PER_S * Motion.STEP_S;
        to.off += from.off * (1 - back - ends) - calms;
        to.offGently += from.offGently * (1 - back - ends) + calms;
        to.after += from.after + from.unplanned() * ends;
        comeBack(to, from.unplanned() * back);
    }

    private void comeBack(Belief to, double back) {
        if (back < Motion.LEAST_POOL) {
            return;
        }
        order.afterUnknown(row);
        for (int g = 0; g < bins.figures; g++) {
            double w = back * row[g];
            if (w < Motion.LEAST_POOL) {
                continue;
            }
            int places = (bins.length(g) - 1) / WITHIN_EVERY;
            anyLane(to, bins.first[g], OffsetDrift.anywhere(places == 0 ? w : w * (1 - WITHIN)));
            for (int k = 1; k <= places; k++) {
                anyLane(to, bins.first[g] + k * WITHIN_EVERY, OffsetDrift.anywhere(w * WITHIN / places));
            }
        }
    }

    /** Puts a chance where nothing is known of direction and tempo. */
    private static void anyLane(Belief to, int bin, Moments m) {
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            to.add(lane, bin, m, 0.5 * Lanes.share(lane % Lanes.TEMPOS));
        }
    }
}
