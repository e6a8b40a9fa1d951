package crowdline.layout;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Chooses for each figure which way and where it is flown, by estimates of what the ways between them take; the few best
 * choices are kept at each figure.
 */
final class Choosing {
    /** How many ways are kept at each figure. */
    private static final int BREADTH = 12;
    /** How many figures it looks ahead when it chooses again. */
    private static final int HORIZON = 4;
    /** Other places to begin a figure that is pinned nowhere, as shares of how far figures are spread. */
    private static final double[] ELSEWHERE = {-0.75, -0.4, 0.4, 0.75};
    /**
     * What it is worth to be as far from where it would be best seen as figures are spread, seconds: half as far is worth a
     * quarter of it. Tuned.
     */
    private static final double ASIDE_S = 60;
    /** What a metre further than that is worth, or one off the end of the line where a figure turns round, seconds. */
    private static final double OFF_S_PER_M = 0.03;
    /** Within this of the end nothing is lost, as a share of how far figures are spread. */
    private static final double AT_END = 0.5;
    /** What a metre off the middle is worth of a pass, seconds. */
    private static final double PASS_OFF_S_PER_M = 0.08;
    /** A pass that begins so late for the middle is nothing to come round for, seconds; by judgement. */
    private static final double LATE_S = 1;
    /** What a metre further from the crowd than the display line is worth, seconds. */
    private static final double FAR_OUT_S_PER_M = 0.15;
    /** Further out than wanted by this it is a choice to begin there, metres. */
    private static final double AS_FAR_OUT_M = 30;
    /** What a metre beyond the area is worth, seconds. */
    private static final double OUTSIDE_S_PER_M = 0.2;

    /** What a loop is worth that ends where it began, as it may against the wind and not with it, or as high; seconds, tuned. */
    private static final double OPEN_S = 180;

    /** So much further out than it needs a figure that turns round may begin, seconds of its flight; tuned. */
    private static final double[] FURTHER_S = {6, 12};

    private final Ground ground;
    private final Map<String, Double> heights = new HashMap<>();

    Choosing(Ground ground) {
        this.ground = ground;
    }

    /** Which way and where a figure is to begin; null for one that is not flown. */
    record Choice(@Nullable Entry entry, @Nullable Boolean takesOffToRight) {
        Choice(@Nullable Entry entry) {
            this(entry, null);
        }
    }

    /**
     * How high each figure begins: as low as it can, for a pass is to be a low one. Without an engine what is lost in it
     * and on the way to the next must leave enough for the next.
     */
    private void lookAhead(List<Wish> wishes) {
        if (!ground.joining.sinks()) {
            return;
        }
        double next = Double.NEGATIVE_INFINITY;
        for (int i = wishes.size() - 1; i >= 0; i--) {
            Wish wish = wishes.get(i);
            if (!ground.isShown(wish) || wish.role() != Wish.Role.FIGURE) {
                continue;
            }
            Measured m = ground.measured(wish, ground.measured(wish, true).lack() == null);
            double changed = m.end().place().z() - ground.area.baseM() - Ground.MARGIN_M;
            double height = Math.max(ground.lowestM(m), next - changed - ground.joining.wonM());
            Double ceiling = ground.area.ceilingM();
            if (ceiling != null) {
                height = Math.max(ground.lowestM(m), Math.min(height, ceiling - m.upM() - Ground.MARGIN_M));
            }
            heights.put(wish.id(), height);
            next = height;
        }
    }

    /**
     * A way to fly the first figures.
     *
     * @param cost of all of it, as seconds
     * @param worth of that, the last figure and the way to it
     */
    private record Branch(
            @Nullable Branch before, Choice choice, FlightState at, double cost, double worth, boolean turnedBack) {
        static Branch begun(@Nullable Branch before, Choice choice, FlightState at, double cost) {
            return new Branch(before, choice, at, cost, 0, false);
        }

        /** The same by then, and nothing flown. */
        Branch waits(boolean turned) {
            return new Branch(this, new Choice(null), at, cost, 0, turned);
        }
    }

    /**
     * One way to go on.
     *
     * @param entry where the next figure is to begin
     * @param cost of it and of the best that can follow, as seconds
     * @param worth of that, the figure and the way to it
     */
    record Option(Entry entry, double cost, double worth) {}

    /** For each figure where and which way it is to begin; a choice without one for what is not flown. */
    List<Choice> chosen(List<Wish> wishes) {
        lookAhead(wishes);
        int timed = 0;
        while (timed < wishes.size() && isOnlyTimed(wishes.get(timed))) {
            timed++;
        }
        return timed == wishes.size()
                ? Collections.nCopies(timed, new Choice(null))
                : best(
                        beginnings(wishes.subList(0, timed), wishes.get(timed)),
                        wishes.subList(timed + 1, wishes.size()));
    }

    /**
     * The best way to go on from where the aircraft has come to by then.
     *
     * @param next the next figures of those that were chosen for
     * @param turnedBack whether it only turns round before them
     * @param may where the first of them may begin
     * @return null if it may begin nowhere there
     */
    @Nullable
    Option option(List<Wish> next, FlightState at, boolean turnedBack, Predicate<Entry> may) {
        List<Branch> branches = List.of(new Branch(null, new Choice(null), at, 0, 0, turnedBack));
        Predicate<Entry> allowed = may;
        for (Wish wish : next.subList(0, Math.min(HORIZON, next.size()))) {
            branches = next(branches, wish, allowed);
            allowed = entry -> true;
        }
        Branch best = branches.isEmpty() ? null : branches.get(0);
        Branch first = best;
        while (first != null && first.before() != null && first.before().before() != null) {
            first = first.before();
        }
        Entry entry = first == null ? null : first.choice().entry();
        return best == null || first == null || entry == null ? null : new Option(entry, best.cost(), first.worth());
    }

    private List<Choice> best(List<Branch> begun, List<Wish> wishes) {
        List<Branch> branches = kept(begun);
        for (Wish wish : wishes) {
            branches = next(branches, wish, entry -> true);
        }
        List<Choice> choices = new ArrayList<>();
        for (Branch b = branches.isEmpty() ? null : branches.get(0); b != null; b = b.before()) {
            choices.add(0, b.choice());
        }
        return choices;
    }

    private List<Branch> next(List<Branch> branches, Wish wish, Predicate<Entry> may) {
        List<Branch> next = new ArrayList<>();
        for (Branch branch : branches) {
            next.addAll(after(branch, wish, may));
        }
        return kept(next);
    }

    private static List<Branch> kept(List<Branch> branches) {
        return branches.stream()
                .sorted(Comparator.comparingDouble(Branch::cost))
                .limit(BREADTH)
                .toList();
    }

    /** Whether nothing is flown in it and the aircraft is in the air. */
    private boolean isOnlyTimed(Wish wish) {
        return wish.role() == Wish.Role.FIGURE && !ground.isShown(wish);
    }

    /** @param before what is only timed before it, which says at most where it comes from */
    private List<Branch> beginnings(List<Wish> before, Wish wish) {
        Branch timed = null;
        Boolean told = null;
        for (Wish wait : before) {
            timed = Branch.begun(timed, new Choice(null), ground.comingIn(true, 0), 0);
            told = told == null ? wait.toRight() : told;
        }
        if (wish.role() == Wish.Role.TAKE_OFF) {
            List<Branch> off = new ArrayList<>();
            for (boolean toRight : ground.takesOff(wish)) {
                off.add(Branch.begun(timed, new Choice(null, toRight), ground.airborne(toRight, 0), 0));
            }
            return off;
        }
        List<Branch> found = new ArrayList<>();
        for (boolean toRight : ways(wish, wish.toRight() == null ? told : wish.toRight())) {
            if (wish.role() != Wish.Role.FIGURE) {
                found.add(Branch.begun(timed, new Choice(null), ground.comingIn(toRight, 0), 0));
                continue;
            }
            for (Entry entry : entries(wish, toRight, null, false)) {
                found.add(Branch.begun(timed, new Choice(entry), leaving(wish, entry), off(wish, entry)));
            }
        }
        return found;
    }

    private List<Branch> after(Branch branch, Wish wish, Predicate<Entry> may) {
        if (wish.role() == Wish.Role.TURN_BACK) {
            return List.of(branch.waits(true));
        }
        if (!ground.isShown(wish) || wish.role() != Wish.Role.FIGURE) {
            return List.of(branch.waits(branch.turnedBack()));
        }
        Boolean told = (wish.toRight() == null && branch.turnedBack())
                ? Boolean.valueOf(!branch.at().toRight())
                : wish.toRight();
        List<Branch> found = new ArrayList<>();
        List<Boolean> ways = ways(wish, told);
        boolean isOut =
                wish.isPass() && ways.stream().allMatch(toRight -> beyondM(branch.at(), seen(wish, toRight)) > 0);
        for (boolean toRight : ways) {
            for (Entry entry : entries(wish, toRight, branch.at(), isOut)) {
                if (!may.test(entry)) {
                    continue;
                }
                Estimating.Estimate way = ground.joining.estimating.estimate(branch.at(), entry);
                double beyond = beyondM(way);
                double worth = Estimating.worthS(way.seconds())
                        + ground.measured(wish, toRight).seconds();
                double cost = branch.cost() + worth + OUTSIDE_S_PER_M * beyond + off(wish, entry);
                found.add(new Branch(branch, new Choice(entry), leaving(wish, entry), cost, worth, false));
            }
        }
        return found;
    }

    /** The ways it can be flown, of those that are wanted; any that it can if none of those. */
    private List<Boolean> ways(Wish wish, @Nullable Boolean told) {
        List<Boolean> can = Stream.of(true, false)
                .filter(toRight ->
                        !ground.isShown(wish) || ground.measured(wish, toRight).lack() == null)
                .toList();
        List<Boolean> wanted =
                can.stream().filter(way -> told == null || way.equals(told)).toList();
        return wanted.isEmpty() ? can : wanted;
    }

    /** Where it is best seen this way. */
    private Entry seen(Wish wish, boolean toRight) {
        Measured m = ground.measured(wish, toRight);
        Double pinnedFt = wish.heightFt();
        double height = pinnedFt != null
                ? ground.toldM(pinnedFt, m)
                : Math.max(ground.lowestM(m), heights.getOrDefault(wish.id(), Double.NEGATIVE_INFINITY));
        return m.begunAt(ground.bestM(wish, m), height);
    }

    /**
     * Where a figure may begin this way: where it is best seen, and from where the aircraft is.
     *
     * @param isOut whether a pass past the middle leads out of an area that was given whichever way it is flown: it may
     *     then be flown elsewhere
     */
    private List<Entry> entries(Wish wish, boolean toRight, @Nullable FlightState at, boolean isOut) {
        Measured m = ground.measured(wish, toRight);
        Entry seen = seen(wish, toRight);
        double height = seen.heightM();
        List<Entry> entries = new ArrayList<>();
        entries.add(seen);
        boolean isFree = wish.isAnywhere() && wish.leadsTo() == null;
        double beyondM = at != null && isOut ? beyondM(at, seen) : 0;
        for (double share : ELSEWHERE) {
            Entry elsewhere = m.begunAt(share * ground.area.spreadM() - m.middleM(), height);
            if (isFree && (!wish.isPass() || (at != null && isOut && beyondM(at, elsewhere) < beyondM))) {
                entries.add(elsewhere);
            }
        }
        if (at != null && at.toRight() == toRight && wish.alongM() == null) {
            entries.addAll(onward(wish, at, seen, m));
        }
        return entries;
    }

    /** Where it may begin without a turn back: where the aircraft is, and as soon as it has its height and speed. */
    private List<Entry> onward(Wish wish, FlightState at, Entry seen, Measured m) {
        Entry here = seen.at(at.place().x());
        double aheadM = ground.joining.straight.needM(at, here);
        Entry ahead = here.at(here.alongM() + here.way() * aheadM);
        double beyondM = (ahead.alongM() - seen.alongM()) * ahead.way();
        List<Entry> onward = new ArrayList<>(further(beyondM > 0 ? ahead : seen, m));
        if (beyondM > 0 || (wish.end() == null && !wish.isPass())) {
            onward.add(ahead);
        }
        onward.removeIf(entry -> !isWithin(entry, ground.roomM(m)));
        if (wish.end() != null) {
            onward.removeIf(entry -> wish.end() != End.ahead(entry.toRight()));
        } else if (wish.isPass()) {
            onward.removeIf(entry -> beyondM >= LATE_S * entry.mps());
        } else if (isWithin(here, ground.farthestM())) {
            onward.add(here);
            if (at.place().y() > here.awayM() + AS_FAR_OUT_M) {
                onward.add(here.away(at.place().y()));
            }
        }
        return onward;
    }

    /** Further out than it needs: a figure that turns round there leaves so much more room for what follows it. */
    private static List<Entry> further(Entry from, Measured m) {
        List<Entry> further = new ArrayList<>();
        for (double seconds : FURTHER_S) {
            if (m.turnsRound()) {
                further.add(from.at(from.alongM() + from.way() * seconds * from.mps()));
            }
        }
        return further;
    }

    private static boolean isWithin(Entry entry, double mostM) {
        return Math.abs(entry.alongM()) < mostM;
    }

    /** About how far out of an area that was given the way there leads, metres. */
    private double beyondM(FlightState at, Entry to) {
        return beyondM(ground.joining.estimating.estimate(at, to));
    }

    private double beyondM(Estimating.Estimate way) {
        return ground.area.halfGiven() ? Math.max(way.reachM() - ground.area.halfM(), 0) : 0;
    }

    /** What is lost by where it is flown, as seconds. */
    double off(Wish wish, Entry entry) {
        Measured m = ground.measured(wish, entry.toRight());
        double from = Math.abs(entry.alongM() - ground.bestM(wish, m));
        double left = entry.alongM() + m.leftM();
        double right = entry.alongM() + m.rightM();
        double outside = Math.max(-left - ground.area.halfM(), 0) + Math.max(right - ground.area.halfM(), 0);
        double farOut = entry.awayM() - Math.max(-m.overM(), 0) - 0.15 * ground.area.spreadM();
        double outsideS = ground.area.halfGiven() ? OUTSIDE_S_PER_M : OFF_S_PER_M;
        double open = m.isWell() ? 0 : OPEN_S;
        return offS(wish, m, from) + FAR_OUT_S_PER_M * Math.max(farOut, 0) + outsideS * outside + open;
    }

    /** @param metres from where it is best seen */
    private double offS(Wish wish, Measured m, double metres) {
        double spreads = metres / ground.area.spreadM();
        if (wish.isPass()) {
            return PASS_OFF_S_PER_M * metres;
        }
        return m.turnsRound()
                ? OFF_S_PER_M * Math.max(metres - AT_END * ground.area.spreadM(), 0)
                : spreads < 1 ? ASIDE_S * spreads * spreads : ASIDE_S + OFF_S_PER_M * (metres - ground.area.spreadM());
    }

    /** Where a figure leaves the aircraft, by how it was measured. */
    private FlightState leaving(Wish wish, Entry entry) {
        return ground.measured(wish, entry.toRight())
                .leaves(new Vec(entry.alongM(), entry.awayM(), entry.heightM() - ground.measuredAtM()));
    }
}
