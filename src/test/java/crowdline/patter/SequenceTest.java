package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.request;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A loop of 40 s and the 3 s past it, from now on. In it "a" is said from 5 to 8 s and "b" from 13 to 16 s and at no other
 * time: before them are 4.4 s and between them 3.8 s, each without the breath.
 */
class SequenceTest {
    private static final Slot LOOP = slot("loop", 0, 40);

    private static Candidate at(String id, double fromS, double toS) {
        Remark remark = new Remark(id, RemarkKind.FACT, id, null, fromS, toS, 1, false);
        return new Candidate(remark, "loop", SpokenLength.of(toS - fromS), null);
    }

    private static Candidate free(String id, double seconds) {
        return candidate(id, RemarkKind.FACT, null, seconds);
    }

    private static Candidate duty(String id, double seconds) {
        return candidate(id, RemarkKind.DUTY, null, seconds);
    }

    private static Workload work(PlanRequest request) {
        return Workload.of(request, Horizon.of(request, null));
    }

    private static Workload work(Candidate... others) {
        List<Candidate> all = Stream.concat(Stream.of(at("a", 5, 8), at("b", 13, 16)), Stream.of(others))
                .toList();
        return work(request(0, List.of(LOOP), all.toArray(Candidate[]::new)));
    }

    private static Item item(Workload work, String id) {
        return Objects.requireNonNull(work.byId().get(id), id);
    }

    private static Sequence of(Workload work, String... ids) {
        List<Step> steps = Stream.of(ids)
                .map(id -> item(work, id))
                .map(item -> new Step(item, item.choices().get(0)))
                .toList();
        return new Sequence(work, steps);
    }

    private static List<String> ids(Sequence sequence) {
        return sequence.steps().stream().map(step -> step.item().id()).toList();
    }

    private static Candidate until(String id, double seconds, double latestS) {
        Remark remark = new Remark(id, RemarkKind.FACT, id, null, null, latestS, 1, false);
        return new Candidate(remark, "loop", SpokenLength.of(seconds), null);
    }

    /** "c" may wait until 15.5 s: in front of it 2 s leave 12.9 s over, behind it 35.9 s; before what cannot wait, nothing. */
    @Test
    void whatIsFilledInGoesWhereItLeavesTheLeastTimeOver() {
        Workload one = work(request(0, List.of(LOOP), until("c", 4, 20), free("free", 2)));
        assertThat(ids(of(one, "c").filled())).containsExactly("free", "c");
        Workload two = work(request(0, List.of(LOOP), until("c", 4, 20), at("late", 30, 33), free("free", 2)));
        assertThat(ids(of(two, "c", "late").filled())).containsExactly("c", "free", "late");
    }

    @Test
    void whatJustFitsIsFilledIn() {
        Workload first = work(free("free", 4.4));
        assertThat(ids(of(first, "a", "b").filled())).containsExactly("free", "a", "b");
        Workload behind = work(free("free", 4.5));
        assertThat(ids(of(behind, "a", "b").filled())).containsExactly("a", "b", "free");
        Workload between = work(free("long", 4.4), free("free", 3.8));
        assertThat(ids(of(between, "long", "a", "b").filled())).containsExactly("long", "a", "free", "b");
    }

    /** To the end of the plan but for the half second that is spared: from 16.6 to 42.5 s. */
    @Test
    void whatFillsTheRestToItsEndFits() {
        Workload whole = work(free("free", 25.9));
        assertThat(ids(of(whole, "a", "b").filled())).containsExactly("a", "b", "free");
        Workload more = work(free("free", 26));
        assertThat(ids(of(more, "a", "b").filled())).containsExactly("a", "b");
    }

    @Test
    void mostValuableIsFilledInFirst() {
        Workload work = work(duty("thanks", 38));
        assertThat(ids(new Sequence(work, List.of()).filled())).containsExactly("thanks");
    }

    @Test
    void whatBelongsToFiguresIsFilledInInItsOrder() {
        PlanRequest request = request(
                0,
                List.of(slot("loop", 0, 20), slot("roll", 20, 40)),
                candidate("loop 1", RemarkKind.FACT, "loop", 4),
                candidate("loop 2", RemarkKind.FACT, "loop", 4),
                new Candidate(
                        new Remark("roll 1", RemarkKind.FACT, "r", null, -15.0, null, 1, false),
                        "roll",
                        SpokenLength.of(4),
                        null),
                free("free", 4));
        Workload work = work(request);
        assertThat(ids(of(work, "loop 1").filled())).startsWith("loop 1").containsSubsequence("loop 1", "loop 2");
        assertThat(ids(of(work, "loop 2").filled())).containsSubsequence("loop 1", "loop 2", "roll 1");
        assertThat(ids(of(work, "free", "roll 1").filled())).containsSubsequence("loop 1", "loop 2", "roll 1");
        assertThat(ids(of(work, "loop 1", "free", "roll 1").filled()))
                .containsSubsequence("loop 1", "loop 2", "roll 1")
                .hasSize(4);
    }

    /** "free" in its short form between "a" and "b". */
    private static Sequence inShort(Workload work) {
        Choice brief = item(work, "free").choices().stream()
                .filter(c -> c.form() == RemarkForm.SHORT)
                .findFirst()
                .orElseThrow();
        List<Step> steps = new ArrayList<>(of(work, "a", "b").steps());
        steps.add(1, new Step(item(work, "free"), brief));
        return new Sequence(work, steps);
    }

    @Test
    void shortFormBecomesTheFullOneWhereThatFits() {
        Workload fits = work(candidate("free", RemarkKind.FACT, null, 3.8, 2));
        assertThat(inShort(fits).filled().steps().get(1).choice().form()).isEqualTo(RemarkForm.FULL);
        Workload tooLong = work(candidate("free", RemarkKind.FACT, null, 3.9, 2));
        assertThat(inShort(tooLong).filled().steps().get(1).choice().form()).isEqualTo(RemarkForm.SHORT);
    }

    @Test
    void dutyComesAsEarlyAsItFits() {
        Workload small = work(duty("thanks", 3.8));
        assertThat(ids(of(small, "a", "b", "thanks").dutiesEarly(5))).containsExactly("thanks", "a", "b");
        Workload middle = work(duty("thanks", 4.4));
        assertThat(ids(of(middle, "a", "b", "thanks").dutiesEarly(5))).containsExactly("thanks", "a", "b");
        Workload large = work(duty("thanks", 4.5));
        assertThat(ids(of(large, "a", "b", "thanks").dutiesEarly(5))).containsExactly("a", "b", "thanks");
    }

    @Test
    void dutiesDoNotOvertakeOneAnother() {
        Workload work = work(duty("one", 1.5), duty("two", 1));
        assertThat(ids(of(work, "a", "one", "two", "b").dutiesEarly(5))).containsExactly("one", "two", "a", "b");
        assertThat(ids(of(work, "a", "two", "b", "one").dutiesEarly(5))).containsExactly("two", "one", "a", "b");
    }

    @Test
    void whatOnlyFillsTimeMakesRoomForADutyAndComesLater() {
        Workload work = work(duty("thanks", 4.4), free("free", 3.8));
        assertThat(ids(of(work, "free", "a", "b", "thanks").dutiesEarly(5)))
                .containsExactly("thanks", "a", "free", "b");
    }

    /** From 16.6 to 42.5 s the duty and 21 s fill all there is: what is longer than the duty would have no other place. */
    @Test
    void nothingIsLostForADutyThatIsEarly() {
        Workload work = work(free("free", 4.4), free("long", 21), duty("thanks", 4.3), free("more", 3.8));
        Sequence full = of(work, "free", "a", "more", "b", "thanks", "long");
        Sequence early = full.dutiesEarly(5);
        assertThat(early.value()).isEqualTo(full.value());
        assertThat(ids(early)).containsExactly("free", "a", "more", "b", "thanks", "long");
    }

    @Test
    void dutyThatMakesRoomForAnotherLetsItComeEarlierToo() {
        Workload work = work(duty("one", 3.8), duty("two", 3.7));
        assertThat(ids(of(work, "a", "one", "b", "two").dutiesEarly(5))).containsExactly("one", "a", "two", "b");
        assertThat(ids(of(work, "a", "b", "one", "two").dutiesEarly(5))).containsExactly("one", "a", "two", "b");
    }

    /** It was at 20 s, and "c" may begin until 4.5 s. Half a second is what nobody wants to see a move for. */
    @Test
    void dutyOnTheScreenMovesOnlyIfThatLeavesTimeToSpare() {
        assertThat(moved(3.4)).as("0.5 s over").containsExactly("thanks", "c");
        assertThat(moved(3.5)).as("0.4 s over").containsExactly("c", "thanks");
    }

    private static List<String> moved(double seconds) {
        PlanRequest first = request(0, List.of(LOOP), until("c", 3, 8), duty("thanks", seconds));
        Plan before = new Plan(
                List.of(new Placed("thanks", null, RemarkKind.DUTY, RemarkForm.FULL, 20, 20 + seconds, false)),
                List.of(),
                0,
                0,
                true);
        Workload work = work(Acts.with(first, 0, first.slots(), before));
        return ids(of(work, "c", "thanks").dutiesEarly(5));
    }

    @Test
    void latestStartLeavesRoomForAllThatFollows() {
        Workload work = work(free("free", 2));
        Sequence sequence = of(work, "free", "a", "b");
        assertThat(sequence.latestStart(0)).as("2 s and a breath before 5 s").isEqualTo(24);
        assertThat(sequence.latestStart(1)).isEqualTo(50);
        assertThat(of(work, "a", "b", "free").latestStart(2)).isEqualTo(430 - 20 - 5);
    }

    @Test
    void whatCannotBeSaidInThatOrderIsNoSequence() {
        Workload work = work(free("free", 4.5));
        assertThatIllegalStateException()
                .isThrownBy(() -> of(work, "free", "a", "b"))
                .withMessage("step 1 of the sequence has no start");
    }
}
