package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.AircraftBegan;
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.FlightEvent.ClockAdvanced;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent.Undone;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.event.TalkEvent.FillerTaken;
import crowdline.live.event.TalkEvent.RemarkLeft;
import crowdline.live.event.TalkEvent.RemarkSaid;
import crowdline.live.state.RemarkEntry.Outcome;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Speaking;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What was taken by a key leaves by itself, and what a key did is taken back and nothing else. */
class TakenWordsTest {
    private static final FillerTaken TAKEN = new FillerTaken(102, "fill", RemarkForm.FULL);

    private static Optional<RemarkLeft> due(Played played, double nowS, Placed... placed) {
        return TalkEnd.due(
                played.state,
                new Plan(List.of(placed), List.of(), 0, 0, true),
                (id, form) -> id.equals("fill") ? Optional.of(new SpokenTime(6, 4, 10)) : Optional.empty(),
                nowS);
    }

    private static Placed call(double startS) {
        return new Placed("call", "roll", RemarkKind.CALL, RemarkForm.FULL, startS, startS + 2, false);
    }

    @Test
    void leavesOnceItHasHadItsTimeWithItsBand() {
        Played played = Played.flying().with(TAKEN);
        assertThat(due(played, 111.9)).isEmpty();
        assertThat(due(played, 112)).contains(new RemarkLeft(112, "fill", false));
        assertThat(due(played, 500)).as("however late it is looked at").contains(new RemarkLeft(112, "fill", false));
    }

    @Test
    void makesWayForACallThatIsDue() {
        Played played = Played.flying().with(TAKEN);
        assertThat(due(played, 104, call(105.5))).isEmpty();
        assertThat(due(played, 104.5, call(105.5))).contains(new RemarkLeft(104.5, "fill", true));
        assertThat(due(played, 109, call(109.5))).as("said to its end").contains(new RemarkLeft(109, "fill", false));
        played.with(new RemarkSaid(104, "call", RemarkForm.FULL));
        assertThat(due(played, 104.5, call(105.5))).as("a call that was said").isEmpty();
    }

    @Test
    void whatIsNoLongerInTheShowLeavesAtOnce() {
        Played played = Played.flying().with(new FillerTaken(102, "gone", RemarkForm.FULL));
        assertThat(due(played, 102)).contains(new RemarkLeft(102, "gone", false));
    }

    @Test
    void countsAsShownAndNotAsSaid() {
        Played played = Played.flying().with(TAKEN, new RemarkLeft(112, "fill", false));
        assertThat(played.state.talk().speaking()).isNull();
        assertThat(played.state.talk().said("fill")).isFalse();
        assertThat(played.state.talk().settled("fill")).isTrue();
        assertThat(played.state.talk().entries())
                .containsExactly(
                        new RemarkEntry("fill", RemarkForm.FULL, Outcome.SHOWN, true, 102.0, 112, "first", "loop"));
        assertThat(played.with(new RemarkSaid(113, "fill", RemarkForm.FULL)).refusal)
                .as("S may still say so")
                .isNull();
    }

    @Test
    void whatACallCutShortMayComeAgain() {
        Played played = Played.flying().with(TAKEN, new RemarkLeft(105, "fill", true));
        assertThat(played.state.talk().settled("fill")).isFalse();
        assertThat(played.state.talk().entries())
                .extracting(RemarkEntry::outcome)
                .containsExactly(Outcome.CUT_SHORT);
    }

    @Test
    void leavingIsNoKeyAndTakingBackPassesOverIt() {
        Played played = Played.flying().with(TAKEN, new RemarkLeft(112, "fill", false));
        assertThat(played.state.takeBack()).contains(TAKEN);
        played.with(new Undone(113));
        assertThat(played.state.talk()).isEqualTo(Talk.NONE);
    }

    @Test
    void steppingBackWithdrawsTheWordsOfTheFigureThatHasNotBegun() {
        Played played = Played.flying()
                .with(
                        new RemarkSaid(103, "loop-fact", RemarkForm.FULL),
                        new RemarkSaid(108, "roll-call", RemarkForm.FULL),
                        new Stepped(109),
                        new RemarkSaid(110, "roll-say", RemarkForm.FULL),
                        new TalkEvent.RemarkStarted(111, "roll-fact", RemarkForm.FULL),
                        new SteppedBack(112, List.of("roll-call", "roll-say", "roll-fact")));
        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.state.talk().speaking()).isNull();
        assertThat(played.state.talk().entries())
                .extracting(RemarkEntry::remarkId)
                .containsExactly("loop-fact");

        played.with(new Undone(113));
        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(played.state.talk().said("roll-call")).isTrue();
        assertThat(played.state.talk().speaking("roll-fact")).isNotNull();
    }

    @Test
    void wordsOfAnEarlierRunStaySaidWhenOneStepsBackInThisOne() {
        Played played = Played.flying()
                .with(
                        new RemarkSaid(103, "roll-call", RemarkForm.FULL),
                        new FlightEvent.ActEnded(120),
                        new FlightEvent.ActChosen(130, "first", "full", Played.FIGURES, null),
                        new FlightEvent.ActStarted(140),
                        new Stepped(150),
                        new SteppedBack(151, List.of("roll-call")));
        assertThat(played.state.talk().said("roll-call")).isTrue();
    }

    @Test
    void whatTheProgramChoseByItselfIsNotTakenBack() {
        Played first = Played.waiting();
        assertThat(first.state.takeBack()).isEmpty();
        assertThat(first.with(new Undone(2)).refusal).isEqualTo("There is nothing to take back.");
        assertThat(first.state.actId()).isEqualTo("first");

        Played begun = Played.waiting().with(new SourceChosen(90, Source.AIRCRAFT), new AircraftBegan(100, 96));
        assertThat(begun.with(new Undone(103)).refusal)
                .isEqualTo("The act has moved on by itself since your last key: press Backspace to go back a figure.");
        assertThat(begun.state.figureId()).isEqualTo("loop");
        assertThat(begun.state.source()).isEqualTo(Source.AIRCRAFT);
    }

    @Test
    void afterAStepOfTheClockOrTheAircraftTakingBackSaysSo() {
        Played clock = Played.flying()
                .with(
                        new SourceChosen(101, Source.CLOCK),
                        new Stepped(104),
                        new ClockAdvanced(112, 2),
                        new Undone(113));
        assertThat(clock.refusal).startsWith("The act has moved on by itself since your last key");
        assertThat(clock.state.figureId()).isEqualTo("spin");

        Played aircraft =
                Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(108, 1), new Undone(109));
        assertThat(aircraft.refusal).startsWith("The act has moved on by itself since your last key");

        Played talk = Played.flying()
                .with(
                        new SourceChosen(101, Source.CLOCK),
                        new ClockAdvanced(110, 1),
                        new RemarkSaid(111, "r1", RemarkForm.FULL),
                        new Undone(112));
        assertThat(talk.refusal).as("S came after it").isNull();
        assertThat(talk.state.talk().said("r1")).isFalse();
    }

    @Test
    void callThatIsOverOrTheVeryWordsTakenMakeNoWay() {
        Played played = Played.flying().with(TAKEN);
        assertThat(due(played, 107.4, call(105.5))).as("to its end").isPresent();
        assertThat(due(played, 107.5, call(105.5))).isEmpty();
        Placed itself = new Placed("fill", "roll", RemarkKind.CALL, RemarkForm.FULL, 105.5, 107.5, false);
        assertThat(due(played, 105, itself)).isEmpty();
        Placed fact = new Placed("fact", "roll", RemarkKind.FACT, RemarkForm.FULL, 105.5, 107.5, false);
        assertThat(due(played, 105, fact)).isEmpty();
        assertThat(due(played, 108, call(108))).as("said just now").contains(new RemarkLeft(108, "fill", false));
    }

    @Test
    void nothingLeavesInAnIncidentOrWhenNothingIsTaken() {
        assertThat(due(Played.flying(), 500)).isEmpty();
        Played open = Played.flying().with(new IncidentEvent.IncidentOpened(101));
        assertThat(due(open, 500)).isEmpty();
    }

    @Test
    void shortWordsLingerForTheHandToMarkThem() {
        Played played = Played.flying().with(TAKEN);
        Function<Double, Optional<RemarkLeft>> at = nowS ->
                TalkEnd.due(played.state, Plan.EMPTY, (id, form) -> Optional.of(new SpokenTime(6, 5.5, 6.5)), nowS);
        assertThat(at.apply(110.9)).isEmpty();
        assertThat(at.apply(111.0)).contains(new RemarkLeft(111, "fill", false));
    }

    @Test
    void othersWordsEndWhatIsBeingSaidAndLaterMarksDoNot() {
        Played played = Played.flying()
                .with(
                        new TalkEvent.RemarkStarted(102, "one", RemarkForm.FULL),
                        new TalkEvent.RemarkStarted(104, "two", RemarkForm.SHORT));
        assertThat(played.state.talk().entries())
                .containsExactly(
                        new RemarkEntry("one", RemarkForm.FULL, Outcome.CUT_SHORT, false, 102.0, 104, "first", "loop"));

        played.with(new RemarkSaid(105, "other", RemarkForm.FULL), new TalkEvent.RemarkSkipped(106, "third"));
        assertThat(played.state.talk().speaking()).isEqualTo(new Speaking("two", RemarkForm.SHORT, 104, false));
        assertThat(played.state.talk().skipped("third")).isTrue();
        assertThat(played.state.talk().skipped("other")).isFalse();

        played.with(new RemarkSaid(103.9, "two", RemarkForm.SHORT));
        assertThat(played.state.talk().speaking()).isNull();
        assertThat(played.state.talk().entries())
                .as("not said before it was begun")
                .endsWith(new RemarkEntry("two", RemarkForm.SHORT, Outcome.SAID, false, 104.0, 104, "first", "loop"));
    }

    @Test
    void leavingOutWhatIsBeingSaidCutsItShort() {
        Played played = Played.flying().with(TAKEN, new TalkEvent.RemarkSkipped(104, "fill"));
        assertThat(played.state.talk().speaking()).isNull();
        assertThat(played.state.talk().entries())
                .extracting(RemarkEntry::outcome)
                .containsExactly(Outcome.CUT_SHORT, Outcome.SKIPPED);

        played.with(new RemarkSaid(105, "fill", RemarkForm.FULL));
        assertThat(played.state.talk().skipped("fill")).as("said after all").isFalse();
    }
}
