package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.state.LiveState;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.junit.jupiter.api.Test;

class SecondPresenterTest {
    private static final List<Remark> REMARKS = SmallShow.show().acts().get(0).figures().stream()
            .map(Figure::remarks)
            .flatMap(List::stream)
            .toList();

    private static Placed placed(int remark, double startS) {
        Remark said = REMARKS.get(remark);
        return new Placed(said.id(), null, said.kind(), RemarkForm.FULL, startS, startS + 3, false);
    }

    private static SecondView at(double nowS, Plan plan, LiveState state) {
        LiveMoment moment = SmallShow.moment(nowS, plan, state);
        return SecondPresenter.of(moment, new LivePresenter(SmallShow.words()).view(moment), SmallShow.words());
    }

    @Test
    void whatIsSaidAfterwardsIsToldWithHowLongUntilThen() {
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(100));
        Plan plan = new Plan(List.of(placed(0, 101), placed(1, 108)), List.of(), 0, 6, true);
        SecondView view = at(102, plan, flying);
        assertThat(String.join(" ", view.live().say().breaths()))
                .isEqualTo(REMARKS.get(0).text());
        assertThat(view.then()).isEqualTo("Then, in 6 s: " + REMARKS.get(1).text());
        assertThat(at(100.5, plan, flying).then())
                .as("what is on the screen and not begun is not what comes after it")
                .isEqualTo("Then, in 8 s: " + REMARKS.get(1).text());
        assertThat(at(102, Plan.EMPTY, flying).then()).isEmpty();
    }

    @Test
    void nothingIsOfferedThatOnlyAKeyCouldTake() {
        SecondView view = at(104, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100)));
        assertThat(view.live().next().facts()).isEmpty();
        assertThat(view.live().handles()).isEqualTo(Handles.NONE);
        assertThat(view.live().told()).isNull();
    }

    @Test
    void whoseTurnItIsIsAWordAndAShape() {
        FlightEvent.ActStarted started = new FlightEvent.ActStarted(100);
        assertThat(at(104, Plan.EMPTY, SmallShow.after(started)).turn().word()).isEqualTo("The commentator speaks");
        assertThat(at(104, Plan.EMPTY, SmallShow.after(started, new LiveEvent.HandedOver(101, true)))
                        .turn()
                        .word())
                .isEqualTo("You speak next");
        assertThat(at(104, Plan.EMPTY, SmallShow.after(started, new IncidentEvent.IncidentOpened(101)))
                        .turn()
                        .word())
                .isEqualTo("Incident: say nothing");
    }
}
