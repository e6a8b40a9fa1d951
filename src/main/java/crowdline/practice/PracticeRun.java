package crowdline.practice;

import crowdline.live.event.LiveEvent;
import crowdline.live.state.Flown;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.RemarkEntry;
import crowdline.live.state.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** What the commentator did in a practice, state by state. */
final class PracticeRun {
    /** Whoever leaves sooner after something than this has not missed it, seconds: as late as it still counts as seen soon. */
    private static final double NEEDS_S = 8;

    private final String actId;
    private final List<At> states;
    private final double leftS;

    private PracticeRun(String actId, List<At> states, double leftS) {
        this.actId = actId;
        this.states = states;
        this.leftS = leftS;
    }

    /** The state from a time on. */
    private record At(double atS, LiveState state) {}

    /** @param leftS when it was left */
    static PracticeRun of(PracticeFlight flight, List<? extends LiveEvent> events, double leftS) {
        List<At> states = new ArrayList<>();
        LiveState state = LiveState.initial();
        for (LiveEvent event : events) {
            if (Live.next(state, event) instanceof Step.Moved moved) {
                state = moved.state();
                states.add(new At(event.atS(), state));
            }
        }
        return new PracticeRun(flight.actId(), List.copyOf(states), leftS);
    }

    /** Whether there was time to do something about what was seen then. */
    boolean hadTimeAfter(double seenS) {
        return seenS + NEEDS_S <= leftS;
    }

    private LiveState last() {
        return states.isEmpty()
                ? LiveState.initial()
                : states.get(states.size() - 1).state();
    }

    /** When somebody first did something, between two times; a state that was there already counts as from the first. */
    OptionalDouble first(double fromS, double toS, Predicate<LiveState> done) {
        for (int i = 0; i < states.size(); i++) {
            double untilS = i + 1 < states.size() ? states.get(i + 1).atS() : Double.POSITIVE_INFINITY;
            At at = states.get(i);
            if (at.atS() <= toS && untilS >= fromS && done.test(at.state())) {
                return OptionalDouble.of(Math.max(fromS, at.atS()));
            }
        }
        return OptionalDouble.empty();
    }

    /** The marks of a figure's beginning, as they stand in the end. */
    private List<Flown> marks() {
        List<Flown> all = new ArrayList<>();
        LiveState end = last();
        for (FlownAct act : end.course().flownActs()) {
            if (act.actId().equals(actId)) {
                all.addAll(act.flown());
            }
        }
        if (end.course().inTheAir() && actId.equals(end.actId())) {
            all.addAll(end.course().flown());
        }
        return all;
    }

    /** How the beginning of a figure was marked; of several marks the one nearest to a time. */
    Optional<Flown> mark(String figureId, double nearS) {
        return marks().stream()
                .filter(f -> f.figureId().equals(figureId))
                .min(Comparator.comparingDouble(f -> Math.abs(f.startedAtS() - nearS)));
    }

    /** When the act was begun, as it stands in the end. */
    OptionalDouble begunS() {
        return marks().stream().mapToDouble(Flown::startedAtS).min();
    }

    List<RemarkEntry> said() {
        return last().talk().entries().stream()
                .filter(e -> actId.equals(e.actId()))
                .filter(e -> e.outcome() != RemarkEntry.Outcome.SKIPPED)
                .toList();
    }

    /** When the incident page was opened, if it was. */
    OptionalDouble incidentS() {
        return last().incidents().stream().mapToDouble(i -> i.openedAtS()).findFirst();
    }

    static boolean offPlan(LiveState state) {
        return state.phase() instanceof Phase.OffPlan;
    }

    static boolean held(LiveState state) {
        return state.phase() instanceof Phase.Held;
    }

    static boolean over(LiveState state) {
        return state.phase() instanceof Phase.ActDone;
    }
}
