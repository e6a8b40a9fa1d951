package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.request;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What goes where nothing else is said, and why what has no place has none. */
class FillersTest {
    private final Planner planner = new Planner();

    private static Candidate filler(String id, @Nullable String figureId, double seconds) {
        return candidate(id, RemarkKind.FILLER, figureId, seconds);
    }

    private static Candidate weighty(String id, double weight, double seconds) {
        Remark remark = new Remark(id, RemarkKind.FILLER, id, null, null, null, weight, false);
        return new Candidate(remark, null, SpokenLength.of(seconds), null);
    }

    private static String why(Plan plan, String id) {
        return plan.unplaced().stream()
                .filter(u -> u.remarkId().equals(id))
                .map(u -> u.why() + ": " + u.reason())
                .findFirst()
                .orElseThrow();
    }

    /** A figure of 3 s and the 3 s past it are a gap of 6 s; of that half a second is spare. */
    @Test
    void gapOfSixSecondsTakesFiveAndAHalfAndAShorterOneNothing() {
        assertThat(planner.plan(request(0, List.of(slot("loop", 0, 3)), filler("a", null, 5.5)))
                        .find("a"))
                .isPresent();
        assertThat(planner.plan(request(0, List.of(slot("loop", 0, 3)), filler("a", null, 5.6)))
                        .find("a"))
                .isEmpty();
        Plan brief = planner.plan(request(0, List.of(slot("loop", 0, 2.9)), filler("a", null, 2)));
        assertThat(why(brief, "a")).isEqualTo("NO_GAP: 2.0 s needed, 5.9 s there, too short a gap to fill");
    }

    @Test
    void ofTwoAsLongTheWeightierGoesFirst() {
        List<Slot> slots = List.of(slot("loop", 0, 5));

        assertThat(planner.plan(request(0, slots, weighty("a", 1, 6), weighty("b", 2, 6)))
                        .placed())
                .extracting(Placed::remarkId)
                .containsExactly("b");
        assertThat(planner.plan(request(0, slots, weighty("a", 2, 6), weighty("b", 2, 6)))
                        .placed())
                .extracting(Placed::remarkId)
                .containsExactly("a");
    }

    @Test
    void aLongGapTakesOneAfterTheOther() {
        List<Slot> slots = List.of(slot("loop", 0, 30));

        assertThat(planner.plan(request(0, slots, filler("a", null, 9), filler("b", null, 8), filler("c", null, 7)))
                        .placed())
                .extracting(Placed::remarkId)
                .containsExactly("a", "b", "c");
    }

    /** From 0 to 13 s: 8 s at once, or 5 s in the figure that begins at 7 s. */
    @Test
    void theLongerGoesFirstThoughAnotherCouldOnlyBeginLater() {
        List<Slot> slots = List.of(slot("loop", 0, 7), slot("roll", 7, 10));

        assertThat(planner.plan(request(0, slots, filler("a", null, 8), filler("b", "roll", 5)))
                        .placed())
                .extracting(Placed::remarkId)
                .containsExactly("a");
    }

    /** A figure of 5 s and the 3 s past it, and another 10 s ahead. */
    @Test
    void fillerOfAFigureEndsWithIt() {
        List<Slot> slots = List.of(slot("loop", 0, 5), slot("roll", 15, 25));

        assertThat(planner.plan(request(0, slots, filler("a", "loop", 8))).find("a"))
                .isPresent();
        assertThat(planner.plan(request(0, slots, filler("a", "loop", 8.1))).find("a"))
                .isEmpty();
    }

    @Test
    void shortFormGoesWhereTheFullOneDoesNot() {
        Candidate both = candidate("a", RemarkKind.FILLER, null, 9, 4);

        assertThat(planner.plan(request(0, List.of(slot("loop", 0, 4)), both))
                        .find("a")
                        .orElseThrow()
                        .form())
                .isEqualTo(RemarkForm.SHORT);
        assertThat(planner.plan(request(0, List.of(slot("loop", 0, 7)), both))
                        .find("a")
                        .orElseThrow()
                        .form())
                .isEqualTo(RemarkForm.FULL);
    }

    @Test
    void fillerOfAFigureIsSaidInIt() {
        List<Slot> slots = List.of(slot("loop", 0, 20), slot("roll", 20, 40));
        Placed placed = planner.plan(request(0, slots, filler("a", "roll", 8)))
                .find("a")
                .orElseThrow();

        assertThat(placed.startS()).isGreaterThanOrEqualTo(20);
        assertThat(why(planner.plan(request(0, slots, filler("b", "spin", 8))), "b"))
                .isEqualTo("FIGURE_NOT_AHEAD: its figure is not still to come");
    }

    @Test
    void fillerOnTheScreenStaysThoughALongerOneCameAlong() {
        List<Slot> slots = List.of(slot("loop", 0, 10));
        Plan before = new Plan(
                List.of(new Placed("a", null, RemarkKind.FILLER, RemarkForm.FULL, 2, 8, false)), List.of(), 0, 0, true);
        PlanRequest asked = request(0, slots, filler("a", null, 6), filler("b", null, 9));
        Plan plan = planner.plan(Acts.with(asked, 0, slots, before));

        assertThat(plan.placed()).extracting(Placed::remarkId).containsExactly("a");
        assertThat(plan.placed().get(0).startS()).isEqualTo(2);
        assertThat(planner.plan(asked).placed()).extracting(Placed::remarkId).containsExactly("b");
    }

    @Test
    void fillerThatNoLongerFitsWhereItWasGoesElsewhere() {
        List<Slot> slots = List.of(slot("loop", 0, 10));
        Plan before = new Plan(
                List.of(new Placed("a", null, RemarkKind.FILLER, RemarkForm.FULL, 9, 15, false)),
                List.of(),
                0,
                0,
                true);
        Plan plan = planner.plan(Acts.with(request(0, slots, filler("a", null, 6)), 0, slots, before));

        assertThat(plan.placed().get(0).startS()).isZero();
    }

    @Test
    void whatWasSaidOrIsBeingSaidFillsNothing() {
        List<Slot> slots = List.of(slot("loop", 0, 30));
        List<Candidate> candidates = List.of(filler("a", null, 6), filler("b", null, 6));
        Plan plan = planner.plan(new PlanRequest(
                3,
                slots,
                candidates,
                Set.of("a"),
                Optional.empty(),
                new Speaking("b", RemarkForm.FULL, 2, false),
                PatterRules.DEFAULT));

        assertThat(plan.placed())
                .containsExactly(new Placed("b", null, RemarkKind.FILLER, RemarkForm.FULL, 2, 8, false));
        assertThat(plan.unplaced()).isEmpty();
    }

    @Test
    void reasonTellsBothFormsWhereThereAreTwo() {
        Plan plan =
                planner.plan(request(0, List.of(slot("loop", 20, 32)), candidate("c", RemarkKind.CALL, "loop", 9, 8)));

        assertThat(why(plan, "c")).isEqualTo("TOO_LONG: 9.0 s needed, 8.0 s in the short form, its own time is 7.0 s");
    }

    @Test
    void reasonSaysWhereTheNumbersLeaveNothingToSpare() {
        Plan late = planner.plan(
                request(16.06, List.of(slot("loop", 20, 32)), candidate("c", RemarkKind.CALL, "loop", 2.94)));

        assertThat(why(late, "c")).isEqualTo("TOO_LATE: 2.9 s needed, 2.9 s of its time left, with nothing to spare");
    }

    /** 20 s from now to the end of the plan, twice 4 s in it with a breath: what would be 12 s needs more than is left. */
    @Test
    void remarkCrowdedOutIsToldTheLongestGap() {
        Plan plan = planner.plan(request(
                0,
                List.of(slot("loop", 0, 17)),
                candidate("thanks", RemarkKind.DUTY, null, 14),
                candidate("free", RemarkKind.FACT, null, 8)));

        assertThat(why(plan, "free")).isEqualTo("CROWDED_OUT: 8.0 s needed, 5.4 s there");
    }

    /** Its end must lie before the figure's shortest end; a call of 3 s ends 1.5 s before its figure. */
    @Test
    void callIsTightWhereTheFigureBeforeItMayEndSooner() {
        Candidate call = candidate("call", RemarkKind.CALL, "loop", 3);
        Slot loop = slot("loop", 20, 32);

        assertThat(tight(call, new Slot("roll", 0, 20, 18.4, 22, List.of()), loop))
                .isTrue();
        assertThat(tight(call, new Slot("roll", 0, 20, 18.5, 22, List.of()), loop))
                .isFalse();
    }

    /** Before a call of 3 s, its breath of 0.6 s and the second it ends early, all must fit a short figure too. */
    @Test
    void remarkBeforeACallIsTightWhereAShortFigureLeavesNoRoomForBoth() {
        Slot loop = slot("loop", 20, 32);
        Candidate call = candidate("call", RemarkKind.CALL, "loop", 3);
        Candidate what = candidate("what", RemarkKind.EXPLANATION, "roll", 8);

        // From 0.5 to 8.5 s; 4.6 s behind it are 13.1 s.
        assertThat(tight(what, new Slot("roll", 0, 20, 13, 22, List.of()), loop, call))
                .isTrue();
        assertThat(tight(what, new Slot("roll", 0, 20, 13.1, 22, List.of()), loop, call))
                .isFalse();
        // Without a call it may run 3 s past the figure.
        assertThat(tight(what, new Slot("roll", 0, 20, 5.4, 22, List.of()), loop))
                .isTrue();
        assertThat(tight(what, new Slot("roll", 0, 20, 5.5, 22, List.of()), loop))
                .isFalse();
    }

    private boolean tight(Candidate candidate, Slot before, Slot figure, Candidate... others) {
        List<Candidate> all = new ArrayList<>(List.of(candidate));
        all.addAll(List.of(others));
        return planner.plan(request(0, List.of(before, figure), all.toArray(Candidate[]::new)))
                .find(candidate.remark().id())
                .orElseThrow()
                .tight();
    }
}
