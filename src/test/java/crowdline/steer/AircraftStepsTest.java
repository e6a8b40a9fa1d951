package crowdline.steer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.follow.FollowNow;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.Step;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How sure the follower must be before the show is moved, and for how long. */
class AircraftStepsTest {
    private static final int FLOWN = 2;

    private final AircraftSteps steps = new AircraftSteps();
    private LiveState state = LiveState.initial();

    AircraftStepsTest() {
        happens(new ShowEvent.ShowOpened(0, "Test", List.of("act")));
        happens(new FlightEvent.ActChosen(1, "act", "full", List.of("a", "b", "c", "d", "e"), null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        happens(new FlightEvent.ActStarted(3));
        for (int i = 1; i <= FLOWN; i++) {
            happens(new FlightEvent.Stepped(3 + 10 * i));
        }
        assertThat(state.course().position()).isEqualTo(FLOWN);
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved next) {
            state = next.state();
        }
    }

    /** Which figures it steps to while the same is said for so long. */
    private List<Integer> said(int figure, double confidence, double seconds) {
        List<Integer> moved = new ArrayList<>();
        for (double s = 0; s < seconds; s += 0.1) {
            double nowS = 40 + s;
            steps.next(
                            state,
                            new FollowNow(nowS, FollowNow.State.ON_PLAN, figure, 0, 0.1, confidence, List.of(), 0),
                            nowS)
                    .ifPresent(e -> moved.add(((FlightEvent.AircraftSeen) e).index()));
            if (!moved.isEmpty()) {
                break;
            }
        }
        return moved;
    }

    @Test
    void nextFigureIsTakenWhenItIsLikely() {
        assertThat(said(FLOWN + 1, 0.79, 3)).isEmpty();
        assertThat(said(FLOWN + 1, 0.8, 3)).containsExactly(FLOWN + 1);
    }

    /** What may yet be wrong is said with a confidence of just 0.9, for as long as the doubt lasts. */
    @Test
    void figureOfWhichTheFollowerIsNotSureIsSteppedToOnlyWhenThatLasts() {
        assertThat(said(FLOWN - 1, FollowNow.SURE, 14.9)).isEmpty();
        assertThat(said(0, FollowNow.SURE, 17)).containsExactly(0);
        assertThat(said(FLOWN - 1, Math.nextUp(FollowNow.SURE), 2)).containsExactly(FLOWN - 1);
    }

    /** After a figure that was missed the follower is seldom sure, and the screen is not to stand still for minutes. */
    @Test
    void oneFurtherOnIsTakenSoonerThanOneThatIsBehind() {
        assertThat(said(FLOWN + 2, FollowNow.SURE, 3.9)).isEmpty();
        assertThat(said(FLOWN + 2, 0.79, 20)).isEmpty();
        assertThat(said(FLOWN + 2, FollowNow.SURE, 5)).containsExactly(FLOWN + 2);
    }

    /** What happens while the same is said for so long; what happens is taken. */
    private List<FlightEvent> happensWhile(
            FollowNow.State what, int figure, double confidence, double fromS, double toS) {
        List<FlightEvent> told = new ArrayList<>();
        for (double s = fromS; s < toS; s += 0.1) {
            steps.next(state, new FollowNow(s, what, figure, 0, 0.1, confidence, List.of(), 0), s)
                    .ifPresent(e -> {
                        told.add(e);
                        happens(e);
                    });
        }
        return told;
    }

    @Test
    void whatIsNotInThePlanIsShownOnceThatHasLasted() {
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.79, 40, 60)).isEmpty();
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.9, 60, 63.9)).isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN, 0.9, 63.9, 64.5))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.9, 64.5, 70)).hasSize(1);
        assertThat(state.phase()).isInstanceOfSatisfying(Phase.OffPlan.class, off -> {
            assertThat(off.lastIndex()).isEqualTo(FLOWN);
            assertThat(off.sinceS()).as("since it was likely").isCloseTo(64.5, within(0.05));
        });
    }

    /** In the landing: what is flown there is how the act ends. */
    @Test
    void behindTheLastFigureNothingIsOffThePlan() {
        int last = state.course().figureIds().size() - 1;
        happens(new FlightEvent.AircraftSeen(40, last));
        assertThat(state.course().nextIndex()).isEmpty();
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, last, 0.95, 40, 60)).isEmpty();
        assertThat(state.phase()).isInstanceOf(Phase.Flying.class);
    }

    /** Off the plan the figure that is due is stepped to soon, and so is the one that was never left. */
    @Test
    void figureThatIsDueBringsItBackToThePlan() {
        happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.9, 40, 45);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN + 1, 0.85, 45, 45.95))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN + 1, 0.85, 45.95, 47))
                .hasSize(1);
        assertThat(state.course().position()).isEqualTo(FLOWN + 1);
    }

    @Test
    void figureThatWasNeverLeftIsShownAgain() {
        happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.9, 40, 45);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN, 0.85, 45, 46.4)).isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN, 0.85, 46.4, 47)).hasSize(1);
        assertThat(state.phase()).isInstanceOf(Phase.Flying.class);
    }

    @Test
    void anyOtherFigureIsTakenOnlyAfterAWhile() {
        assertThat(said(0, 1, 1.45)).isEmpty();
        assertThat(said(0, 1, 20)).containsExactly(0);
    }
}
