package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.patter.Plan;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stood on the screen at its time is in no plan any more; what is still to come is offered before it. */
class FactsAheadTest {
    private static List<String> facts(Plan plan) {
        return new LivePresenter(SmallShow.words())
                .view(SmallShow.moment(102, plan, SmallShow.after(new FlightEvent.ActStarted(100))))
                .handles()
                .factIds();
    }

    @Test
    void factsThatAreStillPlannedAreOfferedFirst() {
        assertThat(facts(Plan.EMPTY)).containsExactly("r-fact-1", "r-fact-act");
        assertThat(facts(SmallShow.plan(
                        SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 106),
                        SmallShow.placed("r-fact-act", "f3", RemarkKind.FACT, 125))))
                .containsExactly("r-fact-act", "r-fact-1");
    }
}
