package crowdline.app;

import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import java.util.Objects;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** Passes on what is worth telling of a flight that is followed: every change, and something at least every second. */
final class FollowTeller {
    private static final double TELL_AT_LEAST_S = 1;

    private final FollowPlan plan;
    private final BiConsumer<FollowPlan, FollowNow> told;
    private @Nullable FollowNow last;
    private double toldS = Double.NEGATIVE_INFINITY;

    FollowTeller(FollowPlan plan, BiConsumer<FollowPlan, FollowNow> told) {
        this.plan = plan;
        this.told = told;
    }

    void see(FollowNow now) {
        FollowNow before = last;
        boolean changed = before == null
                || now.state() != before.state()
                || now.elementIndex() != before.elementIndex()
                || !Objects.equals(figureId(plan, now), figureId(plan, before));
        if (changed || now.tS() - toldS >= TELL_AT_LEAST_S) {
            told.accept(plan, now);
            toldS = now.tS();
        }
        last = now;
    }

    /** The figure that is flown, or null where none of the plan is. */
    static @Nullable String figureId(FollowPlan plan, FollowNow now) {
        boolean flown = now.state() == FollowNow.State.ON_PLAN || now.state() == FollowNow.State.UNSURE;
        return flown && now.figureIndex() >= 0 && now.figureIndex() < plan.size()
                ? plan.figureId(now.figureIndex())
                : null;
    }

    static String word(FollowNow.State state) {
        return switch (state) {
            case BEFORE -> "before";
            case ON_PLAN -> "on-plan";
            case OFF_PLAN -> "off-plan";
            case UNSURE -> "unsure";
            case AFTER -> "after";
        };
    }
}
