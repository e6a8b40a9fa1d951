package crowdline.live.now;

import crowdline.live.state.Course;
import crowdline.live.state.LiveState;
import crowdline.patter.PatterRules;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Speaking;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;

/**
 * The call that opens an act says who flies what, and is said as the aircraft comes into sight, which is the moment of the first key.
 * Until it has been said it is due in the first figure too, as long as it can be over with it: after that it may not be true
 * any more.
 */
final class Introduction {
    private final ToDoubleBiFunction<Remark, RemarkForm> lengths;

    /** @param lengths how long a form of a remark takes, seconds */
    Introduction(ToDoubleBiFunction<Remark, RemarkForm> lengths) {
        this.lengths = lengths;
    }

    /**
     * What is being said of it now, if it is due still.
     *
     * @param done ids of what needs no more saying
     * @param previous the plan on the screen, if any
     */
    Optional<Speaking> due(@Nullable Act act, LiveState state, LiveNow now, Set<String> done, Optional<Plan> previous) {
        FigureNow figure = now.figure();
        if (act == null || figure == null || !isFirst(state.course()) || state.incidentOpen()) {
            return Optional.empty();
        }
        return call(act, figure.figureId())
                .filter(call -> !done.contains(call.id()))
                .flatMap(call -> begun(call, now, previous).or(() -> begin(call, act, figure, now)));
    }

    private static boolean isFirst(Course course) {
        return course.flown().size() == 1;
    }

    private static Optional<Remark> call(Act act, String figureId) {
        return act.figure(figureId).map(Figure::remarks).stream()
                .flatMap(remarks -> remarks.stream())
                .filter(r -> r.kind() == RemarkKind.CALL)
                .findFirst();
    }

    /** What is on the screen already goes on. */
    private static Optional<Speaking> begun(Remark call, LiveNow now, Optional<Plan> previous) {
        return previous.flatMap(plan -> plan.find(call.id()))
                .filter(placed -> placed.startS() <= now.nowS() && now.nowS() < placed.endS())
                .map(placed -> speaking(placed, call));
    }

    private static Speaking speaking(Placed placed, Remark call) {
        return new Speaking(call.id(), placed.form(), placed.startS(), false);
    }

    private Optional<Speaking> begin(Remark call, Act act, FigureNow figure, LiveNow now) {
        double full = lengths.applyAsDouble(call, RemarkForm.FULL);
        RemarkForm form = call.shortText() != null && full > figure.leftS() - nextCallS(act, now)
                ? RemarkForm.SHORT
                : RemarkForm.FULL;
        return lengths.applyAsDouble(call, form) <= figure.leftS()
                ? Optional.of(new Speaking(call.id(), form, now.nowS(), false))
                : Optional.empty();
    }

    /** What the call of the next figure needs at the least, with a breath before it. */
    private double nextCallS(Act act, LiveNow now) {
        PatterRules rules = PatterRules.DEFAULT;
        return now.upcoming().stream()
                .limit(1)
                .flatMap(next -> call(act, next.figureId()).stream())
                .mapToDouble(next -> rules.breathS()
                        + rules.callEndsAtLeastBeforeS()
                        + lengths.applyAsDouble(next, next.shortText() == null ? RemarkForm.FULL : RemarkForm.SHORT))
                .max()
                .orElse(0);
    }
}
