package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.live.say.SayView;
import crowdline.live.event.FlightEvent;
import crowdline.patter.PatterRules;
import crowdline.patter.Plan;
import crowdline.show.figure.RemarkKind;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** How long there is for a call: until its figure begins, however long nothing else is to be said. Figures last ten seconds. */
class CallTimeTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.words());

    /** The call of the second figure, which begins at 110, in the first. */
    private SayView callAt(double startS, double nowS) {
        Plan plan = SmallShow.plan(
                SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, startS),
                SmallShow.placed("r-fact-act", "f3", RemarkKind.FACT, 160));
        return presenter
                .view(SmallShow.moment(nowS, plan, SmallShow.after(new FlightEvent.ActStarted(100))))
                .say();
    }

    private static double thereIsS(SayView say) {
        return Objects.requireNonNull(say.bars()).thereIsS();
    }

    @Test
    void aCallIsOverAsItsFigureBegins() {
        SayView say = callAt(104.5, 105);

        assertThat(thereIsS(say)).isCloseTo(5.5, within(1e-9));
        assertThat(Objects.requireNonNull(say.verdict()).word()).isEqualTo("Fits, 1 s to spare");
    }

    @Test
    void aCallThatComesTooLateRunsOver() {
        assertThat(thereIsS(callAt(108, 108.5))).isCloseTo(2, within(1e-9));
        assertThat(Objects.requireNonNull(callAt(108, 108.5).verdict()).word()).isEqualTo("Runs over by 2 s");
    }

    @Test
    void whereNobodyKnowsWhenItBeginsACallHasAsLongAsAnyCall() {
        PatterRules rules = PatterRules.DEFAULT;
        Plan plan = SmallShow.plan(SmallShow.placed("r-call-1", "f1", RemarkKind.CALL, 150));
        SayView say =
                presenter.view(SmallShow.moment(150, plan, SmallShow.after())).say();

        assertThat(thereIsS(say))
                .isCloseTo(rules.callStartsAtMostBeforeS() - rules.callEndsAtLeastBeforeS(), within(1e-9));
    }
}
