package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.FlightEvent;
import crowdline.patter.Plan;
import org.junit.jupiter.api.Test;

/** What stands where nothing is planned. */
class NothingPlannedTest {
    @Test
    void aPlanThatIsNotThereYetIsSaidSo() {
        LiveView view =
                new LivePresenter(SmallShow.words()).view(SmallShow.moment(10, Plan.NOT_YET, SmallShow.after()));

        assertThat(view.say().breaths()).containsExactly("What to say is still being worked out.");
    }

    @Test
    void anEmptyPlanSaysThatNothingIsPlanned() {
        LiveView view = new LivePresenter(SmallShow.words()).view(SmallShow.moment(10, Plan.EMPTY, SmallShow.after()));

        assertThat(view.say().breaths().get(0)).startsWith("Nothing to say for now. Next:");
    }

    @Test
    void theSameMomentGivesTheSameView() {
        LivePresenter presenter = new LivePresenter(SmallShow.words());
        LiveMoment moment = SmallShow.moment(104, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100)));
        assertThat(presenter.view(moment)).isEqualTo(presenter.view(moment));
    }
}
