package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.FlightEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.state.Durations;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.steer.Tracking;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Where there is time between two figures, the first is not late, and the screen says when the next begins. */
class BetweenFiguresTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.words());

    @Test
    void betweenTwoFiguresItIsSaidWhenTheNextBegins() {
        LiveState state = SmallShow.after(new FlightEvent.ActStarted(100));
        Durations fiveBetween = new Durations() {
            @Override
            public double secondsOf(int index) {
                return 10;
            }

            @Override
            public double pauseS(int index, int next) {
                return 5;
            }
        };
        LocalDateTime clock = LocalDateTime.of(2026, 6, 6, 14, 31, 5);
        LiveNow now = LiveNow.of(state, fiveBetween, 112, clock.toInstant(ZoneOffset.UTC));

        LiveView view = presenter.view(new LiveMoment(state, now, Plan.EMPTY, clock, Tracking.NONE));

        assertThat(view.now().left()).isEqualTo("0.0 s");
        assertThat(Objects.requireNonNull(view.now().state()).word()).isEqualTo("Flown: the next in 3 s");
    }
}
