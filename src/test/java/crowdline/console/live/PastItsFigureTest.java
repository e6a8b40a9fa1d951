package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.live.event.FlightEvent;
import crowdline.patter.Plan;
import crowdline.show.figure.RemarkKind;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A remark may run a little past its figure: the time there is goes on so far, and it is said what it runs over. */
class PastItsFigureTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.words());

    @Test
    void aRemarkMayRunALittlePastItsFigure() {
        Plan plan = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 108));
        LiveView view = presenter.view(SmallShow.moment(108, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(Objects.requireNonNull(view.say().verdict()).word()).isEqualTo("Runs over its figure by 2 s");
        assertThat(Objects.requireNonNull(view.say().verdict()).form()).isEqualTo(Form.DIAMOND);
        assertThat(Objects.requireNonNull(view.say().bars()).thereIs()).isEqualTo("5 s left");
    }

    @Test
    void itRunsPastItsFigureNoFurtherThanToWhatComesNext() {
        Plan plan = SmallShow.plan(
                SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 108),
                SmallShow.placed("r-fact-act", "f2", RemarkKind.FACT, 111));
        LiveView view = presenter.view(SmallShow.moment(108, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(Objects.requireNonNull(view.say().verdict()).word()).isEqualTo("Too long by 2 s");
        assertThat(Objects.requireNonNull(view.say().bars()).thereIs()).isEqualTo("2 s left");
    }
}
