package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.RemarkKind;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the screen says in the gap between two acts, and what F takes there. */
class GapWordsTest {
    private static final LocalDateTime OVER = LocalDateTime.of(2026, 6, 6, 14, 31, 5);

    /** The act of the small show, and another at 14:50. */
    private static Show two() {
        Show show = SmallShow.show();
        Act first = show.acts().get(0);
        Act second = new Act(
                "a2",
                "The second",
                first.performer(),
                first.airframe(),
                first.slotStart().plusMinutes(20),
                10,
                first.entry(),
                first.figures(),
                first.variants(),
                List.of());
        return show.withActs(List.of(first, second), show.remarks());
    }

    private static LiveView at(LocalDateTime clock, Plan plan) {
        LiveState state = SmallShow.after(
                new ShowEvent.ShowOpened(1, "Marram Field Air Day", List.of("a1", "a2")),
                new FlightEvent.ActStarted(100),
                new FlightEvent.ActEnded(130));
        return new LivePresenter(SmallShow.words(two())).view(SmallShow.moment(140, plan, state, clock));
    }

    @Test
    void theLengthOfTheGapIsSaidInMinutes() {
        assertThat(at(OVER, Plan.EMPTY).now().look()).endsWith("slot 14:50, in 18 min. Press N for it.");
    }

    @Test
    void ofAGapThatIsOverOrOfAnotherDayNothingIsSaid() {
        assertThat(at(OVER.plusMinutes(19), Plan.EMPTY).now().look()).endsWith("slot 14:50. Press N for it.");
        assertThat(at(OVER.minusDays(1), Plan.EMPTY).now().look()).endsWith("slot 14:50. Press N for it.");
    }

    @Test
    void aFillerThatWaitsOnTheScreenCanBeTakenAtOnce() {
        LiveView waiting = at(OVER, SmallShow.plan(SmallShow.placed("r-fill", "f1", RemarkKind.FILLER, 160)));
        assertThat(waiting.say().caption()).isEqualTo("Say in 20 s");
        assertThat(waiting.handles().fillerId()).isEqualTo("r-fill");

        LiveView now = at(OVER, SmallShow.plan(SmallShow.placed("r-fill", "f1", RemarkKind.FILLER, 139)));
        assertThat(now.say().caption()).isEqualTo("Say now");
        assertThat(now.handles().fillerId()).isNull();
    }
}
