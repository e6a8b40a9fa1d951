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
import crowdline.live.state.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Acts whose first figure is over before the follower can have been sure of it for long. */
class ShortFirstFigureTest {
    private static final double STEP_S = 0.2;

    private final ActBegin begin = new ActBegin(false);
    private LiveState state = LiveState.initial();
    private double nowS = 10;
    private double beganS = Double.NaN;
    private double toldS = Double.NaN;

    ShortFirstFigureTest() {
        happens(new ShowEvent.ShowOpened(0, "Test", List.of("act")));
        happens(new FlightEvent.ActChosen(1, "act", "full", List.of("a", "b", "c", "d"), null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved next) {
            state = next.state();
        }
    }

    private void said(FollowNow.State what, int figure, double confidence, double seconds) {
        for (int i = 0; i < Math.round(seconds / STEP_S); i++) {
            nowS += STEP_S;
            FollowNow now = new FollowNow(nowS, what, figure, 0, 0.5, confidence, List.of(), 0);
            begin.next(state, now, nowS).ifPresent(e -> {
                beganS = ((FlightEvent.AircraftBegan) e).sinceS();
                toldS = Double.isNaN(toldS) ? nowS : toldS;
            });
        }
    }

    private void waits() {
        said(FollowNow.State.BEFORE, -1, 0.99, 8);
    }

    @Test
    void secondFigureInItsWakeBeginsTheActWhenTheFirstBegan() {
        waits();
        double flownS = nowS;
        said(FollowNow.State.ON_PLAN, 0, FollowNow.SURE, 2);
        said(FollowNow.State.UNSURE, 0, 0.5, 1);
        said(FollowNow.State.ON_PLAN, 1, FollowNow.SURE, 3.6);
        assertThat(beganS).as("not sure for long enough").isNaN();
        said(FollowNow.State.ON_PLAN, 1, FollowNow.SURE, 2);
        assertThat(beganS).isCloseTo(flownS, within(0.3));
        assertThat(toldS - flownS).isCloseTo(7, within(0.5));
    }

    @Test
    void secondFigureAloneBeginsNothing() {
        waits();
        said(FollowNow.State.ON_PLAN, 1, FollowNow.SURE, 20);
        assertThat(beganS).isNaN();
    }

    @Test
    void secondFigureLongAfterTheFirstBeginsNothing() {
        waits();
        said(FollowNow.State.ON_PLAN, 0, FollowNow.SURE, 2);
        said(FollowNow.State.OFF_PLAN, 0, 0.9, 6);
        said(FollowNow.State.ON_PLAN, 1, FollowNow.SURE, 20);
        assertThat(beganS).isNaN();
    }
}
