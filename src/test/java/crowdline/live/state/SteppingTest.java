package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.ActEnded;
import crowdline.live.event.FlightEvent.ActStarted;
import crowdline.live.event.FlightEvent.CameBack;
import crowdline.live.event.FlightEvent.DropUndone;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.Released;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.FlightEvent.VariantChosen;
import crowdline.live.event.FlightEvent.WentOffPlan;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class SteppingTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-9);

    @Test
    void actIsFlownInTheVariantChosenLast() {
        assertThat(new Played().state.variant()).isNull();
        assertThat(Played.flying().state.variant()).isEqualTo("full");
        assertThat(Played.flying()
                        .with(new FlightEvent.VariantChosen(101, "flat", List.of("loop", "roll")))
                        .state
                        .variant())
                .isEqualTo("flat");
    }

    @Test
    void actBeginsWithItsFirstFigure() {
        Played played = Played.flying();

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.timeIn(103)).isEqualTo(3, EXACT);
    }

    @Test
    void stepBeginsTheNextFigure() {
        Played played = Played.flying().with(new Stepped(109));

        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(played.timeIn(110)).isEqualTo(1, EXACT);
        assertThat(played.state.course().flown().get(0).endedAtS()).isEqualTo(109);
    }

    @Test
    void stepTakenByMistakeIsTakenBackWithTheClockRight() {
        Played played = Played.flying().with(new Stepped(104), new SteppedBack(107));

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.timeIn(108)).isEqualTo(8, EXACT);
        assertThat(played.state.course().flown()).hasSize(1);
    }

    @Test
    void steppingBackKeepsTheTimeAFigureWasHeld() {
        Played played = Played.flying().with(new Held(102), new Released(105), new Stepped(108), new SteppedBack(109));

        assertThat(played.timeIn(110)).isEqualTo(7, EXACT);
    }

    @Test
    void steppingBackFromTheFirstFigureMeansTheActHasNotStarted() {
        Played played = Played.flying().with(new SteppedBack(101));

        assertThat(played.state.phase()).isEqualTo(new Phase.Waiting());
        assertThat(played.with(new ActStarted(120)).timeIn(121)).isEqualTo(1, EXACT);
    }

    @Test
    void stepAfterTheLastFigureEndsTheAct() {
        Played played = Played.flying().with(new Stepped(110), new Stepped(118), new Stepped(138), new Stepped(144));

        assertThat(played.state.phase()).isEqualTo(new Phase.ActDone(144));
        assertThat(played.state.course().flownActs()).singleElement().satisfies(act -> {
            assertThat(act.actId()).isEqualTo("first");
            assertThat(act.startedAtS()).isEqualTo(100);
            assertThat(act.flown()).extracting(Flown::figureId).isEqualTo(Played.FIGURES);
        });
    }

    @Test
    void actEndedByMistakeGoesOnWithTheSameFigure() {
        Played played = Played.flying().with(new Stepped(110), new ActEnded(112), new SteppedBack(114));

        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(played.timeIn(115)).isEqualTo(5, EXACT);
        assertThat(played.state.course().flownActs()).isEmpty();
    }

    @Test
    void droppedFigureIsPassedOver() {
        Played played = Played.flying().with(new NextDropped(101), new Stepped(110));

        assertThat(played.state.figureId()).isEqualTo("spin");
        assertThat(played.state.course().droppedIds()).containsExactly("roll");
    }

    @Test
    void dropIsUndoneWhileItIsAhead() {
        Played played = Played.flying().with(new NextDropped(101), new DropUndone(102), new Stepped(110));

        assertThat(played.state.figureId()).isEqualTo("roll");
    }

    @Test
    void dropThatIsBehindCannotBeUndone() {
        Played played = Played.flying().with(new NextDropped(101), new Stepped(110), new DropUndone(111));

        assertThat(played.refusal).isEqualTo("No figure ahead is dropped.");
    }

    @Test
    void figureFlownAgainIsFlownTwice() {
        Played played = Played.flying().with(new Stepped(110), new WentOffPlan(119), new CameBack(120, 0));

        assertThat(played.state.course().flown()).extracting(Flown::figureId).containsExactly("loop", "roll", "loop");
        assertThat(played.state.course().nextIndex()).hasValue(1);
    }

    @Test
    void comingBackToADroppedFigureFliesItAfterAll() {
        Played played = Played.flying().with(new NextDropped(101), new WentOffPlan(109), new CameBack(110, 1));

        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(played.state.course().droppedIds()).isEmpty();
    }

    @Test
    void comingBackBeyondTheLastFigureIsRefused() {
        Played played = Played.flying().with(new WentOffPlan(109), new CameBack(110, 4));

        assertThat(played.refusal).isEqualTo("This variant has no such figure.");
        assertThat(played.state.figureId()).isNull();
    }

    @Test
    void offPlanEndsTheFigureAndComingBackBeginsAnother() {
        Played played = Played.flying().with(new WentOffPlan(106), new CameBack(130, 2));

        assertThat(played.state.figureId()).isEqualTo("spin");
        assertThat(played.state.course().flown().get(0).endedAtS()).isEqualTo(106);
        assertThat(played.state.course().flown().get(1).startedAtS()).isEqualTo(130);
    }

    @Test
    void stepFromOffPlanBeginsTheNextOfThePlan() {
        Played played = Played.flying().with(new WentOffPlan(106), new Stepped(130));

        assertThat(played.state.figureId()).isEqualTo("roll");
    }

    @Test
    void stepBackAfterComingBackIsOffPlanAgain() {
        Played played = Played.flying().with(new WentOffPlan(106), new CameBack(130, 2), new SteppedBack(131));

        assertThat(played.state.phase()).isEqualTo(new Phase.OffPlan(0, 106));
    }

    @Test
    void stepBackFromOffPlanGoesOnWithTheFigure() {
        Played played = Played.flying().with(new WentOffPlan(106), new SteppedBack(108));

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.timeIn(109)).isEqualTo(9, EXACT);
    }

    @Test
    void heldClockStandsStill() {
        Played played = Played.flying().with(new Held(104));

        assertThat(played.timeIn(150)).isEqualTo(4, EXACT);
        assertThat(played.with(new Released(150)).timeIn(152)).isEqualTo(6, EXACT);
    }

    @Test
    void keyAndClockMayCrossByMilliseconds() {
        Played played = Played.flying().with(new Stepped(110), new Held(109.99));

        assertThat(played.state.phase()).isEqualTo(new Phase.Held(1, 110, 0, 110));
    }

    @Test
    void variantChangedInTheAirKeepsTheFigureThatBothHave() {
        Played played =
                Played.flying().with(new Stepped(110), new VariantChosen(112, "flat", List.of("turn", "roll", "pass")));

        assertThat(played.state.phase()).isEqualTo(new Phase.Flying(1, 110, 0, 110));
        assertThat(played.with(new Stepped(118)).state.figureId()).isEqualTo("pass");
    }

    @Test
    void variantWithoutTheFigureBeingFlownIsOffItsPlan() {
        Played played =
                Played.flying().with(new Stepped(110), new VariantChosen(112, "flat", List.of("loop", "turn", "pass")));

        assertThat(played.state.phase()).isEqualTo(new Phase.OffPlan(0, 112));
        assertThat(played.with(new Stepped(118)).state.figureId()).isEqualTo("turn");
    }

    @Test
    void actWithoutFiguresIsFlownOffPlan() {
        Played played =
                Played.waiting().with(new VariantChosen(2, "talk", List.of()), new ActStarted(3), new Stepped(90));

        assertThat(played.state.phase()).isEqualTo(new Phase.ActDone(90));
        assertThat(played.with(new SteppedBack(91)).state.phase()).isEqualTo(new Phase.OffPlan(-1, 3));
    }

    @Test
    void nothingHappensBeforeTheActHasStarted() {
        Played played = Played.waiting().with(new Stepped(5));

        assertThat(played.refusal).isEqualTo("The act has not begun: press Space when it does.");
    }

    @Test
    void variantThatNamesAFigureTwiceIsRefused() {
        Played played = Played.waiting().with(new VariantChosen(5, "odd", List.of("loop", "loop")));

        assertThat(played.refusal).isEqualTo("This variant has a figure in it twice, so it cannot be flown here.");
    }

    @Test
    void variantChangedInAHoldKeepsTheHold() {
        Played played = Played.flying()
                .with(new Stepped(110), new Held(112), new VariantChosen(113, "flat", List.of("turn", "pass", "roll")));

        assertThat(played.state.phase()).isEqualTo(new Phase.Held(2, 110, 0, 112));
    }

    @Test
    void variantChangedOffThePlanStaysOffItFromTheSameMoment() {
        Played played = Played.flying()
                .with(
                        new Stepped(110),
                        new WentOffPlan(114),
                        new VariantChosen(120, "flat", List.of("turn", "pass", "roll")));

        assertThat(played.state.phase()).isEqualTo(new Phase.OffPlan(2, 114));
        assertThat(played.with(new VariantChosen(121, "other", List.of("turn")))
                        .state
                        .phase())
                .as("nothing of it was flown")
                .isEqualTo(new Phase.OffPlan(-1, 114));
    }

    @Test
    void stepBackFromTheEndOfAnActThatEndedOffThePlanIsOffPlanAgain() {
        Played played =
                Played.flying().with(new Stepped(110), new WentOffPlan(114), new ActEnded(120), new SteppedBack(121));

        assertThat(played.state.phase()).isEqualTo(new Phase.OffPlan(1, 114));
    }

    @Test
    void stepBackFromAnActWithoutFiguresMeansItHasNotStarted() {
        Played played =
                Played.waiting().with(new VariantChosen(2, "talk", List.of()), new ActStarted(3), new SteppedBack(5));

        assertThat(played.state.phase()).isEqualTo(new Phase.Waiting());
        assertThat(played.state.course().actStartedAtS()).isNull();
    }

    @Test
    void endMarkedBeforeTheHoldOrTheStretchOffPlanBeganIsNotBeforeIt() {
        assertThat(Played.flying()
                        .with(new Held(104), new ActEnded(103.9))
                        .state
                        .phase())
                .isEqualTo(new Phase.ActDone(104));
        assertThat(Played.flying()
                        .with(new WentOffPlan(104), new ActEnded(103.9))
                        .state
                        .phase())
                .isEqualTo(new Phase.ActDone(104));
        assertThat(Played.flying()
                        .with(new Held(104), new Released(103.9))
                        .state
                        .phase())
                .isEqualTo(new Phase.Flying(0, 100, 0, 104));
    }

    @Test
    void holdsOfAFigureAddUpAndTheLastRunsToItsEnd() {
        Played played = Played.flying().with(new Held(102), new Released(105), new Held(106), new ActEnded(110));

        assertThat(played.state.course().flown().get(0)).isEqualTo(new Flown("loop", 100, 7, 110.0, Source.HAND));
    }

    @Test
    void stepRightAfterTheAircraftCameBackToThePlanLeavesTheEndBeforeItAlone() {
        Played played = Played.flying()
                .with(
                        new FlightEvent.SourceChosen(101, Source.AIRCRAFT),
                        new WentOffPlan(106),
                        new FlightEvent.AircraftSeen(130, 2),
                        new Stepped(130.5));

        assertThat(played.state.course().flown())
                .containsExactly(
                        new Flown("loop", 100, 0, 106.0, Source.HAND), new Flown("spin", 130.5, 0, null, Source.HAND));
    }

    /** No hand did it, so no hand need take it back. */
    @Test
    void aircraftThatStraysEndsItsFigureAndComesBackByItself() {
        Played strays = Played.flying()
                .with(new FlightEvent.SourceChosen(101, Source.AIRCRAFT), new FlightEvent.AircraftStrayed(106));
        assertThat(strays.state.phase()).isEqualTo(new Phase.OffPlan(0, 106));
        assertThat(strays.state.course().flown()).containsExactly(new Flown("loop", 100, 0, 106.0, Source.HAND));
        assertThat(strays.state.takeBacks())
                .as("what the keys did, and no more")
                .hasSameSizeAs(Played.flying()
                        .with(new FlightEvent.SourceChosen(101, Source.AIRCRAFT))
                        .state
                        .takeBacks());
        assertThat(strays.with(new FlightEvent.AircraftSeen(130, 1))
                        .state
                        .course()
                        .position())
                .isEqualTo(1);
    }

    @Test
    void actInTheAirOrAnOpenIncidentIsNotToBeLeft() {
        assertThat(Played.waiting().state.mustNotBeLeft()).isFalse();
        assertThat(Played.flying().state.mustNotBeLeft()).isTrue();
        assertThat(Played.flying().with(new ActEnded(140)).state.mustNotBeLeft())
                .isFalse();
        assertThat(Played.waiting()
                        .with(new IncidentEvent.IncidentOpened(5))
                        .state
                        .mustNotBeLeft())
                .isTrue();
    }

    @Test
    void endOfTheShowIsTakenBack() {
        Played played =
                Played.flying().with(new ActEnded(140), new ShowEvent.ShowEnded(150), new LiveEvent.Undone(151));

        assertThat(played.state.phase()).isEqualTo(new Phase.ActDone(140));
    }

    @Test
    void variantThatBeginsWithTheFigureBeingFlownGoesOnInIt() {
        List<String> rollFirst = List.of("roll", "turn");

        assertThat(Played.flying()
                        .with(new Stepped(110), new VariantChosen(112, "flat", rollFirst))
                        .state
                        .phase())
                .isEqualTo(new Phase.Flying(0, 110, 0, 110));
        assertThat(Played.flying()
                        .with(new Stepped(110), new Held(111), new VariantChosen(112, "flat", rollFirst))
                        .state
                        .phase())
                .isEqualTo(new Phase.Held(0, 110, 0, 111));
    }

    @Test
    void flyingADroppedFigureAfterAllLeavesTheOthersDropped() {
        Played played = Played.flying()
                .with(new NextDropped(101), new NextDropped(102), new WentOffPlan(105), new CameBack(110, 1));

        assertThat(played.state.course().droppedIds()).containsExactly("spin");
    }

    @Test
    void runOfAnotherActIsNoEarlierRunOfThisOne() {
        Played played = Played.flying()
                .with(new ActEnded(140), new FlightEvent.ActChosen(150, "second", "full", Played.FIGURES, null));
        assertThat(played.state.course().earlierRunEndS()).isEqualTo(Double.NEGATIVE_INFINITY);

        played.with(new FlightEvent.ActChosen(160, "first", "full", Played.FIGURES, null));
        assertThat(played.state.course().earlierRunEndS()).isEqualTo(140);
    }
}
