package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Played;
import crowdline.patter.PatterRules;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import crowdline.patter.Slot;
import crowdline.patter.Speaking;
import crowdline.patter.SpokenLength;
import crowdline.show.Act;
import crowdline.show.HarbourDay;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Worked by hand with figures of 10, 8, 20 and 6 s, each give or take a second, and an act started at 100 s. */
class PlanAheadTest {
    private static final ActTimes TIMES = new ActTimes(
            "first",
            "full",
            List.of(
                    new FigureTime("loop", 0, 10, 9, 11),
                    new FigureTime("roll", 10, 8, 7, 9),
                    new FigureTime("spin", 18, 20, 19, 21),
                    new FigureTime("pass", 38, 6, 5, 7)));

    private final PlanAhead ahead = new PlanAhead(show(), text -> new SpokenTime(4, 3, 5));
    /** A call of 4 s ends 1 s before its figure, with half a second to spare at either end. */
    private final PlanAhead withCalls = new PlanAhead(show(RemarkKind.CALL), text -> new SpokenTime(4, 3, 5));

    private final PlanAhead withDuties = new PlanAhead(show(RemarkKind.DUTY), text -> new SpokenTime(4, 3, 5));

    @Test
    void slotsAreTheFigureBeingFlownAndThoseAhead() {
        assertThat(request(Played.flying(), 104).slots())
                .containsExactly(
                        new Slot("loop", 100, 110, 109, 111, List.of()),
                        new Slot("roll", 110, 118, 117, 119, List.of()),
                        new Slot("spin", 118, 138, 137, 139, List.of()),
                        new Slot("pass", 138, 144, 143, 145, List.of()));
    }

    @Test
    void slotsHaveTheMomentsOfTheirFiguresEvenWhereOneRunsOver() {
        FigureMoments seen = new FigureMoments(List.of(
                new Moment(MomentName.first(MomentKind.BEGINS), 0, false),
                new Moment(MomentName.first(MomentKind.OVER_THE_TOP), 4, true),
                new Moment(MomentName.first(MomentKind.FLIES_OUT), 10, false)));
        ActTimes times = TIMES.with(id -> seen);
        Played flying = Played.flying();
        List<Slot> slots = ahead.request(flying.state, flying.at(113), times, Optional.empty())
                .slots();
        assertThat(slots.get(0).moments()).isEqualTo(seen);
        assertThat(slots.get(2).moments().moments().get(1).afterS()).isEqualTo(8);
        List<Slot> behind = ahead.request(flying.state, flying.at(103), times, Optional.empty(), Set.of(), 2)
                .slots();
        assertThat(behind.get(0).moments().moments().get(1).afterS()).isEqualTo(6);
        assertThat(behind.get(2).moments().moments().get(1).afterS()).isEqualTo(8);
    }

    @Test
    void slotsFollowASwap() {
        assertThat(request(Played.flying().with(new FlightEvent.NextSwapped(102)), 104)
                        .slots())
                .containsExactly(
                        new Slot("loop", 100, 110, 109, 111, List.of()),
                        new Slot("spin", 110, 130, 129, 131, List.of()),
                        new Slot("roll", 130, 138, 137, 139, List.of()),
                        new Slot("pass", 138, 144, 143, 145, List.of()));
    }

    @Test
    void dutyOfAFigureThatASwapPutBackWaitsForItsFigure() {
        Played played = Played.flying().with(new FlightEvent.NextSwapped(102), new FlightEvent.Stepped(110));
        assertThat(owner(played, 112, "roll-duty")).isEqualTo("roll");
    }

    @Test
    void heldFigureEndsLaterByTheHoldAndTheNextIsNotExpectedSoon() {
        List<Slot> slots =
                request(Played.flying().with(new FlightEvent.Held(104)), 110).slots();

        assertThat(slots).extracting(Slot::startS).containsExactly(106.0, 130.0, 138.0, 158.0);
        assertThat(slots.get(0).endS()).isEqualTo(116);
        assertThat(slots.get(0).endLowS()).isEqualTo(115);
        assertThat(slots.get(0).endHighS()).isEqualTo(117);
    }

    @Test
    void nothingOfTheNextFigureIsPlannedForNowWhileTheHandHasNotBegunIt() {
        assertThat(starts(request(Played.flying(), 109))).containsExactly(100.0, 111.5, 119.5, 139.5);
        assertThat(starts(request(Played.flying(), 111))).startsWith(100.0, 113.5);
        assertThat(starts(request(Played.flying(), 117))).startsWith(100.0, 119.5);
    }

    @Test
    void figureReallyOverItsTimeLeavesRoomForACallThatWasMissed() {
        Played played = Played.flying().with(said(101, "roll-call"));
        assertThat(starts(withCalls.request(played.state, played.at(113), TIMES, Optional.empty())))
                .startsWith(100.0, 115.5);
        Played missed = Played.flying();
        assertThat(starts(withCalls.request(missed.state, missed.at(111), TIMES, Optional.empty())))
                .startsWith(100.0, 113.5);
        assertThat(starts(withCalls.request(missed.state, missed.at(113), TIMES, Optional.empty())))
                .startsWith(100.0, 119.0);
        assertThat(starts(withCalls.request(
                        missed.state, missed.at(113), TIMES, Optional.empty(), Set.of("roll-call"), 0)))
                .startsWith(100.0, 115.5);
    }

    @Test
    void theClockBeginsTheNextFigureByItselfSoItIsExpectedOnTime() {
        Played played = Played.flying().with(new FlightEvent.SourceChosen(101, Source.CLOCK));
        assertThat(starts(request(played, 109))).startsWith(100.0, 110.0);
    }

    @Test
    void anActThatHasNotComeInItsSlotIsNotExpectedAtThisMoment() {
        assertThat(starts(request(Played.waiting(), 59))).startsWith(61.5);
        assertThat(starts(request(Played.waiting(), 60))).startsWith(80.0);
        assertThat(starts(request(Played.waiting(), 300))).startsWith(320.0);
    }

    @Test
    void nothingIsSpentLongBeforeTheSlot() {
        Played early = new Played()
                .with(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first")))
                .with(new FlightEvent.ActChosen(1, "first", "full", Played.FIGURES, 4000.0));
        assertThat(candidates(request(early, 3800))).isEmpty();
        assertThat(candidates(request(early, 3830))).contains("act-say", "once", "again");
    }

    @Test
    void whatWasSaidInAnEarlierRunOfTheActComesAgain() {
        Played again = Played.flying()
                .with(
                        said(101, "once"),
                        said(102, "act-say"),
                        new FlightEvent.ActEnded(150),
                        new FlightEvent.ActChosen(160, "first", "full", Played.FIGURES, 200.0),
                        new FlightEvent.ActStarted(200));
        assertThat(request(again, 204).alreadySaid()).containsExactly("once");
        assertThat(again.with(said(205, "act-say")).refusal).isNull();
        assertThat(again.with(said(206, "act-say")).refusal).isEqualTo("This remark is already marked as said.");
    }

    @Test
    void figureOverItsTimeEndsNowAtTheEarliest() {
        Slot loop = request(Played.flying(), 113).slots().get(0);
        assertThat(loop).isEqualTo(new Slot("loop", 100, 113, 113, 113, List.of(), FigureMoments.timed(10)));
    }

    @Test
    void droppedFigureHasNoSlotAndNothingIsSaidOfIt() {
        PlanRequest request = request(Played.flying().with(new FlightEvent.NextDropped(101)), 104);

        assertThat(request.slots()).extracting(Slot::figureId).containsExactly("loop", "spin", "pass");
        assertThat(candidates(request)).contains("loop-say").doesNotContain("roll-say");
    }

    /** A sum of the whole act is wrong once a figure of it is dropped, and right again once it is flown after all. */
    @Test
    void whatAddsUpTheActIsNotSaidOnceAFigureIsDropped() {
        Act act = act("first", null);
        Remark sum = Remark.of("sum", RemarkKind.FACT, "In this act it spends about ten seconds upside down.");
        PlanAhead adding = new PlanAhead(
                HarbourDay.of(List.of(act.withFigures(act.figures(), List.of(sum)))), text -> new SpokenTime(4, 3, 5));
        Played played = Played.flying();

        assertThat(said(adding, played)).contains("sum");
        assertThat(said(adding, played.with(new FlightEvent.NextDropped(101)))).doesNotContain("sum");
        assertThat(said(adding, played.with(new FlightEvent.DropUndone(103)))).contains("sum");
        assertThat(said(adding, played.with(new FlightEvent.NextSwapped(103)))).contains("sum");
    }

    private static List<String> said(PlanAhead ahead, Played played) {
        return new Planner()
                .plan(ahead.request(played.state, played.at(104), TIMES, Optional.empty())).placed().stream()
                        .map(Placed::remarkId)
                        .toList();
    }

    @Test
    void beforeTheActItsFiguresAreCountedFromTheSlot() {
        assertThat(request(Played.waiting(), 45).slots().get(0)).isEqualTo(new Slot("loop", 60, 70, 69, 71, List.of()));
    }

    @Test
    void nothingIsPlannedForAnActOfAnotherDayAndWhatAKeyTookIsStillSaid() {
        Played far = Played.waiting()
                .with(
                        new FlightEvent.ActChosen(2, "first", "full", Played.FIGURES, 60 + 200 * 86_400.0),
                        new TalkEvent.FillerTaken(40, "once", RemarkForm.FULL));
        PlanRequest request = request(far, 45);

        assertThat(request.slots()).isEmpty();
        Plan plan = new Planner().plan(request);
        assertThat(plan.placed()).extracting(Placed::remarkId).contains("once");
    }

    @Test
    void offPlanNoFigureHasATimeAndOnlyLooseRemarksAreLeft() {
        PlanRequest request = request(Played.flying().with(new FlightEvent.WentOffPlan(106)), 111);

        assertThat(request.slots()).isEmpty();
        assertThat(candidates(request)).containsExactly("act-say", "once", "again", "joke");
    }

    @Test
    void dutyOfAFigureThatIsOverOrDroppedIsStillToBeSaid() {
        assertThat(owner(Played.flying(), 104, "roll-duty")).isEqualTo("roll");
        Played stepped = Played.flying().with(new FlightEvent.Stepped(110), new FlightEvent.Stepped(112));
        assertThat(owner(stepped, 113, "roll-duty")).isEqualTo("anywhere");
        Played dropped = Played.flying().with(new FlightEvent.NextDropped(101));
        assertThat(owner(dropped, 104, "roll-duty")).isEqualTo("anywhere");
        Played offPlan = Played.flying().with(new FlightEvent.WentOffPlan(106));
        assertThat(owner(offPlan, 107, "roll-duty")).isEqualTo("nowhere");
        assertThat(owner(offPlan, 107, "loop-duty")).as("flown last").isEqualTo("anywhere");
        Played said = Played.flying().with(new FlightEvent.Stepped(110), said(111, "roll-duty"));
        assertThat(request(said, 113).alreadySaid()).contains("roll-duty");
    }

    /** The figure a candidate belongs to, "anywhere" if to none, "nowhere" if there is no such candidate. */
    private String owner(Played played, double nowS, String id) {
        return withDuties.request(played.state, played.at(nowS), TIMES, Optional.empty()).candidates().stream()
                .filter(c -> c.remark().id().equals(id))
                .findFirst()
                .map(c -> Objects.requireNonNullElse(c.figureId(), "anywhere"))
                .orElse("nowhere");
    }

    @Test
    void remarksTakeWhatTheSpeakerTakes() {
        assertThat(request(Played.flying(), 104).candidates())
                .allSatisfy(c -> assertThat(c.full()).isEqualTo(new SpokenLength(4, 3, 5)));
    }

    @Test
    void whatWasSaidOrSkippedInThisActIsDone() {
        Played played = Played.flying().with(said(101, "again"), new TalkEvent.RemarkSkipped(102, "loop-say"));
        assertThat(request(played, 104).alreadySaid()).containsExactlyInAnyOrder("again", "loop-say");
    }

    @Test
    void whatWasCutShortIsNotDone() {
        Played played = Played.flying()
                .with(
                        new TalkEvent.RemarkStarted(101, "again", RemarkForm.FULL),
                        new TalkEvent.RemarkStarted(102, "loop-say", RemarkForm.SHORT));
        PlanRequest request = request(played, 104);

        assertThat(request.alreadySaid()).isEmpty();
        assertThat(request.speaking()).isEqualTo(new Speaking("loop-say", RemarkForm.SHORT, 102, false));
    }

    @Test
    void inTheNextActWhatIsForOnceStaysDoneAndSoDoFillers() {
        Played played = Played.flying()
                .with(
                        said(101, "once"),
                        said(102, "again"),
                        said(103, "joke"),
                        new FlightEvent.ActEnded(150),
                        new FlightEvent.ActChosen(160, "second", "full", Played.FIGURES, 200.0),
                        new FlightEvent.ActStarted(200));
        PlanRequest request = request(played, 204);

        assertThat(request.alreadySaid()).containsExactlyInAnyOrder("once", "joke");
        assertThat(candidates(request)).contains("again");
    }

    @Test
    void wholeActStartsWithNothingSaid() {
        PlanRequest request = ahead.wholeAct(show().acts().get(0), TIMES);

        assertThat(request.alreadySaid()).isEmpty();
        assertThat(request.speaking()).isNull();
        assertThat(request.slots()).extracting(Slot::startS).containsExactly(0.0, 10.0, 18.0, 38.0);
        assertThat(request.nowS()).isNegative();
        assertThat(candidates(request))
                .containsExactly("loop-say", "roll-say", "spin-say", "pass-say", "act-say", "once", "again", "joke");
    }

    @Test
    void wholeActBeginsAsLongBeforeItsFirstFigureAsACallMay() {
        ActTimes later = new ActTimes("first", "full", List.of(new FigureTime("loop", 5, 10, 9, 11)));

        assertThat(ahead.wholeAct(show().acts().get(0), later).nowS())
                .isEqualTo(5 - PatterRules.DEFAULT.callStartsAtMostBeforeS());
    }

    @Test
    void wholeActKeepsTheQuietsOfItsFigures() {
        Show small = SmallShow.show();
        ActTimes times = new ActTimes(
                "a1", "full", List.of(new FigureTime("f1", 0, 10, 9, 11), new FigureTime("f2", 10, 10, 9, 11)));
        PlanRequest request = new PlanAhead(small, text -> new SpokenTime(4, 3, 5))
                .wholeAct(small.acts().get(0), times);

        assertThat(request.slots())
                .extracting(Slot::quiets)
                .containsExactly(List.of(), List.of(new Quiet(2, 8.0, "hear it fade")));
    }

    @Test
    void talkOfAnActBeginsThreeMinutesBeforeItsSlot() {
        Played far = Played.waiting().with(new FlightEvent.ActChosen(2, "first", "full", Played.FIGURES, 300.0));

        assertThat(candidates(request(far, 119.9))).isEmpty();
        assertThat(candidates(request(far, 120))).contains("loop-say", "again");
    }

    private PlanRequest request(Played played, double nowS) {
        return ahead.request(played.state, played.at(nowS), TIMES, Optional.of(Plan.EMPTY));
    }

    private static List<Double> starts(PlanRequest request) {
        return request.slots().stream().map(Slot::startS).toList();
    }

    private static List<String> candidates(PlanRequest request) {
        return request.candidates().stream().map(c -> c.remark().id()).toList();
    }

    private static TalkEvent said(double atS, String id) {
        return new TalkEvent.RemarkSaid(atS, id, RemarkForm.FULL);
    }

    private static Show show() {
        return show(null);
    }

    private static Show show(@Nullable RemarkKind more) {
        Remark once = new Remark("once", RemarkKind.FACT, "Once only.", null, null, null, 1, true);
        Remark again = Remark.of("again", RemarkKind.FACT, "As often as you like.");
        Remark joke = Remark.of("joke", RemarkKind.FILLER, "The one about the hangar.");
        return HarbourDay.of(List.of(act("first", more), act("second", more)), once, again, joke);
    }

    private static Act act(String id, @Nullable RemarkKind more) {
        List<Figure> figures = new ArrayList<>();
        for (String figure : Played.FIGURES) {
            Remark remark = Remark.of(figure + "-say", RemarkKind.EXPLANATION, "A word on it.");
            List<Remark> remarks = new ArrayList<>(List.of(remark));
            if (more != null) {
                remarks.add(Remark.of(figure + "-" + more.name().toLowerCase(Locale.ROOT), more, "More of it."));
            }
            figures.add(new Figure(figure, figure, null, null, null, null, null, null, List.of(), remarks));
        }
        return new Act(
                id,
                "Act " + id,
                "pilot",
                "biplane",
                LocalTime.NOON,
                10,
                new Placing(0, 0, 1500, 120, Placing.Heading.RIGHT),
                figures,
                List.of(new Variant("full", null, Played.FIGURES)),
                List.of(Remark.of("act-say", RemarkKind.FACT, "A word on the act.")));
    }
}
