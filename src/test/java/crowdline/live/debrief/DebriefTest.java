package crowdline.live.debrief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.live.SmallShow;
import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Plan;
import crowdline.patter.Unplaced;
import crowdline.show.Show;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A show of one act with three figures planned at ten seconds each; what was flown is written out in every test. */
class DebriefTest {
    private static final Show SHOW = SmallShow.show();
    private static final List<String> FIGURES = List.of("f1", "f2", "f3");

    private LiveState state = LiveState.initial();

    private static final class Planned implements DebriefSources {
        private Plan plan = Plan.EMPTY;
        private List<Pass> passes = List.of();

        @Override
        public Optional<ActTimes> times(String actId, String variant) {
            return Optional.of(new ActTimes(
                    actId,
                    variant,
                    List.of(
                            new FigureTime("f1", 0, 10, 9, 11),
                            new FigureTime("f2", 10, 10, 9, 11),
                            new FigureTime("f3", 20, 10, 9, 11))));
        }

        @Override
        public Optional<Plan> plan(String actId, String variant) {
            return Optional.of(plan);
        }

        @Override
        public String name(String actId, String variant, String figureId) {
            return "figure " + figureId;
        }

        @Override
        public double spokenS(String text) {
            return 4;
        }

        @Override
        public List<Pass> passes(String actId, String variant) {
            return passes;
        }
    }

    private final Planned planned = new Planned();

    private void happens(LiveEvent... events) {
        for (LiveEvent event : events) {
            assertThat(Live.next(state, event)).isInstanceOf(Step.Moved.class);
            state = ((Step.Moved) Live.next(state, event)).state();
        }
    }

    private void chosen(double atS) {
        if (state.showTitle() == null) {
            happens(new ShowEvent.ShowOpened(0, SHOW.title(), List.of("a1")));
        }
        happens(new FlightEvent.ActChosen(atS, "a1", "full", FIGURES, atS + 50));
    }

    private Debrief debrief() {
        return Debrief.of(SHOW, state, planned);
    }

    private static FigureRun figure(Debrief debrief, int run, int index) {
        return debrief.runs().get(run).figures().get(index);
    }

    @Test
    void figuresAreSetBesideTheirPlan() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.Stepped(113),
                new FlightEvent.Stepped(122),
                new FlightEvent.ActEnded(132));

        FigureRun first = figure(debrief(), 0, 0);
        FigureRun second = figure(debrief(), 0, 1);
        assertThat(first.flownS()).isEqualTo(13);
        assertThat(first.longerS()).isEqualTo(3);
        assertThat(first.lateS()).isZero();
        assertThat(second.lateS()).isEqualTo(3);
        assertThat(second.longerS()).isEqualTo(-1);
        assertThat(debrief().runs().get(0).flownS()).isEqualTo(32);
    }

    /** E in the middle of a figure says nothing of how long it takes; as the last one, or with the rest dropped, it does. */
    @Test
    void figureTheActWasBrokenOffInWasNotTimed() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.Stepped(110), new FlightEvent.ActEnded(113));
        assertThat(figure(debrief(), 0, 0).measured()).isTrue();
        assertThat(figure(debrief(), 0, 1).measured()).isFalse();
        assertThat(debrief().changes()).noneMatch(c -> c.contains("shorter"));
        chosen(200);
        happens(
                new FlightEvent.ActStarted(300),
                new FlightEvent.Stepped(310),
                new FlightEvent.NextDropped(311),
                new FlightEvent.ActEnded(313));
        assertThat(figure(debrief(), 1, 1).measured()).isTrue();
    }

    @Test
    void timeTheClockWasHeldIsNoLength() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.Held(104),
                new FlightEvent.Released(109),
                new FlightEvent.Stepped(116),
                new FlightEvent.ActEnded(130));

        assertThat(figure(debrief(), 0, 0).flownS()).isEqualTo(11);
        assertThat(figure(debrief(), 0, 0).heldS()).isEqualTo(5);
    }

    @Test
    void droppedAndForgottenFiguresAreToldApart() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.NextDropped(101), new FlightEvent.ActEnded(110));

        assertThat(debrief().runs().get(0).figures())
                .extracting(FigureRun::fate)
                .containsExactly(Fate.FLOWN, Fate.DROPPED, Fate.NOT_FLOWN);
    }

    @Test
    void wayThatWasNotFlownIsNoFigureForgotten() {
        chosen(0);
        happens(
                new FlightEvent.ActChosen(0, "a1", "full", FIGURES, List.of("f2"), 60.0),
                new FlightEvent.ActStarted(100),
                new FlightEvent.NextDropped(101),
                new FlightEvent.ActEnded(110));

        assertThat(debrief().runs().get(0).figures())
                .extracting(FigureRun::figureId)
                .containsExactly("f1", "f3");
    }

    @Test
    void figuresThatWereSwappedSaySo() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.NextSwapped(101),
                new FlightEvent.Stepped(110),
                new FlightEvent.Stepped(120),
                new FlightEvent.ActEnded(130));

        assertThat(debrief().runs().get(0).figures())
                .extracting(FigureRun::fate)
                .containsExactly(Fate.FLOWN, Fate.SWAPPED, Fate.SWAPPED);
    }

    @Test
    void timeOffThePlanIsAStretchOfTheAct() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.WentOffPlan(108),
                new FlightEvent.CameBack(120, 1),
                new FlightEvent.ActEnded(130));

        assertThat(debrief().runs().get(0).offPlan()).containsExactly(new Debrief.OffPlan(8, 20));
    }

    @Test
    void remarksAreSaidLeftOutCutShortOrNotMarked() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new TalkEvent.RemarkSaid(101, "r-call-1", RemarkForm.FULL),
                new TalkEvent.RemarkSkipped(103, "r-say-1"),
                new TalkEvent.RemarkStarted(104, "r-fact-1", RemarkForm.FULL),
                new TalkEvent.RemarkStarted(106, "r-call-2", RemarkForm.FULL),
                new FlightEvent.Stepped(110),
                new FlightEvent.ActEnded(130));

        assertThat(debrief().runs().get(0).remarks())
                .filteredOn(r -> r.figureId() != null)
                .extracting(Debrief.RemarkRun::told)
                .startsWith(Told.SAID, Told.SKIPPED, Told.CUT_SHORT);
        assertThat(debrief().remarks(RemarkKind.FILLER))
                .extracting(Debrief.RemarkRun::told)
                .containsExactly(Told.NOT_MARKED);
    }

    @Test
    void figureThatRanLongInBothRunsIsWorthChanging() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.Stepped(114), new FlightEvent.ActEnded(124));
        chosen(200);
        happens(new FlightEvent.ActStarted(300), new FlightEvent.Stepped(316), new FlightEvent.ActEnded(326));

        assertThat(debrief().runs()).extracting(Debrief.Run::run).containsExactly(1, 2);
        assertThat(debrief().changes())
                .contains("The Calder display: figure f1 took 5 s longer than predicted in both runs");
    }

    @Test
    void figureThatRanLongOnceAndShortOnceIsNot() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.Stepped(114), new FlightEvent.ActEnded(124));
        chosen(200);
        happens(new FlightEvent.ActStarted(300), new FlightEvent.Stepped(306), new FlightEvent.ActEnded(316));

        assertThat(debrief().changes()).noneMatch(c -> c.contains("figure f1"));
    }

    @Test
    void earlierPassCountsAsARun() {
        planned.passes = List.of(Pass.of(
                "p1", "a1", "full", Pass.How.BY_HAND, Instant.EPOCH, List.of(new Pass.TimedFigure("f1", 0, 14))));
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.Stepped(114), new FlightEvent.ActEnded(124));

        assertThat(debrief().changes())
                .contains("The Calder display: figure f1 took 4 s longer than predicted in both runs");
    }

    @Test
    void whatTheClockMarkedTeachesNothing() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.SourceChosen(101, Source.CLOCK),
                new FlightEvent.ClockAdvanced(116, 1),
                new FlightEvent.ActEnded(130));

        assertThat(debrief().changes()).noneMatch(c -> c.contains("figure f1"));
    }

    @Test
    void remarksWithoutAPlaceAreCountedAndNamed() {
        planned.plan = new Plan(
                List.of(),
                List.of(
                        new Unplaced("r-say-1", Unplaced.Why.TOO_LONG, "9 s needed", 9, 5),
                        new Unplaced("r-fill", Unplaced.Why.NO_GAP, "no gap", 4, 0)),
                0,
                0,
                true);
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.ActEnded(130));

        assertThat(debrief().changes()).anyMatch(c -> c.contains("1 remark never fitted") && c.contains("9 s needed"));
    }

    @Test
    void actInTheAirHasNoEndAndNoForgottenFigures() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.Stepped(112));

        Debrief.Run run = debrief().runs().get(0);
        assertThat(run.sessionEndS()).isNull();
        assertThat(run.figures()).extracting(FigureRun::figureId).containsExactly("f1", "f2");
        assertThat(run.figures().get(0).longerS()).isCloseTo(2, within(1e-9));
        assertThat(run.figures().get(1).longerS()).isNull();
    }

    @Test
    void momentOffThePlanBetweenTwoMarksIsNoStretch() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.WentOffPlan(108),
                new FlightEvent.CameBack(108.5, 1),
                new FlightEvent.WentOffPlan(118),
                new FlightEvent.ActEnded(118.625));

        assertThat(debrief().runs().get(0).offPlan()).containsExactly(new Debrief.OffPlan(18, 18.625));
    }

    @Test
    void wordsBelongToTheRunInWhichTheyWereMarked() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.ActEnded(124),
                new TalkEvent.RemarkSaid(124, "r-call-1", RemarkForm.FULL),
                new TalkEvent.RemarkSaid(130, "r-say-1", RemarkForm.FULL));
        chosen(200);
        happens(new FlightEvent.ActStarted(300), new FlightEvent.ActEnded(324));
        happens(new TalkEvent.RemarkSaid(330, "r-fact-1", RemarkForm.FULL));

        assertThat(told(0)).startsWith(Told.SAID, Told.NOT_MARKED, Told.NOT_MARKED);
        assertThat(told(1))
                .as("what comes after a run is of the next")
                .startsWith(Told.NOT_MARKED, Told.SAID, Told.SAID);
    }

    @Test
    void anotherActIsNoRunOfThisOneAndItsWordsAreItsOwn() {
        happens(new ShowEvent.ShowOpened(0, SHOW.title(), List.of("a1", "a2")));
        chosen(1);
        happens(
                new FlightEvent.ActStarted(100),
                new FlightEvent.ActEnded(124),
                new TalkEvent.RemarkSaid(126, "r-call-1", RemarkForm.FULL),
                new FlightEvent.ActChosen(200, "a2", "full", FIGURES, null),
                new FlightEvent.ActStarted(300),
                new TalkEvent.RemarkSaid(301, "r-say-1", RemarkForm.FULL),
                new FlightEvent.ActEnded(324));

        assertThat(debrief().runs()).extracting(Debrief.Run::title).containsExactly("The Calder display", "a2");
        assertThat(debrief().runs()).extracting(Debrief.Run::run).containsExactly(1, 1);
        assertThat(told(0)).startsWith(Told.SAID, Told.NOT_MARKED);
    }

    @Test
    void havingBeenSaidOutweighsAnythingElseAndBeingLeftOutABrokenOffStart() {
        chosen(0);
        happens(
                new FlightEvent.ActStarted(100),
                new TalkEvent.RemarkStarted(101, "r-call-1", RemarkForm.FULL),
                new TalkEvent.RemarkStarted(102, "r-say-1", RemarkForm.FULL),
                new TalkEvent.RemarkSkipped(103, "r-say-1"),
                new TalkEvent.RemarkSaid(104, "r-call-1", RemarkForm.SHORT),
                new TalkEvent.RemarkSaid(105, "r-fact-1", RemarkForm.FULL),
                new TalkEvent.RemarkStarted(106, "r-fact-1", RemarkForm.FULL),
                new TalkEvent.RemarkStarted(107, "r-fact-act", RemarkForm.FULL),
                new FlightEvent.ActEnded(130));

        assertThat(told(0)).startsWith(Told.SAID, Told.SKIPPED, Told.SAID);
        assertThat(debrief().runs().get(0).remarks())
                .filteredOn(r -> r.told() == Told.SAID)
                .extracting(Debrief.RemarkRun::shortForm)
                .containsExactly(true, false);
    }

    @Test
    void remarksOfTheActComeAfterThoseOfItsFigures() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.ActEnded(130));

        assertThat(debrief().runs().get(0).remarks())
                .extracting(Debrief.RemarkRun::remarkId)
                .containsExactly("r-call-1", "r-say-1", "r-fact-1", "r-call-2", "r-fact-act");
    }

    @Test
    void figureThatWasNotFlownHasItsPlanAndNothingElse() {
        chosen(0);
        happens(new FlightEvent.ActStarted(100), new FlightEvent.ActEnded(110));

        assertThat(figure(debrief(), 0, 1))
                .isEqualTo(new FigureRun("f2", "figure f2", Fate.NOT_FLOWN, 10.0, 10.0, null, null, 0, null, false));
        assertThat(figure(debrief(), 0, 1).lateS()).isNull();
    }

    private List<Told> told(int run) {
        return debrief().runs().get(run).remarks().stream()
                .map(Debrief.RemarkRun::told)
                .toList();
    }
}
