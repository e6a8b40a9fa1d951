package crowdline.layout;

import crowdline.flight.body.FlightState;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Flies an act from end to end: the best way to go on at each figure, or once more the ways that were best. */
final class Flights {
    private final Ground ground;
    private final List<Wish> wishes;
    private final List<Choosing.Choice> choices;
    private final Weighing weighing;
    /** Where figures were begun that were flown the best way last, by their ids and as if nothing was raised. */
    private final Map<String, Entry> begun = new HashMap<>();

    Flights(Ground ground, List<Wish> wishes) {
        this.ground = ground;
        this.wishes = wishes;
        Choosing choosing = new Choosing(ground);
        choices = choosing.chosen(wishes);
        weighing = new Weighing(ground, choosing);
    }

    /** How it goes on from where the aircraft is. */
    private interface Going {
        /** @return the next figure, flown; null if there is nowhere to begin it */
        Weighing.@Nullable Best on(List<Wish> next, FlightState at, boolean turningBack);
    }

    /** The first figure that is flown; null if none is. */
    @Nullable
    Wish first() {
        for (int i = 0; i < wishes.size(); i++) {
            if (choices.get(i).entry() != null) {
                return wishes.get(i);
            }
        }
        return null;
    }

    /** How high the act was chosen to begin, metres: where it is let go if it begins on the ground. */
    double beginsM() {
        Entry first = firstEntry();
        return takesOff() || first == null ? ground.releasedM(0) : first.heightM();
    }

    private @Nullable Entry firstEntry() {
        return choices.stream()
                .map(Choosing.Choice::entry)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** Whether the act begins on the ground. */
    boolean takesOff() {
        return choices.stream().anyMatch(choice -> choice.takesOffToRight() != null);
    }

    /**
     * The best way.
     *
     * @param raisedM how much higher than chosen everything is flown, metres
     * @param tooLow what is done with what comes too low
     */
    Flying best(double raisedM, Flying.TooLow tooLow) {
        begun.clear();
        return flown(
                (next, at, turningBack) -> {
                    Weighing.Best found = weighing.best(next, at, turningBack, raisedM);
                    if (found != null) {
                        begun.put(next.get(0).id(), found.entry());
                    }
                    return found;
                },
                raisedM,
                tooLow);
    }

    /** The same way from another height, which takes less to find. */
    Flying again(double raisedM) {
        return flown(
                (next, at, turningBack) -> {
                    Entry entry = begun.get(next.get(0).id());
                    return entry == null ? null : weighing.again(next.get(0), entry, at, raisedM);
                },
                raisedM,
                Flying.TooLow.FLOWN);
    }

    private Flying flown(Going going, double raisedM, Flying.TooLow tooLow) {
        Entry first = firstEntry();
        Flying flying = new Flying(ground, first == null ? null : first.raised(raisedM), raisedM, tooLow);
        for (int i = 0; i < wishes.size(); i++) {
            Entry entry = choices.get(i).entry();
            if (entry != null) {
                flying.rollUpright();
            }
            FlightState at = flying.at();
            // It is not quite where it was thought to be by now.
            Weighing.Best best = entry == null || at == null
                    ? null
                    : going.on(wishes.subList(i, wishes.size()), at, flying.isTurningBack());
            Boolean takesOff = choices.get(i).takesOffToRight();
            if (takesOff != null) {
                flying.takeOff(wishes.get(i), takesOff);
            } else if (best == null) {
                flying.fly(wishes.get(i), entry == null ? null : entry.raised(raisedM));
            } else {
                flying.fly(wishes.get(i), best.tried());
            }
        }
        return flying;
    }
}
