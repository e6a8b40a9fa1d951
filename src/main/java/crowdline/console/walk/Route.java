package crowdline.console.walk;

import crowdline.patter.PatterRules;
import crowdline.patter.Plan;
import crowdline.patter.Slot;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/** Which act is walked through, in which variant, by which times, and what is planned to be said at those times. */
final class Route {
    /** Within this time after a figure's start, back means the figure before; tuned. */
    private static final double JUST_BEGUN_S = 1;

    /** The act's line begins this long before its first figure, for the call of it. */
    private static final double LEAD_S = PatterRules.DEFAULT.callStartsAtMostBeforeS();

    private static final double TAIL_S = PatterRules.DEFAULT.runPastS();

    private final List<Tour> tours;
    private final BiFunction<Act, ActTimes, Plan> planner;
    private final Passes passes;
    private int tour;
    private Optional<Pass> pass = Optional.empty();
    private ActTimes times;
    private Plan plan = Plan.EMPTY;

    Route(List<Tour> tours, BiFunction<Act, ActTimes, Plan> planner, Passes passes) {
        if (tours.isEmpty()) {
            throw new IllegalArgumentException("there is no act to walk through; it needs at least one");
        }
        this.tours = List.copyOf(tours);
        this.planner = planner;
        this.passes = passes;
        times = tours.get(0).times();
        choose(0, Optional.empty());
    }

    private void choose(int newTour, Optional<Pass> newPass) {
        tour = newTour;
        pass = newPass;
        times = newPass.map(Route::timesOf).orElseGet(() -> tour().times());
        plan = planner.apply(tour().act(), onceEach());
    }

    /** Goes to a variant of an act, if it is there. */
    void choose(String actId, String variant) {
        for (int i = 0; i < tours.size(); i++) {
            Tour each = tours.get(i);
            if (each.act().id().equals(actId) && each.variant().name().equals(variant)) {
                choose(i, Optional.empty());
                return;
            }
        }
    }

    /** Goes to the first variant of an act; false if it is not there, or is the one that is walked through. */
    boolean choose(String actId) {
        Optional<Tour> first =
                tours.stream().filter(each -> each.act().id().equals(actId)).findFirst();
        if (first.isEmpty() || tour().act().id().equals(actId)) {
            return false;
        }
        choose(actId, first.get().variant().name());
        return true;
    }

    /** False if there is no other act. */
    boolean nextAct() {
        int next = tour;
        while (next < tours.size() && isSameAct(next)) {
            next++;
        }
        if (isSameAct(next % tours.size())) {
            return false;
        }
        choose(next % tours.size(), Optional.empty());
        return true;
    }

    /** False if the act has no other variant. */
    boolean nextVariant() {
        int next = (tour + 1) % tours.size();
        if (!isSameAct(next)) {
            next = tour;
            while (next > 0 && isSameAct(next - 1)) {
                next--;
            }
        }
        if (next == tour) {
            return false;
        }
        choose(next, Optional.empty());
        return true;
    }

    /** From the prediction to the first pass, from pass to pass, and back; false if there is no pass. */
    boolean nextTimes() {
        List<Pass> kept = passes.of(tour().act().id(), tour().variant().name());
        if (kept.isEmpty() && pass.isEmpty()) {
            return false;
        }
        int at = pass.map(p -> ids(kept).indexOf(p.id())).orElse(-1);
        choose(tour, at + 1 < kept.size() ? Optional.of(kept.get(at + 1)) : Optional.empty());
        return true;
    }

    private static List<String> ids(List<Pass> kept) {
        return kept.stream().map(Pass::id).toList();
    }

    private boolean isSameAct(int index) {
        return tours.get(index).act().id().equals(tour().act().id());
    }

    Tour tour() {
        return tours.get(tour);
    }

    Act act() {
        return tour().act();
    }

    /** The pass whose times these are; empty for the prediction. */
    Optional<Pass> pass() {
        return pass;
    }

    /** The number of that pass among those of the variant, from 1. */
    int passNumber() {
        List<Pass> kept = passes.of(tour().act().id(), tour().variant().name());
        return pass.map(p -> ids(kept).indexOf(p.id())).orElse(-1) + 1;
    }

    List<FigureTime> figures() {
        return times.figures();
    }

    Plan plan() {
        return plan;
    }

    void keep(Pass made) {
        passes.add(made);
    }

    double fromS() {
        return figures().isEmpty() ? 0 : figures().get(0).startS() - LEAD_S;
    }

    double toS() {
        return figures().isEmpty() ? 0 : endS() + TAIL_S;
    }

    /** The end of the last figure. */
    double endS() {
        return figures().isEmpty() ? 0 : figures().get(figures().size() - 1).endS();
    }

    /** The figure at a second of the act, −1 before the first; after the last it stays the last. */
    int index(double atS) {
        int index = -1;
        for (int i = 0; i < figures().size(); i++) {
            if (figures().get(i).startS() <= atS + 1e-6) {
                index = i;
            }
        }
        return index;
    }

    /** Where a step on or back from a second of the act leads: the start of a figure, or an end of the line. */
    double stepS(boolean on, double atS) {
        int index = on ? index(atS) + 1 : index(atS - JUST_BEGUN_S);
        if (index < 0) {
            return fromS();
        }
        return index < figures().size() ? figures().get(index).startS() : toS();
    }

    List<Slot> slots() {
        return onceEach().figures().stream()
                .map(t -> Slot.of(
                        t, act().figure(t.figureId()).map(Figure::quiets).orElse(List.of())))
                .toList();
    }

    private static ActTimes timesOf(Pass pass) {
        List<FigureTime> figures = pass.figures().stream()
                .map(f -> new FigureTime(f.figureId(), f.startS(), f.durationS(), f.durationS(), f.durationS()))
                .sorted(Comparator.comparingDouble(FigureTime::startS))
                .toList();
        return new ActTimes(pass.actId(), pass.variant(), figures);
    }

    /** A plan knows each figure once; a second flying of it has no words of its own. */
    private ActTimes onceEach() {
        Set<String> seen = new HashSet<>();
        return new ActTimes(
                times.actId(),
                times.variant(),
                figures().stream().filter(f -> seen.add(f.figureId())).toList());
    }
}
