package crowdline.follow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Turns a belief into what the follower says of the moment. */
final class Answer {
    /** Seconds: after a longer silence of the receiver the answer is unsure. */
    static final double SILENT_S = 2.5;

    /** Confidence, 0 to 1: the most that is given while the receiver is silent; below {@link FollowNow#SURE}. */
    private static final double SILENT_MOST = 0.85;

    /** Chance, 0 to 1: below it the answer is unsure. */
    private static final double SURE_ENOUGH = 0.5;
    /** Chance, 0 to 1, from which a figure is among the alternatives. */
    private static final double MENTIONED = 0.05;

    private final FollowPlan plan;
    private final Belief belief;
    private final Doubt doubt;
    private final double[] chances;

    Answer(FollowPlan plan, Belief belief, Doubt doubt) {
        this.plan = plan;
        this.belief = belief;
        this.doubt = doubt;
        chances = new double[plan.size()];
        for (int f = 0; f < chances.length; f++) {
            chances[f] = belief.in(f);
        }
    }

    /**
     * @param silent whether a receiver that was heard is heard no more
     * @param silentS seconds since a reading that could be believed
     * @param mayHaveBegun whether the aircraft is not where it stands before the act, so that it may have begun unseen
     */
    FollowNow at(double tS, boolean silent, double silentS, boolean mayHaveBegun) {
        int best = 0;
        for (int f = 1; f < chances.length; f++) {
            best = chances[f] > chances[best] ? f : best;
        }
        double confidence = doubt.said(chances[best], tS);
        FollowNow.State state = confidence >= SURE_ENOUGH ? FollowNow.State.ON_PLAN : FollowNow.State.UNSURE;
        int index = best;
        if (belief.before > Math.max(confidence, Math.max(belief.unplanned(), belief.after))) {
            state = FollowNow.State.BEFORE;
            confidence = mayHaveBegun ? Math.min(belief.before, FollowNow.SURE) : belief.before;
            index = -1;
        } else if (belief.after > Math.max(confidence, belief.unplanned())) {
            state = FollowNow.State.AFTER;
            confidence = belief.after;
            index = plan.size();
        } else if (belief.unplanned() > confidence) {
            state = belief.unplanned() >= SURE_ENOUGH ? FollowNow.State.OFF_PLAN : FollowNow.State.UNSURE;
            confidence = doubt.said(belief.unplanned(), tS);
        }
        if (silent) {
            confidence = Math.min(confidence, SILENT_MOST);
            state = state == FollowNow.State.ON_PLAN ? FollowNow.State.UNSURE : state;
        }
        boolean flying = index >= 0 && index < plan.size();
        double share = flying ? phase(best) : 0;
        return new FollowNow(
                tS,
                state,
                index,
                flying ? plan.element(best, share) : 0,
                share,
                Math.min(confidence, 1),
                alternatives(),
                silentS);
    }

    /** How far through a figure on the mean, as a share of its planned time. */
    private double phase(int f) {
        double sum = 0;
        double phase = 0;
        for (int lane = 0; lane < Lanes.COUNT; lane++) {
            int block = lane * plan.size() + f;
            for (int i = belief.low[block]; i <= belief.high[block]; i++) {
                double c = belief.chance[belief.state(lane, i)];
                sum += c;
                phase += c * (i - plan.bins.first[f] + 0.5);
            }
        }
        return sum <= 0 ? 0 : Math.min(phase / sum / plan.bins.length(f), 1);
    }

    private List<FollowNow.Candidate> alternatives() {
        List<FollowNow.Candidate> found = new ArrayList<>();
        for (int f = 0; f < chances.length; f++) {
            if (chances[f] >= MENTIONED) {
                found.add(new FollowNow.Candidate(f, Math.min(chances[f], 1), phase(f)));
            }
        }
        found.sort(Comparator.comparingDouble(FollowNow.Candidate::chance).reversed());
        return found;
    }
}
