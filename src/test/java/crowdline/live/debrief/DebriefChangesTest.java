package crowdline.live.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.RemarkRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Plan;
import crowdline.patter.Unplaced;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.ActTimes;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is worth a sentence, just below and at its limit, and the whole sentence. */
class DebriefChangesTest {
    private static final String TITLE = "The Calder display";

    private Show show = SmallShow.show();
    private List<Unplaced> unplaced = List.of();
    private List<Pass> passes = List.of();

    private final class Sources implements DebriefSources {
        @Override
        public Optional<ActTimes> times(String actId, String variant) {
            return Optional.empty();
        }

        @Override
        public Optional<Plan> plan(String actId, String variant) {
            return Optional.of(new Plan(List.of(), unplaced, 0, 0, true));
        }

        @Override
        public String name(String actId, String variant, String figureId) {
            return figureId;
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

    private List<String> changes(Run... runs) {
        return new DebriefChanges(show, new Sources()).of(List.of(runs), LiveState.initial());
    }

    @Test
    void differenceCountsFromTwoSecondsOn() {
        assertThat(changes(run(1, figure(10, 11.9)))).isEmpty();
        assertThat(changes(run(1, figure(10, 12))))
                .containsExactly(TITLE + ": the loop took 2 s longer than predicted in its only run");
        assertThat(changes(run(1, figure(10, 8.1)))).isEmpty();
        assertThat(changes(run(1, figure(10, 8))))
                .containsExactly(TITLE + ": the loop took 2 s less than predicted in its only run");
    }

    @Test
    void differenceOfALongFigureCountsFromAShareOfItOn() {
        assertThat(changes(run(1, figure(40, 45.9)))).isEmpty();
        assertThat(changes(run(1, figure(40, 46))))
                .containsExactly(TITLE + ": the loop took 6 s longer than predicted in its only run");
        assertThat(changes(run(1, figure(40, 34))))
                .containsExactly(TITLE + ": the loop took 6 s less than predicted in its only run");
    }

    @Test
    void differenceIsTheMeanOfAllRunsAndEveryRunMustShowIt() {
        assertThat(changes(run(1, figure(10, 13)), run(2, figure(10, 14)), run(3, figure(10, 17))))
                .containsExactly(TITLE + ": the loop took 5 s longer than predicted in all 3 runs");
        assertThat(changes(run(1, figure(10, 7)), run(2, figure(10, 5))))
                .containsExactly(TITLE + ": the loop took 4 s less than predicted in both runs");
        assertThat(changes(run(1, figure(10, 7)), run(2, figure(10, 9)))).isEmpty();
    }

    @Test
    void variantsAreToldApart() {
        Run full = run(1, figure(10, 13));
        Run flat = new Run("a1", TITLE, "flat", 2, 200, 230.0, null, List.of(figure(10, 10)), List.of(), List.of());

        assertThat(changes(full, flat))
                .containsExactly(TITLE + ": the loop took 3 s longer than predicted in its only run");
    }

    @Test
    void onlyEarlierPassesThatWereFlownAndCountAreRuns() {
        passes = List.of(pass(Pass.How.WALKED, 10), pass(Pass.How.LIVE, 10));
        assertThat(changes(run(1, figure(10, 14))))
                .as("a walk is no flight, and what was live is in the debrief already")
                .containsExactly(TITLE + ": the loop took 4 s longer than predicted in its only run");

        Pass odd = pass(Pass.How.BY_HAND, 10);
        passes = List.of(
                new Pass(odd.id(), odd.actId(), odd.variant(), odd.how(), odd.begunAt(), "", odd.figures(), false, 1));
        assertThat(changes(run(1, figure(10, 14)))).singleElement().asString().endsWith("in its only run");

        passes = List.of(pass(Pass.How.BY_LOG, 13), pass(Pass.How.BY_HAND, 15));
        assertThat(changes(run(1, figure(10, 14))))
                .containsExactly(TITLE + ": the loop took 4 s longer than predicted in all 3 runs");

        passes = List.of(Pass.of(
                "p", "a1", "full", Pass.How.BY_LOG, Instant.EPOCH, List.of(new Pass.TimedFigure("spin", 0, 10))));
        assertThat(changes(run(1, figure(10, 14)))).singleElement().asString().endsWith("in its only run");
    }

    @Test
    void figureDroppedEveryTimeIsWorthAVariantWithoutIt() {
        assertThat(changes(run(1, dropped()), run(2, dropped())))
                .containsExactly(TITLE + ": the loop was dropped in both runs; a variant without it would keep the plan"
                        + " right");
        assertThat(changes(run(1, dropped()), run(2, figure(10, 10)))).isEmpty();
    }

    @Test
    void actLongerThanItsSlotSaysByHowMuch() {
        assertThat(changes(lasted(12 * 60 + 2))).isEmpty();
        assertThat(changes(lasted(12 * 60 + 3))).containsExactly(TITLE + " took 3 s longer than its slot of 12 min");
        assertThat(changes(lasted(15 * 60 + 7)))
                .containsExactly(TITLE + " took 3:07 min longer than its slot of 12 min");
        assertThat(changes(lasted(12 * 60 + 119)))
                .containsExactly(TITLE + " took 119 s longer than its slot of 12 min");
    }

    @Test
    void dutiesThatNoKeyMarkedAreNamed() {
        assertThat(changes(run(1, duty("Ropes.", Told.SAID), duty("Exits.", Told.SKIPPED))))
                .containsExactly(TITLE + ": 1 duty was not marked: \"Exits.\"");
        assertThat(changes(run(2, duty("Ropes.", Told.SHOWN), duty("Exits.", Told.NOT_MARKED))))
                .containsExactly(TITLE + ", run 2: 2 duties were not marked: \"Ropes.\", \"Exits.\"");
        assertThat(changes(run(1, remark(RemarkKind.FACT, "Paint.", Told.NOT_MARKED))))
                .isEmpty();
    }

    @Test
    void dutiesOfAnActInTheAirMayStillBeSaid() {
        Run inTheAir = new Run(
                "a1",
                TITLE,
                "full",
                1,
                100,
                null,
                null,
                List.of(),
                List.of(),
                List.of(duty("Ropes.", Told.NOT_MARKED)));

        assertThat(changes(inTheAir)).isEmpty();
    }

    @Test
    void threeAreNamedAndTheOthersCounted() {
        assertThat(changes(run(1, duties(3))))
                .containsExactly(TITLE + ": 3 duties were not marked: \"Duty 1\", \"Duty 2\", \"Duty 3\"");
        assertThat(changes(run(1, duties(5))))
                .containsExactly(TITLE + ": 5 duties were not marked: \"Duty 1\", \"Duty 2\", \"Duty 3\" and 2 more");
    }

    @Test
    void longTextIsQuotedByItsBeginning() {
        String sixty = "x".repeat(60);
        assertThat(changes(run(1, duty(sixty, Told.SKIPPED))))
                .singleElement()
                .asString()
                .endsWith("\"" + sixty + "\"");
        assertThat(changes(run(1, duty("x".repeat(61), Told.SKIPPED))))
                .singleElement()
                .asString()
                .endsWith(" \"" + "x".repeat(57) + "...\"");
    }

    @Test
    void remarksThatNeverFittedAreQuotedWhereverTheyBelong() {
        unplaced = List.of(
                new Unplaced("r-fact-1", Unplaced.Why.TOO_LONG, "9 s needed", 9, 5),
                new Unplaced("r-fact-act", Unplaced.Why.CROWDED_OUT, "no room", 4, 2),
                new Unplaced("r-fill", Unplaced.Why.QUIET, "a quiet", 4, 0),
                new Unplaced("gone", Unplaced.Why.NO_GAP, "no gap", 4, 0));

        assertThat(changes(run(1)))
                .containsExactly(TITLE + ": 3 remarks never fitted into the plan; shorten or leave out"
                        + " \"It is two hundred metres high.\" (9 s needed),"
                        + " \"Rosa built it herself.\" (no room),"
                        + " \"The smoke is only paraffin.\" (a quiet)");

        unplaced = List.of(new Unplaced("gone", Unplaced.Why.TOO_LATE, "too late", 4, 0));
        assertThat(changes(run(1)))
                .as("no longer in the show")
                .containsExactly(
                        TITLE + ": 1 remark never fitted into the plan; shorten or leave out \"gone\" (too late)");
    }

    @Test
    void remarksCutShortAreCountedRunByRun() {
        RemarkRun cut = remark(RemarkKind.FACT, "Paint.", Told.CUT_SHORT);
        assertThat(changes(run(1, cut), run(2, cut, remark(RemarkKind.FACT, "Oil.", Told.SAID), cut)))
                .containsExactly(
                        TITLE + ": 1 remark was started but not finished",
                        TITLE + ": 2 remarks were started but not finished");
    }

    @Test
    void dutyOfTheShowThatWasNotMarkedIsNamedOnceSomethingWasFlown() {
        show = withADuty(show);
        LiveState before = moved(LiveState.initial(), new ShowEvent.ShowOpened(0, show.title(), List.of("a1")));
        LiveState flown = moved(before, new FlightEvent.ActChosen(1, "a1", "full", List.of("f1"), null));
        LiveState said = moved(flown, new TalkEvent.RemarkSaid(2, "r-duty", RemarkForm.FULL));
        DebriefChanges changes = new DebriefChanges(show, new Sources());

        assertThat(changes.of(List.of(run(1)), flown))
                .containsExactly("A duty of the show was not marked: \"Please stay behind the rope.\"");
        assertThat(changes.of(List.of(run(1)), said)).isEmpty();
        assertThat(changes.of(List.of(), flown)).isEmpty();
    }

    private static LiveState moved(LiveState from, crowdline.live.event.LiveEvent event) {
        return ((Step.Moved) Live.next(from, event)).state();
    }

    private static Show withADuty(Show show) {
        List<Remark> remarks = new ArrayList<>(show.remarks());
        remarks.add(Remark.of("r-duty", RemarkKind.DUTY, "Please stay behind the rope."));
        return show.withActs(show.acts(), remarks);
    }

    private static Run run(int run, FigureRun... figures) {
        return new Run("a1", TITLE, "full", run, 100, 130.0, null, Arrays.asList(figures), List.of(), List.of());
    }

    private static Run run(int run, RemarkRun first, RemarkRun... more) {
        List<RemarkRun> remarks = new ArrayList<>(List.of(first));
        remarks.addAll(Arrays.asList(more));
        return run(run, remarks);
    }

    private static Run run(int run, List<RemarkRun> remarks) {
        return new Run("a1", TITLE, "full", run, 100, 130.0, null, List.of(), List.of(), remarks);
    }

    private static Run lasted(double seconds) {
        return new Run("a1", TITLE, "full", 1, 100, 100 + seconds, null, List.of(), List.of(), List.of());
    }

    private static FigureRun figure(double plannedS, double flownS) {
        return figure(Fate.FLOWN, plannedS, flownS);
    }

    private static FigureRun dropped() {
        return figure(Fate.DROPPED, 10, null);
    }

    private static FigureRun figure(Fate fate, double plannedS, @Nullable Double flownS) {
        return new FigureRun("f1", "the loop", fate, 0.0, plannedS, 0.0, flownS, 0, Source.HAND, flownS != null);
    }

    private static List<RemarkRun> duties(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> duty("Duty " + i, Told.NOT_MARKED))
                .toList();
    }

    private static RemarkRun duty(String text, Told told) {
        return remark(RemarkKind.DUTY, text, told);
    }

    private static RemarkRun remark(RemarkKind kind, String text, Told told) {
        return new RemarkRun("r", kind, text, null, told, false, null);
    }

    private static Pass pass(Pass.How how, double seconds) {
        return Pass.of("p", "a1", "full", how, Instant.EPOCH, List.of(new Pass.TimedFigure("f1", 0, seconds)));
    }
}
