package crowdline.follow;

import crowdline.show.figure.Element;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * One way a trial goes.
 *
 * @param name what is tried
 * @param share how far the pilot differs
 * @param untoldWindMps standard deviation of the wind nobody told of, each way
 * @param radio the receiver
 * @param change what becomes of the order
 * @param tempo factor on all times
 * @param waitS seconds before the act, of which the follower is not told; 0 to tell it of the start
 * @param world who flies it
 * @param late whether the receiver is late, and its heights come by pressure, see {@link LateHeights}
 */
record Scenario(
        String name,
        double share,
        double untoldWindMps,
        Radio radio,
        Change change,
        double tempo,
        double waitS,
        World world,
        boolean late) {

    Scenario(String name, double share, double untoldWindMps, Radio radio, Change change, double tempo, double waitS) {
        this(name, share, untoldWindMps, radio, change, tempo, waitS, World.GENTLE, false);
    }

    enum World {
        /** A pilot of the trial in a {@link Sky} that is gentle. */
        GENTLE,
        /** The same in one that makes it hard. */
        HARD,
        /** A pilot with ways of his own, in such a sky. */
        OTHER,
        /** Somebody else, see {@link Elsewhere}. */
        ELSEWHERE
    }

    enum Change {
        NONE,
        DROPPED,
        DROPPED_TOLD,
        DROPPED_BY_HAND,
        REPEATED,
        SWAPPED,
        SWAPPED_TOLD,
        SWAPPED_BY_HAND,
        STRANGE,
        REPOSITION,
        BROKEN_OFF;

        boolean swaps() {
            return this == SWAPPED || this == SWAPPED_TOLD || this == SWAPPED_BY_HAND;
        }
    }

    private static final List<Element> ROUND = List.of(
            new Element.Turn(Element.Side.AWAY, 90, 60, 0, 0, 1),
            new Element.Turn(Element.Side.CROWD, 270, 58, 0, 0, 1),
            new Element.Line(Element.Until.SECONDS, 2, 1));

    /** Something that is in none of the acts: a climbing full turn, a bunt downhill, and back to level. */
    private static final List<Element> STRANGE_FIGURE = List.of(
            new Element.Turn(Element.Side.AWAY, 360, 65, 0, 0, 1),
            new Element.Arc(Element.Way.PULL, null, 30.0, Element.Size.LOAD_G, 2.5, 1),
            new Element.Line(Element.Until.SECONDS, 3, 1),
            new Element.Arc(Element.Way.PUSH, null, -25.0, Element.Size.LOAD_G, 0.1, 1),
            new Element.Line(Element.Until.SECONDS, 2, 0.7),
            new Element.Arc(Element.Way.PULL, null, 0.0, Element.Size.LOAD_G, 3, 1),
            new Element.Line(Element.Until.SECONDS, 1, 1));

    static Scenario plain(String name, double share, double wind, Radio radio) {
        return new Scenario(name, share, wind, radio, Change.NONE, 1, 0);
    }

    Scenario with(Change other) {
        return new Scenario(name, share, untoldWindMps, radio, other, tempo, waitS, world, late);
    }

    static List<Scenario> all() {
        Radio five = Radio.good(5);
        return List.of(
                plain("5 % varied, 5 Hz", 0.05, 0, five),
                plain("10 % varied, 5 Hz", 0.10, 0, five),
                plain("10 % varied, 10 Hz", 0.10, 0, Radio.good(10)),
                plain("10 % varied, 1 Hz", 0.10, 0, Radio.good(1)),
                plain("10 % varied, 5 Hz, no speed told", 0.10, 0, new Radio(5, 0, 0, 0, 0, false)),
                plain("15 % varied, untold wind 4 m/s", 0.15, 4, five),
                plain("15 % varied, a third missing", 0.15, 0, new Radio(5, 0.33, 0, 0, 0, true)),
                new Scenario("10 %, one figure dropped", 0.10, 0, five, Change.DROPPED, 1, 0),
                new Scenario("10 %, one dropped and told", 0.10, 0, five, Change.DROPPED_TOLD, 1, 0),
                new Scenario("10 %, one dropped, stepped by hand", 0.10, 0, five, Change.DROPPED_BY_HAND, 1, 0),
                new Scenario("10 %, one figure repeated", 0.10, 0, five, Change.REPEATED, 1, 0),
                new Scenario("10 %, two figures swapped", 0.10, 0, five, Change.SWAPPED, 1, 0),
                new Scenario("10 %, two swapped and told", 0.10, 0, five, Change.SWAPPED_TOLD, 1, 0),
                new Scenario("10 %, two swapped, stepped by hand", 0.10, 0, five, Change.SWAPPED_BY_HAND, 1, 0),
                new Scenario("10 %, an unknown one inserted", 0.10, 0, five, Change.STRANGE, 1, 0),
                new Scenario("10 %, an extra reposition", 0.10, 0, five, Change.REPOSITION, 1, 0),
                new Scenario("10 %, broken off to land", 0.10, 0, five, Change.BROKEN_OFF, 1, 0),
                plain("10 %, frozen 4 s and jumps, 3 times", 0.10, 0, new Radio(5, 0, 3, 0, 0, true)),
                plain("10 %, reckons on 4 s, 6 times", 0.10, 0, new Radio(5, 0, 0, 6, 0, true)),
                plain("10 %, height drifts by 120 m, 6 times", 0.10, 0, new Radio(5, 0, 0, 0, 6, true)),
                new Scenario("5 % and all 15 % slower", 0.05, 0, five, Change.NONE, 1.15, 0),
                new Scenario("5 % and all 15 % faster", 0.05, 0, five, Change.NONE, 0.87, 0),
                new Scenario("10 %, start not told, 3 minutes on", 0.10, 0, five, Change.NONE, 1, 180));
    }

    private Scenario in(World other) {
        return new Scenario(name, share, untoldWindMps, radio, change, tempo, waitS, other, late);
    }

    /** The same, received late. */
    private Scenario received() {
        return new Scenario(name, share, untoldWindMps, radio, change, tempo, waitS, world, true);
    }

    private static Scenario changed(String name, Change change) {
        return new Scenario(name, 0.10, 0, Radio.good(5).slowly(0), change, 1, 0);
    }

    /** The scenarios of the hard trial: flown as aircraft are, and received with noise that comes and goes slowly. */
    static List<Scenario> inAHardSky() {
        Radio five = Radio.good(5).slowly(0);
        return List.of(
                        plain("10 %, 5 Hz", 0.10, 0, five),
                        plain("10 %, 1 Hz", 0.10, 0, Radio.good(1).slowly(0)),
                        plain(
                                "10 %, 10 Hz, heights 50 m off",
                                0.10, 0, Radio.good(10).slowly(50)),
                        plain("15 %, untold wind 4 m/s", 0.15, 4, five),
                        plain("15 %, a third missing", 0.15, 0, new Radio(5, 0.33, 0, 0, 0, true).slowly(0)),
                        changed("10 %, one figure dropped", Change.DROPPED),
                        changed("10 %, one figure repeated", Change.REPEATED),
                        changed("10 %, two figures swapped", Change.SWAPPED),
                        changed("10 %, an unknown one inserted", Change.STRANGE),
                        changed("10 %, an extra reposition", Change.REPOSITION),
                        changed("10 %, broken off to land", Change.BROKEN_OFF),
                        plain("10 %, freezes and jumps, reckons on", 0.10, 0, new Radio(5, 0, 3, 3, 0, true).slowly(0)),
                        new Scenario("10 %, start not told, 1 minute on", 0.10, 0, five, Change.NONE, 1, 60))
                .stream()
                .map(s -> s.in(World.HARD))
                .toList();
    }

    /** The same acts as another pilot flies them, further off its places and in other circles, and received late. */
    static List<Scenario> byOthers() {
        return List.of(
                        changed("received late, heights in steps", Change.NONE)
                                .in(World.HARD)
                                .received(),
                        changed("another pilot", Change.NONE),
                        changed("another pilot, received late", Change.NONE).received(),
                        changed("another pilot, received late, one dropped", Change.DROPPED)
                                .received(),
                        changed("another pilot, received late, two swapped", Change.SWAPPED)
                                .received(),
                        changed("another pilot, received late, an unknown one", Change.STRANGE)
                                .received(),
                        changed("another pilot, received late, broken off", Change.BROKEN_OFF)
                                .received())
                .stream()
                .map(s -> s.world == World.HARD ? s : s.in(World.OTHER))
                .toList();
    }

    /** The same acts flown by a dynamics that has nothing in common with these, and received otherwise. */
    static List<Scenario> elsewhere() {
        return List.of(
                        changed("elsewhere", Change.NONE),
                        changed("elsewhere, one figure dropped", Change.DROPPED),
                        changed("elsewhere, one figure repeated", Change.REPEATED),
                        changed("elsewhere, two figures swapped", Change.SWAPPED),
                        changed("elsewhere, an unknown one inserted", Change.STRANGE),
                        changed("elsewhere, an extra reposition", Change.REPOSITION),
                        changed("elsewhere, broken off to land", Change.BROKEN_OFF))
                .stream()
                .map(s -> s.in(World.ELSEWHERE))
                .toList();
    }

    /** What a receiver makes of a flight of this seed. */
    List<Reading> receive(Truth truth, long seed) {
        SplittableRandom random = new SplittableRandom(seed + 99);
        if (world == World.ELSEWHERE) {
            return Elsewhere.receive(truth, random);
        }
        List<Reading> log = radio.receive(truth, random);
        return late ? LateHeights.drawn(new SplittableRandom(seed + 999)).receive(log) : log;
    }

    /** True if the follower is told of the change, as the commentator's key does. */
    boolean told() {
        return change == Change.DROPPED_TOLD || change == Change.SWAPPED_TOLD;
    }

    /** True if the hand steps to each figure that does not follow as planned. */
    boolean byHand() {
        return change == Change.DROPPED_BY_HAND || change == Change.SWAPPED_BY_HAND;
    }

    Truth fly(Display display, long seed) {
        Truth truth = world == World.ELSEWHERE
                ? display.flyElsewhere(order(display, seed), strange(), seed)
                : fly(display, order(display, seed), Fork.NONE, seed);
        return tempo == 1 ? truth : truth.stretched(tempo);
    }

    /** The same flight in another order, or otherwise from some figure on. */
    Truth fly(Display display, List<Integer> order, Fork fork, long seed) {
        return display.fly(order, strange(), share, untoldWindMps, waitS, world, fork, seed);
    }

    private List<Element> strange() {
        return change == Change.REPOSITION ? ROUND : STRANGE_FIGURE;
    }

    /** What is flown, {@link Truth#UNKNOWN} for what is in no plan. */
    List<Integer> order(Display display, long seed) {
        SplittableRandom random = new SplittableRandom(seed * 7919 + 13);
        List<Integer> order = new ArrayList<>(display.asPlanned());
        int last = order.size() - 1;
        int at = 2 + random.nextInt(last - 3);
        if (change == Change.DROPPED
                || change == Change.DROPPED_TOLD
                || change == Change.DROPPED_BY_HAND
                || change == Change.REPEATED
                || change.swaps()) {
            changeFigure(display, order, at);
        } else if (change == Change.STRANGE || change == Change.REPOSITION) {
            order.add(at, Truth.UNKNOWN);
        } else if (change == Change.BROKEN_OFF) {
            order.subList(at, last).clear();
            if (!display.timed(order.get(at))) {
                order.set(at, Truth.UNKNOWN);
            }
        }
        return order;
    }

    /**
     * What is dropped, flown again or swapped is a figure with the way that leads to it: no pilot flies a way for itself, nor
     * anything once the aircraft has landed.
     */
    private void changeFigure(Display display, List<Integer> order, int nearAt) {
        Set<Integer> ways = display.ways();
        int last = order.size() - 1;
        boolean swapsLanding = change.swaps() && display.timed(order.get(last));
        int end = nearAt;
        while (ways.contains(order.get(end))) {
            end++;
        }
        if (end >= last || (swapsLanding && figureFrom(ways, order, end + 1) == last)) {
            end = nearAt - 1;
            while (ways.contains(order.get(end))) {
                end--;
            }
        }
        List<Integer> one = new ArrayList<>(order.subList(begin(ways, order, end), end + 1));
        if (change == Change.REPEATED) {
            order.addAll(end + 1, one);
            return;
        }
        if (change.swaps()) {
            order.addAll(figureFrom(ways, order, end + 1) + 1, one);
        }
        order.subList(end + 1 - one.size(), end + 1).clear();
    }

    /** The first from a place on that is no way; the last if there is none. */
    private static int figureFrom(Set<Integer> ways, List<Integer> order, int from) {
        int at = from;
        while (at < order.size() - 1 && ways.contains(order.get(at))) {
            at++;
        }
        return at;
    }

    /** Where the way begins that leads to a figure. */
    private static int begin(Set<Integer> ways, List<Integer> order, int figureAt) {
        int begin = figureAt;
        while (begin > 1 && ways.contains(order.get(begin - 1))) {
            begin--;
        }
        return begin;
    }
}
