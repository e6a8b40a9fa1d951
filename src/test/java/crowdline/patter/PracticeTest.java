package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.patter.Practice.Said;
import crowdline.patter.Practice.Timing;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two figures of 20 s from 0 and 20; every number below is counted by hand on that scale. */
class PracticeTest {
    private static final List<Slot> SLOTS =
            List.of(slot("f1", 0, List.of()), slot("f2", 20, List.of(new Quiet(5, 10.0, null))));
    private static final Plan PLAN = new Plan(
            List.of(
                    placed("say", "f1", RemarkKind.EXPLANATION, 2, 8),
                    placed("thanks", null, RemarkKind.DUTY, 9, 13),
                    placed("call", "f2", RemarkKind.CALL, 16, 18.5)),
            List.of(),
            0,
            0,
            true);

    private static Slot slot(String id, double startS, List<Quiet> quiets) {
        return new Slot(id, startS, startS + 20, startS + 18, startS + 22, quiets);
    }

    private static Placed placed(String id, @Nullable String figureId, RemarkKind kind, double startS, double endS) {
        return new Placed(id, figureId, kind, RemarkForm.FULL, startS, endS, false);
    }

    private static Practice after(double toS, Said... said) {
        return Practice.of(SLOTS, PLAN, List.of(said), -8, toS, PatterRules.DEFAULT);
    }

    @Test
    void callThatEndsOneAndAHalfSecondsBeforeItsFigureIsOnTime() {
        Practice run = after(40, new Said("call", 16, 18.5));

        assertThat(run.calls()).containsExactly(new Practice.Call("call", "f2", Timing.ON_TIME, 1.5));
    }

    @Test
    void callFourSecondsBeforeIsEarlyAndOneInTheFigureIsLate() {
        assertThat(after(40, new Said("call", 13, 16)).calls(Timing.EARLY)).isEqualTo(1);
        assertThat(after(40, new Said("call", 18, 21)).calls().get(0))
                .isEqualTo(new Practice.Call("call", "f2", Timing.LATE, -1.0));
    }

    @Test
    void callsAreCountedByTheirTiming() {
        Practice early = after(40, new Said("call", 13, 16));

        assertThat(early.calls(Timing.LATE)).isZero();
        assertThat(early.calls(Timing.ON_TIME)).isZero();
        assertThat(early.calls(Timing.NOT_SAID)).isZero();
    }

    @Test
    void oneRemarkDoesNotStandForAnother() {
        Practice run = after(40, new Said("say", 2, 8));

        assertThat(run.dutiesMissed()).containsExactly("thanks");
        assertThat(run.calls(Timing.NOT_SAID)).isEqualTo(1);
    }

    /** One to two seconds before its figure, and three tenths either way that a key cannot tell. */
    @Test
    void callIsOnTimeToWithinWhatAKeyCanTell() {
        assertThat(timingOfACallEnding(2.25)).isEqualTo(Timing.ON_TIME);
        assertThat(timingOfACallEnding(2.35)).isEqualTo(Timing.EARLY);
        assertThat(timingOfACallEnding(0.75)).isEqualTo(Timing.ON_TIME);
        assertThat(timingOfACallEnding(0.65)).isEqualTo(Timing.LATE);
    }

    private static Timing timingOfACallEnding(double beforeS) {
        return after(40, new Said("call", 16, 20 - beforeS)).calls().get(0).timing();
    }

    @Test
    void callOfAFigureThatHadBegunAlreadyOrComesLaterIsNotJudged() {
        assertThat(Practice.of(SLOTS, PLAN, List.of(), 20, 40, PatterRules.DEFAULT)
                        .calls())
                .isEmpty();
        assertThat(after(20).calls()).hasSize(1);
        assertThat(after(19.9).calls()).isEmpty();
    }

    @Test
    void callNobodySaidIsNamedOnceItsFigureHasBegun() {
        assertThat(after(40).calls(Timing.NOT_SAID)).isEqualTo(1);
        assertThat(after(15).calls()).isEmpty();
    }

    @Test
    void remarkThatRunsIntoTheNextCallIsToldWithItsSeconds() {
        Practice run = after(40, new Said("thanks", 12, 17.5), new Said("call", 18, 20));

        assertThat(run.overruns()).hasSize(1);
        assertThat(run.overruns().get(0).remarkId()).isEqualTo("thanks");
        assertThat(run.overruns().get(0).overS()).isCloseTo(1.5, within(1e-9));
    }

    @Test
    void remarkThatEndsAsTheCallBeginsRunsIntoNothing() {
        assertThat(after(40, new Said("thanks", 12, 16.2)).overruns()).isEmpty();
    }

    @Test
    void quietIsBrokenByTheSecondsTalkedInIt() {
        Practice run = after(40, new Said("say", 24, 27), new Said("thanks", 26, 28));

        assertThat(run.quiets()).containsExactly(new Practice.BrokenQuiet("f2", 3));
    }

    @Test
    void dutyWhoseTimeHasPassedIsMissed() {
        assertThat(after(40).dutiesMissed()).containsExactly("thanks");
        assertThat(after(10).dutiesDue()).isZero();
        assertThat(after(40, new Said("thanks", 9, 13)).dutiesMissed()).isEmpty();
    }

    @Test
    void talkTwoAtOnceCountsOnce() {
        Practice run = after(12, new Said("say", 0, 6), new Said("thanks", 4, 8));

        assertThat(run.talkS()).isEqualTo(8);
        assertThat(run.talkShare()).isEqualTo(0.4);
    }

    @Test
    void runIntoACallIsCountedToTheEndOfTheRun() {
        Practice run = after(17, new Said("thanks", 12, 30));

        assertThat(run.overruns()).singleElement().satisfies(o -> {
            assertThat(o.callId()).isEqualTo("call");
            assertThat(o.overS()).isCloseTo(1, within(1e-9));
        });
    }

    @Test
    void remarkThatBeganAsTheCallWasToBeginAndTheCallItselfRunIntoNothing() {
        assertThat(after(40, new Said("thanks", 16, 19)).overruns()).isEmpty();
        assertThat(after(40, new Said("call", 15, 19)).overruns()).isEmpty();
    }

    @Test
    void dutyCountsWhereItsWholeTimeWasInTheRun() {
        assertThat(after(13).dutiesDue()).isEqualTo(1);
        assertThat(after(12.9).dutiesDue()).isZero();
        assertThat(Practice.of(SLOTS, PLAN, List.of(), 9, 40, PatterRules.DEFAULT)
                        .dutiesDue())
                .isEqualTo(1);
        assertThat(Practice.of(SLOTS, PLAN, List.of(), 9.1, 40, PatterRules.DEFAULT)
                        .dutiesDue())
                .isZero();
    }

    @Test
    void quietLastsToItsOwnEndOrItsFigures() {
        List<Slot> slots = List.of(slot("f1", 0, List.of(new Quiet(5, null, null))), slot("f2", 20, List.of()));
        Practice run = Practice.of(slots, PLAN, List.of(new Said("say", 18, 24)), 0, 40, PatterRules.DEFAULT);

        assertThat(run.quiets()).containsExactly(new Practice.BrokenQuiet("f1", 2));
        assertThat(after(40, new Said("say", 29.8, 34)).quiets()).isEmpty();
    }

    @Test
    void runOfNoLengthHasNoShareOfTalk() {
        assertThat(after(-8, new Said("say", -9, 6)).talkShare()).isZero();
    }

    @Test
    void talkIsCountedInsideTheRunAlone() {
        assertThat(after(4, new Said("say", -10, 6)).talkS()).isEqualTo(12);
    }

    @Test
    void remarkThatEndsBeforeItStartsIsRefused() {
        assertThatThrownBy(() -> new Said("say", 6, 5))
                .hasMessage("remark say was said from 6.0 to 5.0 s; its end must not be before its start");
        assertThat(new Said("say", 6, 6).endS()).isEqualTo(6);
    }
}
