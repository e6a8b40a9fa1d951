package crowdline.follow;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.state.ClockAdvance;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.Step;
import crowdline.steer.AircraftFollowing;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** What the screen of Live shows of a flight that the aircraft leads, while nobody touches a key after the start. */
final class LiveFlight {
    private static final String ACT = "act";

    private final FollowPlan plan;
    private final Set<Integer> transits;
    private final AircraftFollowing following;
    private LiveState state = LiveState.initial();

    private LiveFlight(Display display) {
        plan = display.plan;
        transits = display.transits();
        following = new AircraftFollowing(s -> Optional.of(plan));
    }

    /**
     * What is shown, in steps of {@link Score#STEP_S}; sure of it, as a screen is.
     *
     * @param told whether the start is told, and not left to the aircraft
     */
    static List<Score.Said> shown(Display display, Truth truth, List<Reading> log, boolean told) {
        return new LiveFlight(display).shown(truth, log, told);
    }

    private List<Score.Said> shown(Truth truth, List<Reading> log, boolean told) {
        double fromS = truth.instants.get(0).tS();
        happens(new ShowEvent.ShowOpened(fromS, "Trial", List.of(ACT)));
        happens(new FlightEvent.ActChosen(fromS, ACT, "full", ids(f -> true), ids(transits::contains), null));
        happens(new FlightEvent.SourceChosen(fromS, Source.AIRCRAFT));
        double startS = truth.flown.get(0).startS();
        boolean begun = !told;
        int next = 0;
        List<Score.Said> shown = new ArrayList<>();
        for (double t = fromS; t < truth.endS(); t += Score.STEP_S) {
            if (!begun && t >= startS) {
                happens(new FlightEvent.ActStarted(t));
                begun = true;
            }
            following.tick(state, t).ifPresent(this::happens);
            while (next < log.size() && log.get(next).tS() <= t) {
                following.reading(state, log.get(next++)).ifPresent(this::happens);
            }
            ClockAdvance.due(state, plan::plannedS, t).ifPresent(this::happens);
            shown.add(new Score.Said(t, figure(), 1));
        }
        return shown;
    }

    private List<String> ids(IntPredicate which) {
        return IntStream.range(0, plan.size())
                .filter(which)
                .mapToObj(plan::figureId)
                .toList();
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            state = moved.state();
        }
    }

    private int figure() {
        if (state.phase() instanceof Phase.OffPlan) {
            return Truth.UNKNOWN;
        }
        return Math.min(state.course().position(), plan.size() - 1);
    }
}
