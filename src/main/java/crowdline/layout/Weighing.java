package crowdline.layout;

import crowdline.flight.body.FlightState;
import crowdline.layout.Trying.Tried;
import java.util.List;
import java.util.function.Predicate;

/**
 * Flies what is thought the best way to go on; where that takes longer than it was thought to, the next best as well, and
 * keeps the better.
 */
final class Weighing {
    /** As much longer than thought as is no reason to look for anything else, seconds. */
    private static final double NEARLY_S = 5;
    /** What a figure is worth that is flown at all, seconds. */
    private static final double LACKING_S = 500;
    /** What one is worth that is flown as people expect to see it, seconds; tuned. */
    private static final double UNWELL_S = 90;

    private final Ground ground;
    private final Choosing choosing;
    private final Trying trying;
    private final boolean others;

    /** @param others whether anything else is flown where the best took longer than it was thought to */
    Weighing(Ground ground, Choosing choosing, boolean others) {
        this.others = others;
        this.ground = ground;
        this.choosing = choosing;
        trying = new Trying(ground);
    }

    /** One way to go on, flown. */
    private record Weighed(Tried tried, double cost) {}

    /**
     * The next figure, flown.
     *
     * @param next it and those after it
     * @param turnedBack whether it only turns round before it
     * @param raisedM how much higher than chosen everything is flown, metres
     * @return null if there is nowhere to begin it
     */
    @org.jspecify.annotations.Nullable
    Tried best(List<Wish> next, FlightState at, boolean turnedBack, double raisedM) {
        Choosing.Option thought = choosing.option(next, at, turnedBack, entry -> true);
        if (thought == null) {
            return null;
        }
        Wish wish = next.get(0);
        Weighed best = weighed(wish, thought, at, raisedM);
        if (others && best.cost() > thought.cost() + NEARLY_S) {
            boolean toRight = thought.entry().toRight();
            List<Predicate<Entry>> others = List.of(
                    entry -> entry.toRight() != toRight, entry -> entry.toRight() == toRight && isHere(entry, at));
            for (Predicate<Entry> other : others) {
                Choosing.Option option = choosing.option(next, at, turnedBack, other);
                if (option != null
                        && option.cost() < best.cost()
                        && !option.entry().equals(thought.entry())) {
                    Weighed found = weighed(wish, option, at, raisedM);
                    best = found.cost() < best.cost() ? found : best;
                }
            }
        }
        return best.tried();
    }

    private static boolean isHere(Entry entry, FlightState at) {
        return Math.abs(entry.alongM() - at.place().x()) < Joining.NEAR_M;
    }

    private Weighed weighed(Wish wish, Choosing.Option option, FlightState at, double raisedM) {
        Tried tried = trying.of(wish, option.entry().raised(raisedM), at, false);
        double cost = option.cost() - option.seconds() + tried.seconds();
        if (!tried.out().flown() || tried.lowM() > 0) {
            cost += LACKING_S;
        } else if (!tried.out().isWell() && ground.measured(wish, true).isWell()) {
            cost += UNWELL_S;
        }
        return new Weighed(tried, cost);
    }
}
