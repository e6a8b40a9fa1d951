package crowdline.follow;

/** How chances move that are in no figure of the plan: before the act, off the plan, and after it. */
final class OutsidePlan {
    /** Chance a second of coming back to the plan. More leaves what is not in the plan too soon, less comes back late. */
    static final double BACK_PER_S = 0.014;
    /** Chance a second that the act ends off the plan. */
    private static final double TO_END_PER_S = 1 / 120.0;
    /** Chance a second that the act begins. */
    private static final double BEGINS_PER_S = 1 / 60.0;
    /** Chance a second that the act begins unheard, if it may. */
    private static final double UNHEARD_PER_S = 0.0005;
    /** Share of what comes back that does so within a figure and not at its start. */
    private static final double WITHIN = 0.15;

    /** Bins between the places within a figure to which it comes back. More saves time. */
    private static final int WITHIN_EVERY = 10;
    /** Steps between two tries to come back: the chance of a single step would be forgotten as too small. */
    private static final int RETURN_EVERY = 5;

    private final Bins bins;
    private final Order order;
    private final double[] row;
    private long steps;
    private double atStart = 1;
    private double unheardPerS;

    OutsidePlan(Bins bins, Order order) {
        this.bins = bins;
        this.order = order;
        row = new double[bins.figures + 2];
    }

    /** The act may have begun before it was heard of, or may begin unheard. */
    void isHeardLate() {
        unheardPerS = UNHEARD_PER_S;
    }

    /** Puts a chance off the plan, half of it in gentle flight. */
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
        double unheard = from.before * unheardPerS * Motion.STEP_S;
        to.before += from.before - begins - unheard;
        goOff(to, unheard);
        to.addInAnyLane(bins.first[0], OffsetDrift.start(begins), 1);
        boolean returns = ++steps % RETURN_EVERY == 0;
        double back = returns ? BACK_PER_S * Motion.STEP_S * RETURN_EVERY * order.afterUnknown(row) : 0;
        double ends = TO_END_PER_S * Motion.STEP_S;
        to.off += from.off * (1 - back - ends);
        to.offGently += from.offGently * (1 - back - ends);
        to.after += from.after + from.unplanned() * ends;
        comeBack(to, from.unplanned() * back);
    }

    private void comeBack(Belief to, double back) {
        if (back < Motion.LEAST_POOL) {
            return;
        }
        for (int g = 0; g < bins.figures; g++) {
            double w = back * row[g];
            if (w < Motion.LEAST_POOL) {
                continue;
            }
            int places = (bins.length(g) - 1) / WITHIN_EVERY;
            to.addInAnyLane(bins.first[g], OffsetDrift.anywhere(places == 0 ? w : w * (1 - WITHIN)), 1);
            for (int k = 1; k <= places; k++) {
                to.addInAnyLane(bins.first[g] + k * WITHIN_EVERY, OffsetDrift.anywhere(w * WITHIN / places), 1);
            }
        }
    }
}
