package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Played;
import org.junit.jupiter.api.Test;

/** A loop of 10 s begun at 100 s, a roll after it; the slot of the act is at 60 s. */
class NextStartTest {
    private static final double CALL_S = 4;

    /** In how many seconds the next figure is expected. */
    private static double inS(Played played, double nowS) {
        LiveNow now = played.at(nowS);
        Double byTheClock = now.upcoming().get(0).inS();
        return NextStart.shiftS(played.state, now, CALL_S) + (byTheClock == null ? 0 : byTheClock);
    }

    @Test
    void nextFigureComesWhenTheClockSaysSoButNotAtOnce() {
        assertThat(inS(Played.flying(), 104)).isEqualTo(6);
        assertThat(inS(Played.flying(), 109)).isEqualTo(NextStart.SOON_S);
    }

    @Test
    void figureReallyOverItsTimeLeavesRoomForTheCallOfTheNext() {
        assertThat(inS(Played.flying(), 111.75)).isEqualTo(NextStart.SOON_S);
        assertThat(inS(Played.flying(), 112)).isEqualTo(CALL_S);
        assertThat(inS(Played.flying(), 130)).isEqualTo(CALL_S);
    }

    @Test
    void holdAndALateActLastOn() {
        assertThat(inS(Played.flying().with(new FlightEvent.Held(104)), 105)).isEqualTo(NextStart.OPEN_S);
        assertThat(inS(Played.waiting(), 60)).isEqualTo(NextStart.OPEN_S);
        assertThat(inS(Played.waiting(), 59)).isEqualTo(CALL_S);
        assertThat(inS(Played.waiting(), 50)).isEqualTo(10);
    }

    @Test
    void clockMovesTheActOnByItself() {
        assertThat(inS(Played.flying().with(new FlightEvent.SourceChosen(101, Source.CLOCK)), 109))
                .isEqualTo(1);
    }

    @Test
    void afterTheLastFigureNothingIsExpected() {
        Played last = Played.flying()
                .with(new FlightEvent.Stepped(110), new FlightEvent.Stepped(118), new FlightEvent.Stepped(138));
        assertThat(NextStart.shiftS(last.state, last.at(150), CALL_S)).isZero();
    }
}
