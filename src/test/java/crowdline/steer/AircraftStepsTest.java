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
                    .filter(FlightEvent.AircraftSeen.class::isInstance)
                    .ifPresent(e -> moved.add(((FlightEvent.AircraftSeen) e).index()));
            if (!moved.isEmpty()) {
                break;
            }
        }
        return moved;
    }

    @Test
    void nextFigureIsTakenAsSoonAsItIsLikelierThanNot() {
        assertThat(said(FLOWN + 1, 0.5, 3)).isEmpty();
        assertThat(said(FLOWN + 1, 0.55, 0.15)).isEmpty();
        assertThat(said(FLOWN + 1, 0.55, 1)).containsExactly(FLOWN + 1);
    }

    /** Ten times as likely as all else makes one a second, five hundred times 2.7, and nothing makes more. */
    @Test
    void figureBehindIsTakenOnlyOnceMuchSpeaksForIt() {
        assertThat(said(FLOWN - 1, 10 / 11.0, 19.9)).isEmpty();
    }

    @Test
    void figureBehindThatIsNearlyCertainIsTakenWithinSomeSeconds() {
        assertThat(said(FLOWN - 1, 1, 7.3)).isEmpty();
        assertThat(said(FLOWN - 1, 1, 1)).containsExactly(FLOWN - 1);
    }

    /** After a figure that was missed the follower is seldom sure, and the screen is not to stand still for minutes. */
    @Test
    void oneFurtherOnIsTakenSoonerThanOneThatIsBehind() {
        assertThat(said(FLOWN + 2, FollowNow.SURE, 1)).isEmpty();
        assertThat(said(FLOWN + 2, FollowNow.SURE, 1.3)).containsExactly(FLOWN + 2);
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
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.5, 40, 60)).isEmpty();
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 10 / 11.0, 60, 62.9))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN, 0.99, 62.9, 64.5))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 10 / 11.0, 64.5, 67.4))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 10 / 11.0, 67.4, 68))
                .hasSize(1);
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
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN + 1, 0.9, 45, 45.95))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN + 1, 0.9, 45.95, 46.5))
                .hasSize(1);
        assertThat(state.course().position()).isEqualTo(FLOWN + 1);
    }

    @Test
    void figureThatWasNeverLeftIsShownAgain() {
        happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.9, 40, 45);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN, 0.9, 45, 45.95)).isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN, 0.9, 45.95, 46.5))
                .hasSize(1);
        assertThat(state.phase()).isInstanceOf(Phase.Flying.class);
    }

    /** Off the plan too, one that is behind is not stepped to at once. */
    @Test
    void figureBehindBringsItBackOnlyOnceMuchSpeaksForIt() {
        happensWhile(FollowNow.State.OFF_PLAN, FLOWN, 0.9, 40, 45);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 0.9, 45, 65))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 0.9, 65, 69))
                .hasSize(1);
    }

    /** Whoever was seen to fly a figure does not leave it in its midst for one before it; nor is it shown for as long as that takes. */
    @Test
    void whatHasSpokenForTheFigureShownMustBeOutweighed() {
        happensWhile(FollowNow.State.ON_PLAN, FLOWN, 1, 40, 45);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 45, 49.7))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 49.7, 50.3))
                .hasOnlyElementsOfType(FlightEvent.AircraftStrayed.class)
                .hasSize(1);
        assertThat(state.phase()).isInstanceOf(Phase.OffPlan.class);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 50.3, 57))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 57, 58)).hasSize(1);
        assertThat(state.course().position()).isEqualTo(FLOWN - 1);
    }

    /** It was never left, or is what is due: in doubt it comes back as soon as it is likelier than not. */
    @Test
    void doubtThatWasForNothingTakesTheFigureFromTheScreenForNoLonger() {
        for (int comes : new int[] {FLOWN, FLOWN + 1}) {
            double fromS = comes == FLOWN ? 40 : 60;
            happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, fromS, fromS + 4);
            assertThat(state.phase()).isInstanceOf(Phase.OffPlan.class);
            assertThat(happensWhile(FollowNow.State.ON_PLAN, comes, 0.6, fromS + 4, fromS + 4.5))
                    .hasSize(1);
            assertThat(state.course().position()).isEqualTo(comes);
        }
    }

    /** What spoke for the figure before, before the hand went on and off the plan again, is not counted once more. */
    @Test
    void doubtIsOverOnceAFigureIsShownAgain() {
        happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 40, 44);
        assertThat(state.phase()).isInstanceOf(Phase.OffPlan.class);
        happens(new FlightEvent.CameBack(44, FLOWN));
        happensWhile(FollowNow.State.ON_PLAN, FLOWN, 1, 44, 49.9);
        assertThat(state.phase()).isInstanceOf(Phase.Flying.class);
        happens(new FlightEvent.WentOffPlan(50));
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 50, 57)).isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 57, 58)).hasSize(1);
    }

    /** A figure is flown again once it, or the one after it, is over. */
    @Test
    void whatHasSpokenForAFigureThatMayBeOverSaysNothing() {
        happensWhile(FollowNow.State.ON_PLAN, FLOWN, 1, 40, 45);
        steps.next(state, new FollowNow(45, FollowNow.State.ON_PLAN, FLOWN, 0, 0.85, 1, List.of(), 0), 45);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 45.1, 47.9))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 47.9, 48.4))
                .hasSize(1);
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 48.4, 52.3))
                .isEmpty();
        assertThat(happensWhile(FollowNow.State.ON_PLAN, FLOWN - 1, 1, 52.3, 53))
                .hasSize(1);
    }

    /** What the follower doubts after a change caps its confidence, and not the chance by which it compares figures. */
    @Test
    void chancesCountAndNotTheDoubtAfterAChange() {
        List<FollowNow.Candidate> one = List.of(new FollowNow.Candidate(FLOWN - 1, 1, 0.1));
        int taken = 0;
        for (double s = 40; s < 48 && taken == 0; s += 0.1) {
            FollowNow now = new FollowNow(s, FollowNow.State.ON_PLAN, FLOWN - 1, 0, 0.1, FollowNow.SURE, one, 0);
            taken += steps.next(state, now, s).isPresent() ? 1 : 0;
        }
        assertThat(taken).isEqualTo(1);
    }

    @Test
    void withoutAReadingForSomeTimeNothingIsMoved() {
        List<FlightEvent> told = new ArrayList<>();
        for (double s = 40; s < 42.5; s += 0.1) {
            FollowNow silent = new FollowNow(s, FollowNow.State.ON_PLAN, FLOWN + 1, 0, 0.1, 1, List.of(), 2.1);
            steps.next(state, silent, s).ifPresent(told::add);
        }
        assertThat(told).isEmpty();
    }
}
