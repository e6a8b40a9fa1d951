package crowdline.practice;

import crowdline.practice.Change.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** How little a flight keeps to its plan. */
public enum Level {
    ONE(1, "In its order, a little early or late", 1, 0, false),
    TWO(2, "Gusty, and one thing is not as planned", 1.4, 1, false),
    THREE(3, "Gusty, and two things are not as planned", 1.7, 2, false),
    FOUR(4, "Two things are not as planned, and it does not end well", 2, 2, true);

    private static final List<Kind> IN_THE_ACT = List.of(Kind.DROPPED, Kind.SWAPPED, Kind.UNPLANNED, Kind.HOLD);

    private final int number;
    private final String words;
    private final double much;
    private final int breaks;
    private final boolean breaksOff;

    Level(int number, String words, double much, int breaks, boolean breaksOff) {
        this.number = number;
        this.words = words;
        this.much = much;
        this.breaks = breaks;
        this.breaksOff = breaksOff;
    }

    /** From 1. */
    public int number() {
        return number;
    }

    /**
     * The level of a number.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Level of(int number) {
        if (number < 1 || number > values().length) {
            throw new IllegalArgumentException("the level is " + number + "; it must be 1 to " + values().length);
        }
        return values()[number - 1];
    }

    /** What to expect of it. */
    public String words() {
        return words;
    }

    /** How far its numbers depart from the plan, against a usual flight. */
    double much() {
        return much;
    }

    boolean isGusty() {
        return this != ONE;
    }

    /**
     * Draws what it does to the plan.
     *
     * @param fewer how many changes less than usual, where the act is too short for all of them; one at least is left
     */
    List<Kind> drawn(SplittableRandom random, int fewer) {
        List<Kind> left = new ArrayList<>(IN_THE_ACT);
        List<Kind> kinds = new ArrayList<>();
        for (int i = 0; i < Math.min(breaks, Math.max(1, breaks - fewer)); i++) {
            kinds.add(left.remove(random.nextInt(left.size())));
        }
        if (breaksOff) {
            kinds.add(random.nextBoolean() ? Kind.BREAK_OFF : Kind.INCIDENT);
        }
        return List.copyOf(kinds);
    }
}
