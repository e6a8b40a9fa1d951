package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.ActChosen;
import crowdline.live.event.FlightEvent.ActEnded;
import crowdline.live.event.FlightEvent.ActStarted;
import crowdline.live.event.FlightEvent.AircraftBegan;
import crowdline.live.event.FlightEvent.AircraftLost;
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.FlightEvent.AircraftStrayed;
import crowdline.live.event.FlightEvent.ClockAdvanced;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.Released;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.FlightEvent.VariantChosen;
import crowdline.live.event.FlightEvent.WentOffPlan;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be done now says why and what can be, and leaves everything as it was. */
class RefusalsTest {
    private static final String NOT_BEGUN = "The act has not begun: press Space when it does.";
    private static final String OVER = "The act is over: press N for the next one.";

    private static void refused(Played played, LiveEvent event, String reason) {
        LiveState before = played.state;
        assertThat(played.with(event).refusal).isEqualTo(reason);
        assertThat(played.state).isEqualTo(before);
    }

    @Test
    void actThatIsOverSaysWhatCanBeDoneThen() {
        refused(over(), new Stepped(150), OVER);
        Played last = over().with(new ShowEvent.ActCancelled(141, "second"), new ShowEvent.ActCancelled(142, "third"));
        refused(
                last,
                new Stepped(150),
                "The act is over, and no more are to come: press R, then Ctrl+Enter, to fly one again.");
    }

    private static Played over() {
        return Played.flying().with(new ActEnded(140));
    }

    @Test
    void withoutAnActNothingIsFlown() {
        for (LiveEvent event : List.of(
                new VariantChosen(5, "flat", List.of()),
                new ActStarted(5),
                new AircraftBegan(5, 4),
                new ActEnded(5),
                new Stepped(5))) {
            refused(
                    new Played().with(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first"))),
                    event,
                    "No act is chosen: press N for the next one.");
        }
    }

    @Test
    void whatIsFollowedAlreadyIsNotChosenAgain() {
        refused(Played.flying(), new SourceChosen(101, Source.HAND), "The keys are already being followed.");
        refused(
                Played.flying().with(new SourceChosen(101, Source.CLOCK)),
                new SourceChosen(102, Source.CLOCK),
                "The clock is already being followed.");
        refused(
                Played.flying().with(new SourceChosen(101, Source.AIRCRAFT)),
                new SourceChosen(102, Source.AIRCRAFT),
                "The aircraft is already being followed.");
    }

    @Test
    void actInTheAirIsNotLeftForAnother() {
        refused(
                Played.flying(),
                new ActChosen(101, "second", "full", List.of("loop"), null),
                "An act is still in the air: press E when it is over.");
        refused(
                Played.waiting(),
                new ActChosen(5, "fourth", "full", List.of("loop"), null),
                "That act is not in the running order of this show.");
        refused(
                Played.waiting(),
                new ActChosen(5, "second", "odd", List.of("loop", "loop"), null),
                "This variant has a figure in it twice, so it cannot be flown here.");
    }

    @Test
    void actBeginsOnceAndEndsOnce() {
        refused(Played.flying(), new ActStarted(101), "The act has already begun.");
        refused(over(), new ActStarted(141), OVER);
        refused(over(), new ActEnded(141), OVER);
        refused(over(), new Stepped(141), OVER);
        refused(over(), new VariantChosen(141, "flat", List.of("loop")), OVER);
        refused(Played.waiting(), new ActEnded(5), NOT_BEGUN);
        refused(Played.waiting(), new Held(5), NOT_BEGUN);
    }

    @Test
    void aircraftBeginsOnlyWhatWaitsForItsFirstFigure() {
        refused(
                over().with(new SourceChosen(141, Source.AIRCRAFT)),
                new AircraftBegan(150, 149),
                "The act is not waiting for its first figure.");
        refused(
                Played.waiting().with(new SourceChosen(2, Source.AIRCRAFT), new VariantChosen(3, "talk", List.of())),
                new AircraftBegan(150, 149),
                "The act is not waiting for its first figure.");
        refused(
                Played.waiting().with(new SourceChosen(2, Source.AIRCRAFT), new AircraftBegan(100, 94), new Held(101)),
                new AircraftBegan(102, 93),
                "The first figure is not being flown.");
    }

    @Test
    void onlyWhatIsFollowedMovesThePosition() {
        refused(Played.flying(), new ClockAdvanced(110, 1), "The clock is not being followed now.");
        refused(Played.flying(), new AircraftSeen(110, 1), "The aircraft is not being followed now.");
        refused(Played.flying(), new AircraftLost(110, 109), "The aircraft is not being followed now.");
        refused(
                Played.waiting().with(new SourceChosen(2, Source.AIRCRAFT)),
                new AircraftLost(5, 4),
                "The aircraft is not being followed now.");
        refused(
                Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new AircraftLost(104, 103)),
                new AircraftLost(105, 104),
                "The aircraft is not being followed now.");
        refused(
                Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new Held(102)),
                new AircraftSeen(110, 1),
                "The act is on hold: press H to carry on.");
        refused(Played.flying(), new AircraftStrayed(110), "The aircraft is not being followed now.");
        refused(
                Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new Held(102)),
                new AircraftStrayed(110),
                "The act is on hold: press H to carry on.");
        refused(
                Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new AircraftStrayed(102)),
                new AircraftStrayed(110),
                "The act is already off the plan.");
    }

    @Test
    void clocksStepFitsOnlyTheFigureFlownAndItsTime() {
        Played clock = Played.flying().with(new SourceChosen(100, Source.CLOCK), new Stepped(108));
        String doesNotFit = "The clock's step does not fit where the act is now.";
        refused(clock, new ClockAdvanced(107.9, 2), doesNotFit);
        refused(clock, new ClockAdvanced(116, 1), doesNotFit);
        refused(clock.with(new Held(110)), new ClockAdvanced(116, 2), doesNotFit);
        refused(
                Played.flying()
                        .with(
                                new SourceChosen(100, Source.CLOCK),
                                new WentOffPlan(119),
                                new FlightEvent.CameBack(120, 3)),
                new ClockAdvanced(130, 3),
                doesNotFit);
    }

    @Test
    void holdIsBegunAndEndedOnce() {
        refused(Played.flying().with(new Held(101)), new Held(102), "The act is already on hold: press H to carry on.");
        refused(Played.flying(), new Released(101), "The act is not on hold.");
        refused(Played.flying().with(new WentOffPlan(101)), new Held(102), "Off the plan there is no clock to stop.");
    }

    @Test
    void planIsLeftAndComeBackToOnce() {
        refused(Played.flying().with(new WentOffPlan(101)), new WentOffPlan(102), "The act is already off the plan.");
        refused(Played.flying(), new FlightEvent.CameBack(102, 1), "The act is not off the plan.");
    }

    @Test
    void nothingIsDroppedAfterTheLastFigure() {
        refused(
                Played.flying().with(new WentOffPlan(109), new FlightEvent.CameBack(110, 3)),
                new NextDropped(111),
                "There are no more figures to drop.");
    }

    @Test
    void oneStepsBackOnlyToWhatIsThere() {
        refused(Played.waiting(), new SteppedBack(5), "There is no figure to go back to.");
        refused(
                Played.flying().with(new Stepped(110), new VariantChosen(112, "flat", List.of("turn", "pass"))),
                new SteppedBack(113),
                "The figure before is not in this variant: press V for the other variant first.");
    }

    @Test
    void showEndsOnce() {
        refused(over().with(new ShowEvent.ShowEnded(150)), new ShowEvent.ShowEnded(151), "The show is already over.");
    }

    @Test
    void incidentPageIsOpenedOnceAndLeftOnPurpose() {
        refused(Played.flying(), new IncidentEvent.IncidentClosed(101, true), "The incident page is not open.");
        refused(
                Played.flying().with(new IncidentEvent.IncidentOpened(101)),
                new IncidentEvent.IncidentOpened(102),
                "The incident page is already open.");
        refused(
                Played.flying().with(new IncidentEvent.IncidentOpened(101)),
                new IncidentEvent.IncidentClosed(102, false),
                "The incident page is left only by typing RESUME.");
    }

    @Test
    void remarkIsBegunLeftOutOrLeftOnce() {
        refused(
                Played.flying().with(new TalkEvent.RemarkStarted(101, "r", RemarkForm.FULL)),
                new TalkEvent.FillerTaken(102, "r", RemarkForm.FULL),
                "This remark is already being said.");
        refused(Played.flying(), new TalkEvent.RemarkLeft(101, "r", false), "This remark is not being said.");
        refused(
                Played.flying().with(new TalkEvent.RemarkSkipped(101, "r")),
                new TalkEvent.RemarkSkipped(102, "r"),
                "This remark is already left out.");
        refused(
                Played.flying().with(new TalkEvent.RemarkSaid(101, "r", RemarkForm.FULL)),
                new TalkEvent.RemarkSkipped(102, "r"),
                "This remark is already marked as said.");
    }

    /** A second press within a minute is the same one; later it was said again, as a duty may be. */
    @Test
    void remarkIsMarkedAgainAMinuteLater() {
        Played played = Played.flying().with(new TalkEvent.RemarkSaid(101, "r", RemarkForm.FULL));
        refused(
                played,
                new TalkEvent.RemarkSaid(160.9, "r", RemarkForm.FULL),
                "This remark is already marked as said.");
        played.with(new TalkEvent.RemarkSaid(161, "r", RemarkForm.FULL));
        assertThat(played.refusal).isNull();
        assertThat(played.state.talk().entries()).hasSize(2);
    }

    @Test
    void whatIsShownAfterAKeySaidItChangesNothing() {
        Played played = Played.flying().with(new TalkEvent.RemarkSaid(108, "r", RemarkForm.FULL));
        LiveState before = played.state;
        played.with(new TalkEvent.RemarkShown(110, "r", RemarkForm.FULL, 104));
        assertThat(played.refusal).isNull();
        assertThat(played.state).isEqualTo(before);
        played.with(new TalkEvent.RemarkShown(200, "r", RemarkForm.FULL, 190));
        assertThat(played.state.talk().entries())
                .extracting(RemarkEntry::outcome)
                .containsExactly(RemarkEntry.Outcome.SAID, RemarkEntry.Outcome.SHOWN);
        assertThat(played.state.takeBack()).contains(new TalkEvent.RemarkSaid(108, "r", RemarkForm.FULL));
    }
}
