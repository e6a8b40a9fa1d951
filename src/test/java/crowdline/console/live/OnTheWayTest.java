package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.next.NextView;
import crowdline.live.event.FlightEvent;
import crowdline.patter.Plan;
import org.junit.jupiter.api.Test;

class OnTheWayTest {
    @Test
    void theWayToAFigureIsShownWithTheCallOfThatFigure() {
        String call = new LivePresenter(SmallShow.words())
                .view(SmallShow.moment(104, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100))))
                .next()
                .call();
        NextView next = new LivePresenter(SmallShow.wordsWithATransit("f1"))
                .view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()))
                .next();
        assertThat(next.name()).isEqualTo("flying on");
        assertThat(next.call()).isEqualTo(call).isNotEmpty();
    }

    @Test
    void itIsNothingToLookForwardTo() {
        NextView next = new LivePresenter(SmallShow.wordsWithATransit("f2"))
                .view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()))
                .next();
        assertThat(next.name()).isEqualTo("Loop");
        assertThat(next.later()).extracting(NextView.Later::name).containsExactly("Low pass");
    }
}
