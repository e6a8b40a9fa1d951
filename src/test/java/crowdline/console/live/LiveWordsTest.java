package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Single words of the Live screen that must not mislead. */
class LiveWordsTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.words());

    @Test
    void howLateASlotIsStandsThereInMinutes() {
        assertThat(waiting(100).now().name()).isEqualTo("Due now");
        assertThat(waiting(159).now().name()).isEqualTo("Due now");
        assertThat(waiting(160).now().name()).isEqualTo("Due now, 1 min late");
        assertThat(waiting(275).now().name()).isEqualTo("Due now, 2 min late");
        assertThat(waiting(100 + 65 * 60).now().name()).isEqualTo("Due now, 1 h 05 min late");
    }

    private LiveView waiting(double nowS) {
        return presenter.view(SmallShow.moment(nowS, Plan.EMPTY, SmallShow.after()));
    }

    @Test
    void theVariantStandsInLiveWhereThereAreSeveral() {
        LiveState flat = SmallShow.after(
                new FlightEvent.VariantChosen(50, "flat", List.of("f3")), new FlightEvent.ActStarted(100));
        assertThat(presenter.view(SmallShow.moment(104, Plan.EMPTY, flat)).now().caption())
                .isEqualTo("Flying now \u00b7 Variant: flat");
    }

    @Test
    void fIsOfferedOnlyWhileThereIsAFiller() {
        LiveState state = SmallShow.after(new FlightEvent.ActStarted(100));
        assertThat(presenter
                        .view(SmallShow.moment(104, Plan.EMPTY, state))
                        .say()
                        .breaths())
                .containsExactly("Nothing to say for now. Next: Stall turn. Press F for a filler.");
        LiveState said = SmallShow.after(
                new FlightEvent.ActStarted(100), new TalkEvent.RemarkSaid(102, "r-fill", RemarkForm.FULL));
        LiveView none = presenter.view(SmallShow.moment(104, Plan.EMPTY, said));
        assertThat(none.say().breaths()).containsExactly("Nothing to say for now. Next: Stall turn.");
        assertThat(none.handles().fillerId()).isNull();
    }

    /** It stood until S, and hid every call after it. */
    @Test
    void whatWasTakenLeavesAtItsTimeAndMakesWayForACall() {
        LiveState taken = SmallShow.after(
                new FlightEvent.ActStarted(100), new TalkEvent.FillerTaken(101, "r-fill", RemarkForm.FULL));
        Plan plan = SmallShow.plan(SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 104.5));
        assertThat(presenter.view(SmallShow.moment(103, plan, taken)).handles().sayId())
                .isEqualTo("r-fill");
        LiveView call = presenter.view(SmallShow.moment(103.6, plan, taken));
        assertThat(call.handles().sayId()).isEqualTo("r-call-2");
        assertThat(call.say().caption()).isEqualTo("Say now");

        assertThat(presenter
                        .view(SmallShow.moment(107.9, Plan.EMPTY, taken))
                        .handles()
                        .sayId())
                .as("four seconds and three to mark it")
                .isEqualTo("r-fill");
        LiveView gone = presenter.view(SmallShow.moment(108, Plan.EMPTY, taken));
        assertThat(gone.handles().sayId()).isNull();
        LiveState left = SmallShow.after(
                new FlightEvent.ActStarted(100),
                new TalkEvent.FillerTaken(101, "r-fill", RemarkForm.FULL),
                new TalkEvent.RemarkLeft(108, "r-fill", false));
        assertThat(presenter
                        .view(SmallShow.moment(109, Plan.EMPTY, left))
                        .handles()
                        .fillerId())
                .as("it counts as said")
                .isNull();
    }
}
