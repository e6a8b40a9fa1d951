package crowdline.console.live.strip;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.paint.Mark;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.Source;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.steer.Tracking;
import org.junit.jupiter.api.Test;

class StripPresenterTest {
    private static String sureness(double chance) {
        LiveMoment moment = SmallShow.moment(
                112,
                Plan.EMPTY,
                SmallShow.after(new FlightEvent.SourceChosen(99, Source.AIRCRAFT), new FlightEvent.ActStarted(100)));
        Tracking tracking = new Tracking(chance, 0.2, null, null, false);
        return StripPresenter.of(
                        new LiveMoment(moment.state(), moment.now(), moment.plan(), moment.clock(), tracking),
                        SmallShow.words())
                .sureness()
                .word();
    }

    @Test
    void theStripSaysThatTheMicrophoneListensForAsLongAsItDoes() {
        LiveState on = SmallShow.after(new HeardEvent.ListeningBegan(99));
        LiveState off = SmallShow.after(new HeardEvent.ListeningBegan(99), new HeardEvent.ListeningEnded(100));

        assertThat(strip(on).microphone()).isNotNull().extracting(Mark::word).isEqualTo("Listening");
        assertThat(strip(on).inPractice().microphone()).isNotNull();
        assertThat(strip(off).microphone()).isNull();
    }

    /** A place for a reading that nobody expects says nothing, and takes room from what is read at two metres. */
    @Test
    void readingHasAPlaceOnlyWhereAnAircraftIsFollowed() {
        assertThat(strip(SmallShow.after()).reading()).isNull();
        assertThat(strip(SmallShow.after(new FlightEvent.SourceChosen(99, Source.AIRCRAFT)))
                        .reading())
                .isNotNull()
                .extracting(Mark::word)
                .isEqualTo("None");
    }

    private static StripView strip(LiveState state) {
        return StripPresenter.of(SmallShow.moment(112, Plan.EMPTY, state), SmallShow.words());
    }

    /** The follower tells no more than 0.9 of what may yet turn out to be another figure. */
    @Test
    void whatMayYetBeWrongIsOnlyFairlySure() {
        assertThat(sureness(0.96)).isEqualTo("Sure");
        assertThat(sureness(0.9)).isEqualTo("Fairly sure");
        assertThat(sureness(0.59)).isEqualTo("Not sure");
    }
}
