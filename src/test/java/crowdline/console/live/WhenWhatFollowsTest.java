package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.next.NextView;
import crowdline.console.live.next.NextView.Later;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.patter.Plan;
import org.junit.jupiter.api.Test;

/** When what follows begins: where nobody knows when the next does, it is counted from there. Figures last ten seconds. */
class WhenWhatFollowsTest {
    private static NextView next(double nowS, LiveEvent... events) {
        return new LivePresenter(SmallShow.words())
                .view(SmallShow.moment(nowS, Plan.EMPTY, SmallShow.after(events)))
                .next();
    }

    @Test
    void onTimeAllIsCountedFromNow() {
        NextView next = next(104, new FlightEvent.ActStarted(100));
        assertThat(next.caption() + " " + next.in()).isEqualTo("Next in 6 s");
        assertThat(next.later()).containsExactly(new Later("Low pass", "in 16 s"));
    }

    @Test
    void onHoldNoSecondsRunTowardsIt() {
        NextView next = next(110, new FlightEvent.ActStarted(100), new FlightEvent.Held(104));
        assertThat(next.caption() + " " + next.in()).isEqualTo("Next after the hold");
        assertThat(next.later()).containsExactly(new Later("Low pass", "10 s later"));
    }

    @Test
    void whatIsOverdueMayComeAtAnyMoment() {
        NextView next = next(113, new FlightEvent.ActStarted(100));
        assertThat(next.caption() + " " + next.in()).isEqualTo("Next any moment");
        assertThat(next.later()).containsExactly(new Later("Low pass", "10 s later"));
    }

    @Test
    void theCountdownToTheSlotStandsOnce() {
        LiveView view = new LivePresenter(SmallShow.words()).view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()));
        assertThat(view.now().name()).isEqualTo("On in 1:00");
        assertThat(view.now().left()).isEmpty();
        assertThat(view.now().look()).startsWith("Press Space when the first figure begins.");
    }
}
