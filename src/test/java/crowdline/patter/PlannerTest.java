package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.request;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlannerTest {
    private final Planner planner = new Planner();
    private final List<Slot> loop = List.of(slot("loop", 20, 32));

    private static Placed placed(Plan plan, String id) {
        return plan.find(id).orElseThrow(() -> new AssertionError(id + " is not in " + plan));
    }

    private static Unplaced unplaced(Plan plan, String id) {
        return plan.unplaced().stream()
                .filter(u -> u.remarkId().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Candidate timed(String id, RemarkKind kind, String figureId, double s, double fromS, double toS) {
        return new Candidate(new Remark(id, kind, id, null, fromS, toS, 1, false), figureId, SpokenLength.of(s), null);
    }

    @Test
    void callEndsAMomentBeforeItsFigure() {
        Plan plan = planner.plan(request(0, loop, candidate("call", RemarkKind.CALL, "loop", 3)));
        assertThat(placed(plan, "call").endS()).isCloseTo(18.5, within(0.01));
    }

    @Test
    void callThatWouldStartTooEarlyIsNotPlaced() {
        Plan plan = planner.plan(request(0, loop, candidate("call", RemarkKind.CALL, "loop", 7.2)));
        assertThat(plan.placed()).isEmpty();
        assertThat(unplaced(plan, "call").why()).isEqualTo(Unplaced.Why.TOO_LONG);
        assertThat(unplaced(plan, "call").reason()).isEqualTo("7.2 s needed, its own time is 7.0 s");
    }

    /** The plan counts 7.21 s as 7.3; whoever reads its seconds elsewhere reads 7.2. */
    @Test
    void secondsNeededAreToldAsEverywhereElse() {
        Plan plan = planner.plan(request(0, loop, candidate("call", RemarkKind.CALL, "loop", 7.21)));
        assertThat(unplaced(plan, "call").reason()).isEqualTo("7.2 s needed, its own time is 7.0 s");
        plan = planner.plan(request(0, loop, candidate("call", RemarkKind.CALL, "loop", 7.04)));
        assertThat(unplaced(plan, "call").reason())
                .isEqualTo("7.0 s needed, its own time is 7.0 s, with nothing to spare");
    }

    @Test
    void lateCallIsStillMadeIfItEndsInTime() {
        Plan plan = planner.plan(request(15.9, loop, candidate("call", RemarkKind.CALL, "loop", 3)));
        assertThat(placed(plan, "call").startS()).isCloseTo(15.9, within(0.01));
        assertThat(placed(plan, "call").endS()).isLessThanOrEqualTo(19.0);
    }

    @Test
    void callTooLateIsReportedWithTheSecondsThere() {
        Plan plan = planner.plan(request(16.5, loop, candidate("call", RemarkKind.CALL, "loop", 3)));
        assertThat(unplaced(plan, "call").reason()).isEqualTo("3.0 s needed, 2.5 s of its time left");
        assertThat(unplaced(plan, "call").thereS()).isCloseTo(2.5, within(0.01));
    }

    @Test
    void explanationStartsWithItsFigureAndMayRunALittlePast() {
        Plan plan = planner.plan(request(0, loop, candidate("what", RemarkKind.EXPLANATION, "loop", 13.5)));
        assertThat(placed(plan, "what").startS()).isGreaterThanOrEqualTo(20);
        assertThat(placed(plan, "what").endS()).isGreaterThan(32).isLessThanOrEqualTo(35);
    }

    /** Begun as its figure ends, it would tell of what is over; what has times of its own is said where they put it. */
    @Test
    void halfOfARemarkAtLeastIsSaidOfWhatIsStillFlown() {
        Candidate told = candidate("told", RemarkKind.EXPLANATION, "loop", 4);
        assertThat(placed(after(29, loop, List.of(told)), "told").startS()).isEqualTo(29);
        unplaced(after(30.5, loop, List.of(told)), "told");
        Candidate timed = timed("timed", RemarkKind.EXPLANATION, "loop", 4, 10.5, 15);
        assertThat(placed(after(30.5, loop, List.of(timed)), "timed").startS()).isEqualTo(31);
    }

    @Test
    void explanationNeverRunsIntoTheNextCall() {
        List<Slot> slots = List.of(slot("loop", 20, 32), slot("roll", 32, 40));
        Plan plan = planner.plan(request(
                0,
                slots,
                candidate("what", RemarkKind.EXPLANATION, "loop", 13, 6),
                candidate("call", RemarkKind.CALL, "roll", 3)));
        assertThat(placed(plan, "what").form()).isEqualTo(RemarkForm.SHORT);
        assertThat(placed(plan, "call").startS())
                .isGreaterThanOrEqualTo(placed(plan, "what").endS() + 0.6 - 1e-9);
    }

    @Test
    void shortFormIsTakenOnlyIfItMakesRoom() {
        Candidate what = candidate("what", RemarkKind.EXPLANATION, "loop", 9, 4);
        assertThat(placed(planner.plan(request(0, loop, what)), "what").form()).isEqualTo(RemarkForm.FULL);
        Plan both = planner.plan(request(0, loop, what, candidate("who", RemarkKind.FACT, "loop", 8)));
        assertThat(placed(both, "what").form()).isEqualTo(RemarkForm.SHORT);
        assertThat(both.find("who")).isPresent();
    }

    @Test
    void figuresRemarksKeepTheOrderWritten() {
        Plan plan = planner.plan(request(
                0,
                loop,
                candidate("b", RemarkKind.FACT, "loop", 4),
                candidate("a", RemarkKind.EXPLANATION, "loop", 4)));
        assertThat(placed(plan, "b").startS()).isLessThan(placed(plan, "a").startS());
    }

    @Test
    void remarkWithItsOwnTimesKeepsThem() {
        Plan plan = planner.plan(request(0, loop, timed("now", RemarkKind.EXPLANATION, "loop", 3, 5, 8)));
        assertThat(placed(plan, "now").startS()).isCloseTo(25, within(0.01));
    }

    @Test
    void remarkForBeforeItsFigureComesBeforeTheCall() {
        Plan plan = planner.plan(request(
                0,
                loop,
                timed("look", RemarkKind.EXPLANATION, "loop", 3, -12, -5),
                candidate("call", RemarkKind.CALL, "loop", 2)));
        assertThat(placed(plan, "look").endS()).isLessThanOrEqualTo(15);
        assertThat(plan.find("call")).isPresent();
    }

    @Test
    void nothingIsSaidInAQuiet() {
        List<Slot> slots = List.of(slot("loop", 5, 25, new Quiet(3, 12.0, "hear it")));
        Plan plan = planner.plan(request(
                5,
                slots,
                candidate("long", RemarkKind.EXPLANATION, "loop", 12),
                candidate("brief", RemarkKind.FACT, "loop", 5)));
        assertThat(placed(plan, "brief").startS()).isGreaterThanOrEqualTo(17);
        assertThat(unplaced(plan, "long").why()).isEqualTo(Unplaced.Why.QUIET);
        // After the quiet the figure and what may run past it last until 28 s.
        assertThat(unplaced(plan, "long").reason()).isEqualTo("12.0 s needed, 11.0 s outside the quiet");
    }

    @Test
    void dutyGoesBeforeAnyNumberOfFacts() {
        List<Slot> slots = List.of(slot("loop", 0, 10));
        Plan plan = planner.plan(request(
                0,
                slots,
                candidate("a", RemarkKind.FACT, "loop", 4),
                candidate("b", RemarkKind.FACT, "loop", 4),
                candidate("thanks", RemarkKind.DUTY, null, 12)));
        assertThat(plan.placed()).extracting(Placed::remarkId).containsExactly("thanks");
        assertThat(unplaced(plan, "a").why()).isEqualTo(Unplaced.Why.CROWDED_OUT);
        assertThat(unplaced(plan, "a").reason()).startsWith("4.0 s needed, 0.").endsWith(" s there");
    }

    @Test
    void dutyIsSaidAsEarlyAsItCanBe() {
        Plan plan = planner.plan(request(
                0,
                loop,
                candidate("a", RemarkKind.FACT, null, 6),
                candidate("b", RemarkKind.FACT, null, 5),
                candidate("thanks", RemarkKind.DUTY, null, 5.5)));
        assertThat(plan.placed().get(0).remarkId()).isEqualTo("thanks");
        assertThat(plan.placed()).hasSize(3);
    }

    @Test
    void onceTheNextFigureIsCalledTheLastIsPassedOver() {
        List<Slot> slots = List.of(slot("loop", 0, 10), slot("roll", 10, 16));
        PlanRequest request = request(
                8,
                slots,
                candidate("what", RemarkKind.EXPLANATION, "loop", 3),
                candidate("call", RemarkKind.CALL, "roll", 2));
        Plan plan = planner.plan(new PlanRequest(
                8.9, slots, request.candidates(), Set.of("call"), Optional.empty(), null, PatterRules.DEFAULT));
        assertThat(unplaced(plan, "what").why()).isEqualTo(Unplaced.Why.PASSED_OVER);
    }

    @Test
    void whileTheNextFigureIsBeingCalledTheLastIsPassedOverToo() {
        List<Slot> slots = List.of(slot("loop", 0, 10), slot("roll", 10, 16));
        List<Candidate> candidates = List.of(
                candidate("what", RemarkKind.EXPLANATION, "loop", 3), candidate("call", RemarkKind.CALL, "roll", 2));
        Plan plan = planner.plan(new PlanRequest(
                7.5,
                slots,
                candidates,
                Set.of(),
                Optional.empty(),
                new Speaking("call", RemarkForm.FULL, 7, false),
                PatterRules.DEFAULT));
        assertThat(unplaced(plan, "what").why()).isEqualTo(Unplaced.Why.PASSED_OVER);
        Plan other = planner.plan(new PlanRequest(
                4.5,
                List.of(slot("loop", 0, 12), slot("roll", 12, 18)),
                List.of(
                        candidate("what", RemarkKind.EXPLANATION, "loop", 1.2),
                        candidate("free", RemarkKind.FACT, null, 2),
                        candidates.get(1)),
                Set.of(),
                Optional.empty(),
                new Speaking("free", RemarkForm.FULL, 4, false),
                PatterRules.DEFAULT));
        assertThat(other.find("what")).as("nobody has spoken of the roll").isPresent();
    }

    /** A figure is near from the moment its call may begin, eight seconds before it. */
    @Test
    void callOfAFigureFarAheadPassesOverNothing() {
        List<Slot> slots = List.of(slot("loop", 0, 20), slot("roll", 20, 30));
        List<Candidate> candidates = List.of(
                candidate("what", RemarkKind.EXPLANATION, "loop", 3), candidate("call", RemarkKind.CALL, "roll", 2));
        assertThat(after(11.9, slots, candidates).find("what")).isPresent();
        assertThat(unplaced(after(12, slots, candidates), "what").why()).isEqualTo(Unplaced.Why.PASSED_OVER);
    }

    private Plan after(double nowS, List<Slot> slots, List<Candidate> candidates) {
        return planner.plan(
                new PlanRequest(nowS, slots, candidates, Set.of("call"), Optional.empty(), null, PatterRules.DEFAULT));
    }

    @Test
    void whatIsBeingSaidInItsShortFormIsOverSooner() {
        Plan plan = planner.plan(new PlanRequest(
                3,
                loop,
                List.of(candidate("free", RemarkKind.FACT, null, 9, 4)),
                Set.of(),
                Optional.empty(),
                new Speaking("free", RemarkForm.SHORT, 2, false),
                PatterRules.DEFAULT));
        assertThat(placed(plan, "free").endS()).isEqualTo(6);
        assertThat(placed(plan, "free").form()).isEqualTo(RemarkForm.SHORT);
    }

    @Test
    void fillerGoesOnlyWhereNothingElseDoes() {
        Candidate filler = candidate("weather", RemarkKind.FILLER, null, 8);
        Plan crowded = planner.plan(
                request(10, List.of(slot("loop", 10, 18)), candidate("x", RemarkKind.FACT, null, 6), filler));
        assertThat(crowded.find("weather")).isEmpty();
        assertThat(unplaced(crowded, "weather").why()).isEqualTo(Unplaced.Why.NO_GAP);
        Plan holding = planner.plan(request(0, List.of(slot("loop", 30, 38)), filler));
        assertThat(holding.find("weather")).isPresent();
    }

    @Test
    void longestFillerThatFitsGoesFirst() {
        Plan plan = planner.plan(request(
                0,
                List.of(slot("loop", 12, 20)),
                candidate("brief", RemarkKind.FILLER, null, 3),
                candidate("long", RemarkKind.FILLER, null, 9),
                candidate("call", RemarkKind.CALL, "loop", 1.5),
                candidate("what", RemarkKind.EXPLANATION, "loop", 9)));
        assertThat(plan.placed().get(0).remarkId()).isEqualTo("brief");
    }

    @Test
    void remarkOfAFigureNotAheadIsReported() {
        Plan plan = planner.plan(request(0, loop, candidate("call", RemarkKind.CALL, "spin", 2)));
        assertThat(unplaced(plan, "call").why()).isEqualTo(Unplaced.Why.FIGURE_NOT_AHEAD);
    }

    @Test
    void remarkOfAFigureFlownIsTooLate() {
        Plan plan = planner.plan(request(40, loop, candidate("what", RemarkKind.EXPLANATION, "loop", 2)));
        assertThat(unplaced(plan, "what").why()).isEqualTo(Unplaced.Why.TOO_LATE);
        assertThat(unplaced(plan, "what").reason()).isEqualTo("its time has passed");
    }

    @Test
    void saidRemarksDoNotComeBack() {
        PlanRequest request = request(0, loop, candidate("thanks", RemarkKind.DUTY, null, 3));
        Plan plan = planner.plan(new PlanRequest(
                0, loop, request.candidates(), Set.of("thanks"), Optional.empty(), null, PatterRules.DEFAULT));
        assertThat(plan.placed()).isEmpty();
        assertThat(plan.unplaced()).isEmpty();
    }

    @Test
    void whatIsBeingSaidIsDisplacedByNothingButACall() {
        PlanRequest request = request(
                0,
                loop,
                candidate("story", RemarkKind.FILLER, null, 12),
                candidate("thanks", RemarkKind.DUTY, null, 4));
        Plan plan = planner.plan(new PlanRequest(
                8,
                loop,
                request.candidates(),
                Set.of(),
                Optional.empty(),
                new Speaking("story", RemarkForm.FULL, 6, false),
                PatterRules.DEFAULT));
        assertThat(plan.placed().get(0))
                .isEqualTo(new Placed("story", null, RemarkKind.FILLER, RemarkForm.FULL, 6, 18, false));
        assertThat(placed(plan, "thanks").startS()).isGreaterThanOrEqualTo(18.6 - 1e-9);
    }

    /** A filler taken by a key hid the call after it. */
    @Test
    void whatIsBeingSaidIsOverAtTheLatestWhenACallMustBegin() {
        List<Candidate> candidates =
                List.of(candidate("story", RemarkKind.FILLER, null, 12), candidate("call", RemarkKind.CALL, "loop", 3));
        for (double nowS = 6; nowS < 15.7; nowS += 0.3) {
            Plan plan = planner.plan(new PlanRequest(
                    nowS,
                    loop,
                    candidates,
                    Set.of(),
                    Optional.empty(),
                    new Speaking("story", RemarkForm.FULL, 6, false),
                    PatterRules.DEFAULT));
            assertThat(plan.find("call")).as("at %s", nowS).isPresent();
            assertThat(placed(plan, "call").endS())
                    .isLessThanOrEqualTo(loop.get(0).startS() - 1 + 1e-9);
            assertThat(placed(plan, "story").endS())
                    .isLessThanOrEqualTo(placed(plan, "call").startS() - 0.6 + 1e-9);
            assertThat(placed(plan, "story").endS())
                    .as("a breath and a tenth before 15.9 s, when the call must begin")
                    .isCloseTo(15.2, within(1e-9));
        }
        Plan said = planner.plan(new PlanRequest(
                8,
                loop,
                candidates,
                Set.of("call"),
                Optional.empty(),
                new Speaking("story", RemarkForm.FULL, 6, false),
                PatterRules.DEFAULT));
        assertThat(placed(said, "story").endS()).as("the call was said").isEqualTo(18);
    }

    @Test
    void remarkThatNeedsALongFigureIsMarkedTight() {
        Candidate what = candidate("what", RemarkKind.EXPLANATION, "loop", 9);
        Slot sure = new Slot("loop", 0, 8, 7.9, 8.1, List.of());
        Slot unsure = new Slot("loop", 0, 8, 6, 10, List.of());
        assertThat(placed(planner.plan(request(0, List.of(sure), what)), "what").tight())
                .isFalse();
        assertThat(placed(planner.plan(request(0, List.of(unsure), what)), "what")
                        .tight())
                .isTrue();
    }

    @Test
    void withoutFiguresThereIsAnOpenEnd() {
        Plan plan = planner.plan(request(5, List.of(), candidate("thanks", RemarkKind.DUTY, null, 3)));
        assertThat(placed(plan, "thanks").startS()).isEqualTo(5);
        assertThat(plan.talkS()).isCloseTo(3, within(1e-9));
        assertThat(plan.quietS()).isCloseTo(57, within(1e-9));
    }

    @Test
    void nothingToSayIsAPlanToo() {
        Plan plan = planner.plan(request(0, loop));
        assertThat(plan.placed()).isEmpty();
        assertThat(plan.provenBest()).isTrue();
    }

    @Test
    void twoRemarksOfOneNameAreRefused() {
        assertThatThrownBy(() -> request(
                        0, loop, candidate("a", RemarkKind.FACT, null, 3), candidate("a", RemarkKind.FACT, null, 3)))
                .hasMessage("two candidates have the id a; ids must differ");
    }

    @Test
    void moreFloatingRemarksThanCanBeToldApartStillMakeAPlan() {
        PlanRequest request = Acts.random(new Random(5), 6, 2, 100);
        Plan plan = planner.plan(request);
        Judge.check("many", request, plan);
        assertThat(plan.provenBest()).isFalse();
    }
}
