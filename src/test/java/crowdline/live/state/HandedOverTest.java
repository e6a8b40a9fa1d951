package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.LiveEvent.HandedOver;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.junit.jupiter.api.Test;

class HandedOverTest {
    private static LiveState after(LiveEvent... events) {
        LiveState state = ((Step.Moved)
                        Live.next(LiveState.initial(), new ShowEvent.ShowOpened(0, "Day", List.of("first"))))
                .state();
        for (LiveEvent event : events) {
            state = ((Step.Moved) Live.next(state, event)).state();
        }
        return state;
    }

    @Test
    void theTurnGoesToTheOtherAndBack() {
        assertThat(after().whoseTurn()).isEqualTo(WhoseTurn.BY_PLAN);
        assertThat(after(new HandedOver(1, true)).whoseTurn()).isEqualTo(WhoseTurn.OTHER);
        assertThat(after(new HandedOver(1, true), new HandedOver(2, false)).whoseTurn())
                .isEqualTo(WhoseTurn.BY_PLAN);
    }

    @Test
    void takingBackGivesItBackToWhoHadIt() {
        assertThat(after(new HandedOver(1, true), new LiveEvent.Undone(2)).whoseTurn())
                .isEqualTo(WhoseTurn.BY_PLAN);
        assertThat(after(new HandedOver(1, true), new HandedOver(2, false), new LiveEvent.Undone(3))
                        .whoseTurn())
                .isEqualTo(WhoseTurn.OTHER);
    }

    @Test
    void nobodyIsHandedAnythingWhileTheIncidentPageIsOpen() {
        LiveState open = after(new IncidentEvent.IncidentOpened(1));
        assertThat(Live.next(open, new HandedOver(2, true))).isInstanceOf(Step.Refused.class);
    }

    /** It is given back with the remark that the plan had for the other, not with what is written down meanwhile. */
    @Test
    void aTurnTakenFromThePlanGoesBackToItOnceSomethingWasSaid() {
        HandedOver taken = new HandedOver(1, false);
        assertThat(after(taken).whoseTurn()).isEqualTo(WhoseTurn.CONSOLE);
        assertThat(after(taken, new HandedOver(2, true)).whoseTurn()).isEqualTo(WhoseTurn.BY_PLAN);
        assertThat(after(taken, new LiveEvent.Undone(2)).whoseTurn()).isEqualTo(WhoseTurn.BY_PLAN);
        assertThat(after(taken, new LiveEvent.NoteMade(2, "")).whoseTurn()).isEqualTo(WhoseTurn.CONSOLE);
        assertThat(after(taken, new TalkEvent.RemarkSaid(2, "r", RemarkForm.FULL))
                        .whoseTurn())
                .isEqualTo(WhoseTurn.BY_PLAN);
        assertThat(after(taken, new TalkEvent.RemarkSkipped(2, "r")).whoseTurn())
                .isEqualTo(WhoseTurn.BY_PLAN);
        assertThat(after(new HandedOver(1, true), new TalkEvent.RemarkSkipped(2, "r"))
                        .whoseTurn())
                .as("handed over until it is taken back")
                .isEqualTo(WhoseTurn.OTHER);
    }
}
