package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.FlightEvent.ClockAdvanced;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.Released;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.LiveEvent.Undone;
import crowdline.live.event.Source;
import org.junit.jupiter.api.Test;

class ClockAdvanceTest {

    private static Played byClock() {
        return Played.waiting().with(new SourceChosen(2, Source.CLOCK), new FlightEvent.ActStarted(100));
    }

    @Test
    void clockStepsWhenTheTimeOfTheFigureIsUp() {
        Played played = byClock();

        assertThat(ClockAdvance.due(played.state, Played.DURATIONS, 109.9)).isEmpty();
        assertThat(ClockAdvance.due(played.state, Played.DURATIONS, 110)).contains(new ClockAdvanced(110, 1));
    }

    @Test
    void clockDoesNothingWhileTheHandMovesThePosition() {
        assertThat(ClockAdvance.due(Played.flying().state, Played.DURATIONS, 500))
                .isEmpty();
    }

    @Test
    void stepByHandSetsTheClockRight() {
        Played played = byClock().with(new Stepped(106));

        assertThat(ClockAdvance.nextDueS(played.state, Played.DURATIONS)).hasValue(114);
    }

    @Test
    void longGapYieldsEveryBoundaryWithItsOwnTime() {
        Played played = byClock().clockUntil(130);

        assertThat(played.state.course().flown()).extracting(Flown::startedAtS).containsExactly(100.0, 110.0, 118.0);
        assertThat(played.state.figureId()).isEqualTo("spin");
    }

    @Test
    void clockDoesNotEndTheAct() {
        Played played = byClock().clockUntil(5000);

        assertThat(played.state.phase()).isEqualTo(new Phase.Flying(3, 138, 0, 138));
        assertThat(played.at(150).figure()).satisfies(f -> assertThat(f.overS()).isEqualTo(6));
    }

    @Test
    void droppedFigureIsPassedOverByTheClock() {
        Played played = byClock().with(new NextDropped(101)).clockUntil(111);

        assertThat(played.state.figureId()).isEqualTo("spin");
    }

    @Test
    void holdMovesTheBoundary() {
        Played played = byClock().with(new Held(104));
        assertThat(ClockAdvance.due(played.state, Played.DURATIONS, 500)).isEmpty();

        played.with(new Released(107));
        assertThat(ClockAdvance.nextDueS(played.state, Played.DURATIONS)).hasValue(113);
    }

    @Test
    void stepOfTheClockTakenBackIsNotTakenAgainAtOnce() {
        Played played = byClock().clockUntil(112).with(new SteppedBack(112)).clockUntil(119);

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.at(119).figure())
                .satisfies(f -> assertThat(f.waitsForHand()).isTrue());
    }

    @Test
    void clockGoesOnAfterAMistakenStepWasTakenBackInTime() {
        Played played = byClock().with(new Stepped(103), new SteppedBack(105)).clockUntil(110);

        assertThat(played.state.course().flown().get(1).startedAtS()).isEqualTo(110);
    }

    /** The hand says at the very moment the time is up that the figure goes on. */
    @Test
    void figureConfirmedAsItsTimeIsUpWaitsForTheHand() {
        Played played = byClock().with(new Stepped(105), new SteppedBack(110));

        assertThat(ClockAdvance.nextDueS(played.state, Played.DURATIONS)).isEmpty();
        assertThat(ClockAdvance.waitsForHand(played.state, Played.DURATIONS)).isTrue();
    }

    @Test
    void figureThatTakesNoTimeIsLeftAtOnce() {
        Durations none = index -> 0;
        Played played = byClock();

        assertThat(ClockAdvance.nextDueS(played.state, none)).hasValue(100);
        ClockAdvanced due = ClockAdvance.due(played.state, none, 100).orElseThrow();
        assertThat(played.with(due).state.phase()).isEqualTo(new Phase.Flying(1, 100, 0, 100));
    }

    @Test
    void clockChosenLateInAFigureDoesNotRaceAhead() {
        Played played =
                Played.flying().with(new SourceChosen(150, Source.CLOCK)).clockUntil(200);

        assertThat(played.state.figureId()).isEqualTo("loop");
    }

    @Test
    void handWithinASecondOfTheClockMeansTheSameBoundary() {
        Played played = byClock().clockUntil(110).with(new Stepped(110.6));

        assertThat(played.state.phase()).isEqualTo(new Phase.Flying(1, 110.6, 0, 110.6));
        assertThat(played.state.course().flown().get(0).endedAtS()).isEqualTo(110.6);
        assertThat(played.state.course().flown().get(1).mark()).isEqualTo(Source.HAND);
    }

    @Test
    void handASecondAfterTheClockIsAStepOfItsOwn() {
        Played played = byClock().clockUntil(110).with(new Stepped(111));

        assertThat(played.state.figureId()).isEqualTo("spin");
    }

    @Test
    void stepOfTheClockThatDoesNotFitIsRefused() {
        Played played = byClock().with(new ClockAdvanced(110, 2));

        assertThat(played.refusal).isEqualTo("The clock's step does not fit where the act is now.");
    }

    @Test
    void takingBackDoesNotReachBehindAStepOfTheClock() {
        Played played = byClock().with(new NextDropped(101)).clockUntil(112).with(new Undone(113));

        assertThat(played.refusal).isNotNull();
        assertThat(played.state.figureId()).isEqualTo("spin");
    }

    @Test
    void aircraftMovesThePositionOnlyWhenItIsTheSource() {
        Played played = byClock().with(new AircraftSeen(104, 2));
        assertThat(played.refusal).isEqualTo("The aircraft is not being followed now.");

        played.with(new SourceChosen(105, Source.AIRCRAFT), new AircraftSeen(106, 2));
        assertThat(played.state.figureId()).isEqualTo("spin");
        assertThat(ClockAdvance.due(played.state, Played.DURATIONS, 500)).isEmpty();
    }
}
