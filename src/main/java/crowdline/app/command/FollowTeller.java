package crowdline.app.command;

import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import java.util.Objects;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** Passes on what is worth telling of a flight that is followed. */
final class FollowTeller {
    /** A program that reads along is told something this often. */
    private static final double PROGRAM_S = 1;

    private final boolean forProgram;
    private final FollowPlan plan;
    private final BiConsumer<FollowPlan, FollowNow> told;
    private @Nullable FollowNow last;
    private double toldS = Double.NEGATIVE_INFINITY;

    /** @param forProgram whether every element and every second is told, and not only another figure or another state */
    FollowTeller(FollowPlan plan, boolean forProgram, BiConsumer<FollowPlan, FollowNow> told) {
        this.forProgram = forProgram;
        this.plan = plan;
        this.told = told;
    }

    void see(FollowNow now) {
        FollowNow before = last;
        boolean changed = before == null
                || now.state() != before.state()
                || (forProgram && now.elementIndex() != before.elementIndex())
                || !Objects.equals(figureId(plan, now), figureId(plan, before))
                || !now.or()
                        .map(FollowNow.Candidate::figureIndex)
                        .equals(before.or().map(FollowNow.Candidate::figureIndex));
        if (changed || (forProgram && now.tS() - toldS >= PROGRAM_S)) {
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

    /** What the figure is called that is flown; both names where it may be either. */
    static String names(FollowPlan plan, FollowNow now) {
        String name = plan.name(now.figureIndex());
        return now.or()
                .map(other -> name + " or " + plan.name(other.figureIndex()))
                .orElse(name);
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
