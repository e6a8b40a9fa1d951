package crowdline.practice;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.loaded.ShowLookup;
import crowdline.practice.Change.Kind;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Count;
import crowdline.practice.PracticeScore.Line;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.sight.picture.Flown;
import crowdline.speech.pace.SpokenTime;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Sessions written out by hand against flights written out by hand: a loop, a stall turn and a pass of ten seconds each. */
class PracticeScoreTest {
    private static final List<String> PLAN = List.of("loop", "stall", "pass");
    private static final Map<String, String> NAMES =
            Map.of("loop", "loop", "stall", "stall turn", "pass", "pass, left");

    private final List<LiveEvent> events = new ArrayList<>(List.of(
            new ShowEvent.ShowOpened(0, "A day", List.of("a")), new FlightEvent.ActChosen(0, "a", "full", PLAN, 30.0)));

    private static Figure figure(String id, Remark... remarks) {
        return new Figure(id, id, null, null, null, 10.0, null, null, List.of(), List.of(remarks));
    }

    private static ShowLookup words() {
        Act act = new Act(
                "a",
                "An act",
                "p",
                "c",
                LocalTime.of(14, 0),
                5,
                null,
                List.of(
                        figure(
                                "loop",
                                Remark.of("call-loop", RemarkKind.CALL, "Now a loop."),
                                Remark.of("say-loop", RemarkKind.EXPLANATION, "Up, over and round.")),
                        figure("stall", Remark.of("call-stall", RemarkKind.CALL, "Now it stops.")),
                        figure("pass")),
                List.of(new Variant("full", null, PLAN)),
                List.of(Remark.of("duty", RemarkKind.DUTY, "Please stay behind the rope.")));
        Show show = new Show(
                        "A day",
                        LocalDate.of(2026, 6, 6),
                        new Venue("A field", null, null, null, null, null, ZoneId.of("UTC"), Venue.Limits.NONE),
                        DayAir.STANDARD,
                        List.of(),
                        List.of(new Performer("p", "A pilot", null, List.of())),
                        List.of(act),
                        List.of())
                .withIncident(new Incident("the director", List.of("Breathe."), List.of("It has stopped."), List.of()));
        return new ShowLookup(
                show, new Catalogue(List.of()), text -> new SpokenTime(4, 3.5, 4.5), (a, v) -> ActSheet.NONE);
    }

    private static Piece piece(String id, double fromS, double toS) {
        return new Piece(Piece.Kind.FIGURE, id, NAMES.getOrDefault(id, id), fromS, toS);
    }

    private static PracticeFlight flight(List<Piece> pieces, Change... changes) {
        return new PracticeFlight("a", "full", Level.THREE, 1, 30, pieces, NAMES, List.of(changes), Flown.NONE);
    }

    private static PracticeFlight asPlanned() {
        return flight(List.of(piece("loop", 30, 40), piece("stall", 40, 50), piece("pass", 50, 60)));
    }

    private PracticeScoreTest happens(LiveEvent... more) {
        events.addAll(List.of(more));
        return this;
    }

    private List<String> told(PracticeFlight flight, About about) {
        return PracticeScore.of(flight, words(), events).about(about).stream()
                .map(Line::words)
                .toList();
    }

    private PracticeScoreTest stepsAt(double first, double second, double third) {
        return happens(
                new FlightEvent.ActStarted(first), new FlightEvent.Stepped(second), new FlightEvent.Stepped(third));
    }

    @Test
    void whoIsInStepIsToldSoInOneLine() {
        assertThat(stepsAt(31, 39, 52).told(asPlanned(), About.STEPS))
                .containsExactly("You were in step with every figure, within 3 s of its start.");
    }

    @Test
    void whatWentWellIsCountedAgainstWhatThereWas() {
        stepsAt(34, 36, 51);
        assertThat(PracticeScore.of(asPlanned(), words(), events).counts())
                .containsExactly(
                        new Count(About.STEPS, 1, 3), new Count(About.CALLS, 0, 2), new Count(About.DUTIES, 0, 1));
    }

    @Test
    void aStepTooLateOrTooEarlyIsToldInSeconds() {
        assertThat(stepsAt(34, 36, 51).told(asPlanned(), About.STEPS))
                .containsExactly(
                        "You were in step with 1 of 3 figures, within 3 s of their start.",
                        "You stepped 4 s after the loop began.",
                        "You stepped 4 s before the stall turn began.");
    }

    @Test
    void stepsThatAreAllLateOrAllEarlyAreToldWhatToDo() {
        assertThat(stepsAt(34, 44, 54).told(asPlanned(), About.STEPS).get(1))
                .isEqualTo("All of these came late: look up before a figure ends, and step as the next begins.");
        events.subList(2, events.size()).clear();
        assertThat(stepsAt(26, 36, 46).told(asPlanned(), About.STEPS).get(1))
                .isEqualTo("All of these came early: you were ahead of the flight. Step when you see a figure begin.");
    }

    @Test
    void aStepThatTheClockMadeIsNotYours() {
        happens(
                new FlightEvent.SourceChosen(1, crowdline.live.event.Source.CLOCK),
                new FlightEvent.ActStarted(30),
                new FlightEvent.ClockAdvanced(46, 1),
                new FlightEvent.Stepped(50));

        assertThat(told(asPlanned(), About.STEPS)).contains("The clock stepped 6 s after the stall turn began.");
    }

    @Test
    void aFigureNeverSteppedToIsTold() {
        assertThat(happens(new FlightEvent.ActStarted(30), new FlightEvent.Stepped(40))
                        .told(asPlanned(), About.STEPS))
                .contains("The pass, left, was flown without a step from you.");
    }

    private static PracticeFlight dropped() {
        return flight(
                List.of(piece("loop", 30, 40), piece("pass", 44, 54)),
                new Change(Kind.DROPPED, List.of("stall"), "stall turn", 44));
    }

    @Test
    void whatWasDroppedWasSeenWhenItsKeyWasPressed() {
        happens(new FlightEvent.ActStarted(30), new FlightEvent.NextDropped(47), new FlightEvent.Stepped(48));

        assertThat(told(dropped(), About.PLAN)).containsExactly("The stall turn was dropped; you saw it after 3 s.");
        assertThat(told(dropped(), About.STEPS)).noneMatch(l -> l.contains("not flown"));
    }

    @Test
    void whoWentByTheListDidNotSeeWhatWasDropped() {
        stepsAt(30, 40, 60);

        assertThat(told(dropped(), About.PLAN)).containsExactly("The stall turn was dropped; you did not see it.");
        assertThat(told(dropped(), About.STEPS)).contains("You stepped into the stall turn, which was not flown.");
    }

    @Test
    void whatWasSwappedIsSeenInTime() {
        PracticeFlight swapped = flight(
                List.of(piece("loop", 30, 40), piece("pass", 40, 50), piece("stall", 50, 60)),
                new Change(Kind.SWAPPED, List.of("pass", "stall"), "the stall turn and the pass, left,", 40));
        happens(new FlightEvent.ActStarted(30), new FlightEvent.NextSwapped(42), new FlightEvent.Stepped(43));

        assertThat(told(swapped, About.PLAN))
                .containsExactly("The stall turn and the pass, left, changed places; you saw it after 2 s.");
        events.subList(3, events.size()).clear();
        happens(new FlightEvent.Stepped(40), new FlightEvent.Stepped(53));
        assertThat(told(swapped, About.PLAN))
                .containsExactly("The stall turn and the pass, left, changed places; you did not see it.");
    }

    @Test
    void somethingUnplannedIsSeenByGoingOffThePlan() {
        PracticeFlight more = flight(
                List.of(
                        piece("loop", 30, 40),
                        new Piece(Piece.Kind.UNPLANNED, "unplanned", "split S", 40, 50),
                        piece("stall", 50, 60)),
                new Change(Kind.UNPLANNED, List.of(), "split S", 40));
        happens(new FlightEvent.ActStarted(30));

        assertThat(told(more, About.PLAN)).containsExactly("The split S was not in the plan; you did not see it.");
        happens(new FlightEvent.WentOffPlan(45), new FlightEvent.CameBack(50, 1));
        assertThat(told(more, About.PLAN)).containsExactly("The split S was not in the plan; you saw it after 5 s.");
    }

    @Test
    void aHoldIsSeenByHolding() {
        PracticeFlight holds = flight(
                List.of(
                        piece("loop", 30, 40),
                        new Piece(Piece.Kind.HOLD, "hold", "hold", 40, 80),
                        piece("stall", 80, 90)),
                new Change(Kind.HOLD, List.of(), "hold", 40));
        happens(new FlightEvent.ActStarted(30), new FlightEvent.Held(52));

        List<Line> lines = PracticeScore.of(holds, words(), events).about(About.PLAN);

        assertThat(lines)
                .containsExactly(
                        new Line(About.PLAN, false, "The aircraft went round and waited; you saw it after 12 s."));
    }

    @Test
    void whatWasBrokenOffIsSeenByEndingTheAct() {
        PracticeFlight broken = flight(
                List.of(piece("loop", 30, 36), new Piece(Piece.Kind.AWAY, "", "", 36, 50)),
                new Change(Kind.BREAK_OFF, List.of("loop"), "loop", 36));
        happens(new FlightEvent.ActStarted(30), new FlightEvent.ActEnded(41));

        assertThat(told(broken, About.PLAN)).containsExactly("The loop was broken off; you saw it after 5 s.");
    }

    private static PracticeFlight incident() {
        return flight(
                List.of(piece("loop", 30, 36), new Piece(Piece.Kind.AWAY, "", "", 36, 50)),
                new Change(Kind.INCIDENT, List.of("loop"), "loop", 36));
    }

    @Test
    void inAnIncidentTheSecondsToTheIncidentPageAreTold() {
        happens(new FlightEvent.ActStarted(30), new IncidentEvent.IncidentOpened(39));

        assertThat(PracticeScore.of(incident(), words(), events).about(About.PLAN))
                .containsExactly(new Line(
                        About.PLAN,
                        true,
                        "The aircraft went down out of sight; you opened the incident page after 3 s."));
    }

    @Test
    void anIncidentPageThatWasNeverOpenedIsTold() {
        assertThat(happens(new FlightEvent.ActStarted(30)).told(incident(), About.PLAN))
                .containsExactly("The aircraft went down out of sight; you did not open the incident page (F12).");
    }

    @Test
    void anIncidentPageWithoutAnIncidentIsTold() {
        happens(new FlightEvent.ActStarted(30), new IncidentEvent.IncidentOpened(33));

        assertThat(told(asPlanned(), About.PLAN))
                .containsExactly("You opened the incident page though nothing had gone wrong.");
    }

    @Test
    void aLateActThatWasBegunByTheListIsTold() {
        PracticeFlight late = flight(List.of(piece("loop", 50, 60)), new Change(Kind.LATE, List.of(), "", 30));

        assertThat(happens(new FlightEvent.ActStarted(30)).told(late, About.PLAN))
                .containsExactly("The act began 20 s late; you began it 20 s before that.");
    }

    @Test
    void callsAreHeldAgainstWhatTheyAnnounce() {
        stepsAt(30, 40, 50);
        happens(new TalkEvent.RemarkSaid(51, "call-stall", RemarkForm.FULL));

        assertThat(told(asPlanned(), About.CALLS))
                .containsExactly(
                        "0 of 2 calls came on time.",
                        "The loop began, and no key marked its call as said.",
                        "The stall turn was called 11 s after it began.");
    }

    @Test
    void callsOnTimeAreToldInOneLine() {
        happens(
                new TalkEvent.RemarkSaid(28, "call-loop", RemarkForm.FULL),
                new FlightEvent.ActStarted(30),
                new TalkEvent.RemarkSaid(41, "call-stall", RemarkForm.FULL));

        assertThat(told(asPlanned(), About.CALLS)).containsExactly("Every call came on time.");
    }

    @Test
    void whoTalksOverTheBeginningOfAFigureIsTold() {
        happens(new FlightEvent.ActStarted(30), new TalkEvent.RemarkSaid(42, "say-loop", RemarkForm.FULL));

        assertThat(told(asPlanned(), About.TALK))
                .containsExactly("You were still saying \u201cUp, over and round.\u201d when the stall turn began.");
    }

    @Test
    void whoIsDoneBeforeTheNextFigureTalkedOverNothing() {
        happens(new FlightEvent.ActStarted(30), new TalkEvent.RemarkSaid(38, "say-loop", RemarkForm.FULL));

        assertThat(told(asPlanned(), About.TALK)).containsExactly("You did not talk over the start of any figure.");
    }

    @Test
    void dutiesAreToldDoneOrNot() {
        happens(new FlightEvent.ActStarted(30));
        assertThat(told(asPlanned(), About.DUTIES))
                .containsExactly("No key marked this duty as done: \u201cPlease stay behind the rope.\u201d");

        happens(new TalkEvent.RemarkSaid(45, "duty", RemarkForm.FULL));
        assertThat(told(asPlanned(), About.DUTIES)).containsExactly("Every duty was done.");
    }

    @Test
    void whatWasNotWaitedForIsNotHeldAgainstAnybody() {
        stepsAt(31, 40, 50);
        PracticeFlight flight = flight(
                List.of(piece("loop", 30, 40), piece("pass", 40, 50), piece("stall", 50, 60)),
                new Change(Kind.LATE, List.of(), "", 30),
                new Change(Kind.SWAPPED, List.of("pass", "stall"), "the stall turn and the low pass", 40));

        PracticeScore left = PracticeScore.of(flight, words(), events, 42);

        assertThat(left.lines())
                .extracting(Line::words)
                .containsExactly(
                        "The act began 0 s late; you began it 1 s after that.",
                        "You were in step with every figure, within 3 s of its start.",
                        "0 of 1 calls came on time.",
                        "The loop began, and no key marked its call as said.");
        assertThat(PracticeScore.of(flight, words(), events, 37).lines()).isEmpty();
    }

    @Test
    void afterAnIncidentNoDutyIsAskedFor() {
        happens(new FlightEvent.ActStarted(30), new IncidentEvent.IncidentOpened(39));

        assertThat(told(incident(), About.DUTIES)).isEmpty();
    }

    @Test
    void whatWasTakenBackIsNotHeldAgainstAnybody() {
        happens(
                new FlightEvent.ActStarted(20),
                new LiveEvent.Undone(22),
                new FlightEvent.ActStarted(30),
                new FlightEvent.Stepped(40),
                new FlightEvent.Stepped(50));

        assertThat(told(asPlanned(), About.STEPS))
                .containsExactly("You were in step with every figure, within 3 s of its start.");
    }
}
