package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.next.NextView;
import crowdline.live.event.FlightEvent;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import org.junit.jupiter.api.Test;

class SameNameTest {
    @Test
    void twoFiguresOfOneNameSayWhichTheyAre() {
        LivePresenter twice = new LivePresenter(SmallShow.wordsWithTwoLoops());
        LiveState begun = SmallShow.after(new FlightEvent.ActStarted(100));
        LiveView view = twice.view(SmallShow.moment(104, Plan.EMPTY, begun));
        assertThat(view.now().name()).isEqualTo("Loop, first");
        assertThat(view.next().name()).isEqualTo("Stall turn");
        assertThat(view.next().later()).extracting(NextView.Later::name).containsExactly("Loop, second");
        LiveState swapped = SmallShow.after(
                new FlightEvent.ActStarted(100), new FlightEvent.NextSwapped(102), new FlightEvent.Stepped(110));
        assertThat(twice.view(SmallShow.moment(111, Plan.EMPTY, swapped)).now().name())
                .isEqualTo("Loop, second");
    }
}
