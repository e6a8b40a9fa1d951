package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.ActStarted;
import crowdline.live.event.FlightEvent.AircraftBegan;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.LiveEvent.Undone;
import crowdline.live.event.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

class AircraftBeginsTest {
    private static Played waiting() {
        return Played.waiting().with(new SourceChosen(50, Source.AIRCRAFT));
    }

    private static Played begun() {
        return waiting().with(new AircraftBegan(100, 94));
    }

    @Test
    void aircraftBeginsTheActWhenItWasSeenTo() {
        Played played = begun();
        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.state.course().actStartedAtS()).isEqualTo(94);
        assertThat(played.timeIn(101)).isCloseTo(7, within(1e-9));
        assertThat(played.state.course().begunByAircraft()).isTrue();
    }

    @Test
    void figureThatWasDroppedBeforeTheActIsNotBegun() {
        assertThat(waiting()
                        .with(new FlightEvent.NextDropped(60), new AircraftBegan(100, 94))
                        .state
                        .figureId())
                .isEqualTo("roll");
    }

    @Test
    void nothingBeginsWhereTheAircraftDoesNotLead() {
        Played hand = Played.waiting().with(new AircraftBegan(100, 94));
        assertThat(hand.refusal).isEqualTo("The aircraft is not to begin this act.");
        assertThat(hand.state.phase()).isInstanceOf(Phase.Waiting.class);
        Played incident = waiting().with(new IncidentEvent.IncidentOpened(99), new AircraftBegan(100, 94));
        assertThat(incident.state.phase()).isInstanceOf(Phase.Waiting.class);
    }

    @Test
    void startByHandThatCameFirstStands() {
        Played played = waiting().with(new ActStarted(97), new AircraftBegan(100, 94));
        assertThat(played.refusal).isEqualTo("The aircraft is not to begin this act.");
        assertThat(played.state.course().actStartedAtS()).isEqualTo(97);
        assertThat(played.state.course().begunByAircraft()).isFalse();
    }

    /** The screen has only just said that it began: whoever presses now meant the start. */
    @Test
    void spaceDirectlyAfterTheAircraftsStartIsTheSameStartAndSetsItRight() {
        Played played = begun().with(new Stepped(100.6));
        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.state.course().actStartedAtS()).isEqualTo(100.6);
        assertThat(played.state.course().flown()).containsExactly(new Flown("loop", 100.6, 0, null, Source.HAND));
        assertThat(begun().with(new Stepped(101.2)).state.figureId()).isEqualTo("roll");
    }

    @Test
    void falseStartIsTakenBackByOneKeyAndDoesNotComeAgain() {
        for (LiveEvent key : List.<LiveEvent>of(new SteppedBack(103))) {
            Played played = begun().with(key);
            assertThat(played.state.phase()).isInstanceOf(Phase.Waiting.class);
            assertThat(played.state.course().actStartedAtS()).isNull();
            assertThat(played.with(new AircraftBegan(104, 100)).refusal)
                    .isEqualTo("The aircraft is not to begin this act.");
            assertThat(played.state.phase()).isInstanceOf(Phase.Waiting.class);
            played.with(new ActStarted(110));
            assertThat(played.state.course().actStartedAtS()).isEqualTo(110);
            assertThat(played.state.source()).as("the aircraft goes on to lead").isEqualTo(Source.AIRCRAFT);
            assertThat(played.with(new FlightEvent.AircraftSeen(120, 1)).state.figureId())
                    .isEqualTo("roll");
        }
    }

    @Test
    void startByHandThatWasTakenBackIsNotMadeGoodByTheAircraft() {
        for (LiveEvent key : List.of(new SteppedBack(99), new Undone(99))) {
            Played played = waiting().with(new ActStarted(97), key, new AircraftBegan(100, 94));
            assertThat(played.state.phase()).isInstanceOf(Phase.Waiting.class);
        }
    }

    @Test
    void choosingTheAircraftAgainLetsItBeginAgain() {
        Played played = begun().with(
                        new SteppedBack(103),
                        new SourceChosen(105, Source.HAND),
                        new SourceChosen(106, Source.AIRCRAFT),
                        new AircraftBegan(150, 149));
        assertThat(played.state.course().actStartedAtS()).isEqualTo(149);
    }

    @Test
    void nextActBeginsByItselfAlthoughTheOneBeforeWasTakenBack() {
        Played played = begun().with(
                        new SteppedBack(103),
                        new ActStarted(110),
                        new FlightEvent.ActEnded(200),
                        new FlightEvent.ActChosen(210, "second", "full", Played.FIGURES, null),
                        new AircraftBegan(300, 298));
        assertThat(played.state.actId()).isEqualTo("second");
        assertThat(played.state.figureId()).isEqualTo("loop");
    }

    /** Early and late of the whole act hang on it. */
    @Test
    void startThatIsKnownBetterIsPutRightUntilAHandHasMarkedABoundary() {
        Played played = begun().with(new FlightEvent.NextDropped(104), new AircraftBegan(105, 92));
        assertThat(played.state.course().actStartedAtS()).isEqualTo(92);
        assertThat(played.state.phase()).isEqualTo(new Phase.Flying(0, 92, 0, 100));
        assertThat(played.state.takeBack()).as("Z still means D").contains(new FlightEvent.NextDropped(104));

        played.with(new FlightEvent.AircraftSeen(106, 2), new AircraftBegan(107, 94));
        assertThat(played.state.course().actStartedAtS()).isEqualTo(94);
        assertThat(played.state.course().flown().get(0)).isEqualTo(new Flown("loop", 94, 0, 106.0, Source.AIRCRAFT));
        assertThat(played.with(new AircraftBegan(111, 109))
                        .state
                        .course()
                        .flown()
                        .get(0)
                        .startedAtS())
                .as("no figure begins after its end")
                .isEqualTo(106);

        played.with(new Stepped(120));
        assertThat(played.with(new AircraftBegan(121, 90)).refusal).isEqualTo("The aircraft is not to begin this act.");
    }

    @Test
    void startAfterItWasKnownIsRefused() {
        assertThatThrownBy(() -> new AircraftBegan(100, 101))
                .hasMessage("sinceS is 101.0; it must not be after atS, 100.0");
    }
}
