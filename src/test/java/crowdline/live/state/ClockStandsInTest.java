package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.AircraftFound;
import crowdline.live.event.FlightEvent.AircraftLost;
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.LiveEvent.Undone;
import crowdline.live.event.Source;
import crowdline.live.now.FigureNow;
import crowdline.live.now.Upcoming;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Worked by hand with a loop, a roll, a spin and a pass of 10, 8, 20 and 6 s, begun at 100 s. */
class ClockStandsInTest {

    private static Played byAircraft() {
        return Played.flying().with(new SourceChosen(101, Source.AIRCRAFT));
    }

    private static FigureNow figure(Played played, double nowS) {
        return Objects.requireNonNull(played.at(nowS).figure());
    }

    @Test
    void figureThatEndedWhileNobodySawItIsLeftAtItsTime() {
        Played played = byAircraft().with(new AircraftLost(112, 107)).clockUntil(112);

        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(played.timeIn(112)).isEqualTo(2);
        assertThat(figure(played.clockUntil(119), 119).figureId()).isEqualTo("spin");
    }

    @Test
    void handThatConfirmedAFigureInTimeDoesNotStopTheClock() {
        Played played = byAircraft()
                .with(new Stepped(105), new SteppedBack(106), new AircraftLost(112, 107))
                .clockUntil(112);

        assertThat(played.state.figureId()).isEqualTo("roll");
    }

    @Test
    void figureSeenOverItsTimeWaitsForTheHandAndNothingJumps() {
        Played played = byAircraft().with(new AircraftLost(135, 130)).clockUntil(200);

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(figure(played, 200).waitsForHand()).isTrue();
        assertThat(played.state.course().clockStandsIn()).isTrue();

        played.with(new Stepped(201)).clockUntil(212);
        assertThat(played.state.figureId())
                .as("from there the clock carries on")
                .isEqualTo("spin");
    }

    /** The last position was of 104 s, but at 111 s, when the loop was to be over, the hand went back to it. */
    @Test
    void whatTheHandSaidAfterTheLastPositionStands() {
        Played played = byAircraft()
                .with(new Stepped(110.5), new SteppedBack(111), new AircraftLost(112, 104))
                .clockUntil(200);

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(figure(played, 200).waitsForHand()).isTrue();
    }

    @Test
    void aircraftLeadsAgainFromWhereItIsSeen() {
        Played played = byAircraft().with(new AircraftLost(112, 107)).clockUntil(112);
        assertThat(played.state.source()).isEqualTo(Source.CLOCK);
        assertThat(played.state.course().source()).isEqualTo(Source.AIRCRAFT);
        played.with(new AircraftSeen(113, 2));
        assertThat(played.refusal).isEqualTo("The aircraft is not being followed now.");

        played.with(new AircraftFound(114), new AircraftSeen(115, 2));
        assertThat(played.state.figureId()).isEqualTo("spin");
        assertThat(played.state.source()).isEqualTo(Source.AIRCRAFT);
        assertThat(ClockAdvance.due(played.state, Played.DURATIONS, 500)).isEmpty();
    }

    @Test
    void takingBackReachesWhatTheHandDidAndNotTheStandIn() {
        Played played = byAircraft().with(new NextDropped(102), new AircraftLost(106, 103));
        assertThat(played.state.takeBack()).containsInstanceOf(FlightEvent.NextDropped.class);

        played.with(new Undone(107));
        assertThat(played.at(107).upcoming()).extracting(Upcoming::figureId).startsWith("roll");
    }

    @Test
    void handChoosesTheClockForGoodOrItself() {
        Played played = byAircraft().with(new AircraftLost(106, 103), new SourceChosen(107, Source.AIRCRAFT));
        assertThat(played.refusal).isEqualTo("The clock stands in until there is a position again.");

        played.with(new SourceChosen(108, Source.CLOCK));
        assertThat(played.state.course().clockStandsIn()).isFalse();
        assertThat(played.state.course().source()).isEqualTo(Source.CLOCK);
        assertThat(played.with(new AircraftFound(109)).refusal)
                .isEqualTo("The clock is not standing in for the aircraft.");
    }

    @Test
    void heldFigureStaysHeld() {
        Played played =
                byAircraft().with(new Held(104), new AircraftLost(112, 107)).clockUntil(200);

        assertThat(played.state.phase()).isInstanceOf(Phase.Held.class);
    }
}
