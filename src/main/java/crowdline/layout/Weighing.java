package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.layout.Trying.Tried;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flies what is thought the best way to go on; where that takes longer than it was thought to, the next best as well, and
 * keeps the better.
 */
final class Weighing {
    /** As much longer than thought as is no reason to look for anything else, seconds. */
    private static final double NEARLY_S = 5;
    /** How many ways to go on are flown at most. */
    private static final int MOST_FLOWN = 5;
    /**
     * The same without an engine, whose act is flown several times to find how high it begins, and of what is not flown as
     * people expect to see it: that nothing helps takes long to find.
     */
    private static final int FEW_FLOWN = 2;
    /** The same while what is best by now comes round twice. */
    private static final int MORE_FLOWN = 3;
    /** What a figure is worth that is flown at all, seconds. */
    private static final double LACKING_S = 500;
    /** What a loop is worth that ends where it began, seconds; tuned. */
    private static final double OPEN_S = 180;
    /** What one is worth that comes out as high as it began, seconds; by judgement. */
    private static final double LOW_S = 30;

    private final Ground ground;
    private final Choosing choosing;
    private final Trying trying;

    Weighing(Ground ground, Choosing choosing) {
        this.ground = ground;
        this.choosing = choosing;
        trying = new Trying(ground);
    }

    /** One way to go on, flown. */
    private record Weighed(Best best, double cost) {}

    /**
     * The best way to go on, flown.
     *
     * @param entry where the figure was to begin, if nothing was raised
     */
    record Best(Entry entry, Tried tried) {}

    /**
     * The next figure, flown.
     *
     * @param next it and those after it
     * @param turnedBack whether it only turns round before it
     * @param raisedM how much higher than chosen everything is flown, metres
     * @return null if there is nowhere to begin it
     */
    @Nullable
    Best best(List<Wish> next, FlightState at, boolean turnedBack, double raisedM) {
        Wish wish = next.get(0);
        List<Entry> tried = new ArrayList<>();
        Weighed best = null;
        boolean few = ground.joining.sinks() || !isWell(wish);
        int most = !ground.work.isLeft(Work.Part.FLYING) ? 1 : few ? FEW_FLOWN : MOST_FLOWN;
        int twice = ground.work.isLeft(Work.Part.SAYING) ? MORE_FLOWN : most;
        for (int i = 0; i < most; i++) {
            Choosing.Option option = choosing.option(next, at, turnedBack, entry -> !tried.contains(entry));
            if (option == null || (best != null && option.cost() + NEARLY_S >= best.cost())) {
                break;
            }
            Weighed found = weighed(wish, option, at, raisedM, best == null ? Double.POSITIVE_INFINITY : best.cost());
            best = best == null || (found != null && found.cost() < best.cost()) ? found : best;
            tried.add(option.entry());
            most = best != null && Estimating.isTwice(best.best().tried().way()) ? Math.max(most, twice) : most;
        }
        return best == null ? null : best.best();
    }

    /** A figure begun at a place it was begun at before, from where the aircraft is when everything is flown higher or lower. */
    Best again(Wish wish, Entry entry, FlightState at, double raisedM) {
        return new Best(entry, trying.of(wish, entry.raised(raisedM), at, false));
    }

    /** What is lost where a figure is not flown as people expect to see it, seconds; nothing where it is. */
    static double unwellS(FigureTrial.Outcome out) {
        return (out.closes() ? 0 : OPEN_S) + (out.low() == null ? 0 : LOW_S);
    }

    /** Whether it is flown as people expect to see it, one way or the other. */
    private boolean isWell(Wish wish) {
        return ground.measured(wish, true).isWell()
                || ground.measured(wish, false).isWell();
    }

    /** @return null if the way alone is worth as much as what is best by now */
    private @Nullable Weighed weighed(
            Wish wish, Choosing.Option option, FlightState at, double raisedM, double leastS) {
        double others = option.cost() - option.worth();
        double figureS = ground.measured(wish, option.entry().toRight()).seconds();
        Tried tried = trying.of(
                wish,
                option.entry().raised(raisedM),
                at,
                false,
                way -> others + figureS + Estimating.worthS(way) < leastS);
        if (tried == null) {
            return null;
        }
        // What was begun further on than chosen is further off.
        Entry begun = option.entry().at(tried.from().place().x());
        double offS = choosing.off(wish, begun) - choosing.off(wish, option.entry());
        double cost = others + offS + tried.out().seconds() + Estimating.worthS(tried.way());
        if (!tried.out().flown() || tried.lowM() > 0) {
            cost += LACKING_S;
        } else if (isWell(wish)) {
            cost += unwellS(tried.out());
        }
        return new Weighed(new Best(option.entry(), tried), cost);
    }
}
