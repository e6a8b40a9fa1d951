package crowdline.patter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A plan taken along to where its figures are now. Where a key, or the clock, says that figures begin sooner or later than was
 * thought, what is to be said of them keeps its place against its figure, and not its second on the clock: or an act that was
 * awaited for twenty seconds would have all it says twenty seconds late.
 */
public final class Carried {
    /** Less is a drift, for which nothing on the screen is to move, seconds. Tuned. */
    private static final double MOVED_S = 1.5;

    private Carried() {}

    /**
     * The plan with what has not begun in it where its figure is now.
     *
     * @param then the figures as they were when the plan was made
     * @param now the same as they are
     * @param nowS what was to begin before this stays where it is
     */
    public static Plan of(Plan plan, List<Slot> then, List<Slot> now, double nowS) {
        List<Placed> placed = plan.placed().stream()
                .map(p -> p.startS() <= nowS ? p : later(p, laterS(p, then, now)))
                .sorted(Comparator.comparingDouble(Placed::startS))
                .toList();
        return new Plan(placed, plan.unplaced(), plan.quietS(), plan.talkS(), plan.provenBest());
    }

    /** How much later the figure of a remark begins than it did; 0 where that is only a drift, or where it has none. */
    private static double laterS(Placed placed, List<Slot> then, List<Slot> now) {
        Optional<Slot> was = of(then, placed);
        Optional<Slot> is = of(now, placed);
        double laterS = was.isPresent() && is.isPresent()
                ? is.get().startS() - was.get().startS()
                : 0;
        return Math.abs(laterS) < MOVED_S ? 0 : laterS;
    }

    private static Optional<Slot> of(List<Slot> slots, Placed placed) {
        return slots.stream()
                .filter(slot -> slot.figureId().equals(placed.figureId()))
                .findFirst();
    }

    private static Placed later(Placed placed, double byS) {
        return new Placed(
                placed.remarkId(),
                placed.figureId(),
                placed.kind(),
                placed.form(),
                placed.startS() + byS,
                placed.endS() + byS,
                placed.tight());
    }
}
