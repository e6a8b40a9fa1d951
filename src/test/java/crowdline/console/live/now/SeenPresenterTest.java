package crowdline.console.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.LivePresenter;
import crowdline.console.live.SmallShow;
import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.patter.Plan;
import crowdline.steer.Tracking;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A figure of 10 s begun at 100 s: over the top after 4 s, pulling out after 8 s. */
class SeenPresenterTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.wordsWithMoments());

    private @Nullable SeenView at(double nowS, Tracking tracking, LiveEvent... more) {
        LiveEvent[] events = new LiveEvent[more.length + 1];
        events[0] = new FlightEvent.ActStarted(100);
        System.arraycopy(more, 0, events, 1, more.length);
        LiveMoment moment = SmallShow.moment(nowS, Plan.EMPTY, SmallShow.after(events));
        return presenter
                .view(new LiveMoment(moment.state(), moment.now(), moment.plan(), moment.clock(), tracking))
                .now()
                .seen();
    }

    private static Tracking within(int figure, double share, double atS) {
        return new Tracking(0.95, 0.2, null, null, false, new Tracking.Within(figure, share, atS));
    }

    @Test
    void byTheClockAMomentIsSaidFromItsTimeOnAndNotBefore() {
        assertThat(at(100.1, Tracking.NONE)).isEqualTo(new SeenView("", "over the top"));
        assertThat(at(103.9, Tracking.NONE)).isEqualTo(new SeenView("", "over the top"));
        assertThat(at(104.1, Tracking.NONE)).isEqualTo(new SeenView("Over the top", "pulls out"));
        assertThat(at(108.1, Tracking.NONE)).isEqualTo(new SeenView("Pulls out", ""));
    }

    @Test
    void theAircraftTellsBetterThanTheClock() {
        assertThat(at(106, within(0, 0.3, 106))).isEqualTo(new SeenView("", "over the top"));
        assertThat(at(102, within(0, 0.85, 102))).isEqualTo(new SeenView("Pulls out", ""));
        assertThat(at(106, within(0, 0.3, 104.8))).isEqualTo(new SeenView("Over the top", "pulls out"));
    }

    @Test
    void whatWasReadOfAnotherFigureOrLongAgoTellsNothing() {
        assertThat(at(106, within(1, 0.1, 106))).isEqualTo(new SeenView("Over the top", "pulls out"));
        assertThat(at(106, within(0, 0.01, 103.5))).isEqualTo(new SeenView("Over the top", "pulls out"));
    }

    @Test
    void onHoldAndOverItsTimeNothingMoreIsExpected() {
        assertThat(at(109, Tracking.NONE, new FlightEvent.Held(105))).isEqualTo(new SeenView("Over the top", ""));
        assertThat(at(112, Tracking.NONE)).isEqualTo(new SeenView("Pulls out", ""));
        assertThat(at(112, within(0, 0.5, 112))).isEqualTo(new SeenView("Over the top", "pulls out"));
    }

    @Test
    void beforeTheActThereIsNoPlaceForIt() {
        assertThat(presenter
                        .view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()))
                        .now()
                        .seen())
                .isNull();
    }

    @Test
    void itReadsAsOneShortLine() {
        assertThat(new SeenView("", "over the top").words()).isEqualTo("Then over the top");
        assertThat(new SeenView("Over the top", "pulls out").words()).isEqualTo("Over the top, then pulls out");
        assertThat(new SeenView("Over the top", "pulls out").shorter()).isEqualTo("Over the top");
        assertThat(new SeenView("Pulls out", "").words()).isEqualTo("Pulls out");
        assertThat(SeenView.NOTHING.words()).isEmpty();
    }

    @Test
    void theClockIsBehindOnlyByWhatOneWouldNotice() {
        LiveMoment moment = SmallShow.moment(106, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100)));
        assertThat(within(0, 0.55, 106).behindS(moment.now().figure(), 106)).isZero();
        assertThat(within(0, 0.3, 106).behindS(moment.now().figure(), 106)).isEqualTo(3);
        assertThat(within(0, 0.8, 106).behindS(moment.now().figure(), 106)).isEqualTo(-2);
        assertThat(Tracking.NONE.behindS(moment.now().figure(), 106)).isZero();
    }
}
