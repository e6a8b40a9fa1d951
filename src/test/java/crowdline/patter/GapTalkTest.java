package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A gap from 0 s on, in which half of the time is talk unless a test says otherwise. A breath is 0.6 s. */
class GapTalkTest {
    private static final PatterRules RULES = PatterRules.DEFAULT;

    private static Candidate candidate(String id, RemarkKind kind, double seconds) {
        return new Candidate(Remark.of(id, kind, "Words."), null, SpokenLength.of(seconds), null);
    }

    private static Candidate filler(String id, double seconds) {
        return candidate(id, RemarkKind.FILLER, seconds);
    }

    private static Gap.Piece piece(boolean last, String id, double... seconds) {
        List<Candidate> parts = new ArrayList<>();
        for (int i = 0; i < seconds.length; i++) {
            parts.add(candidate(id + (i + 1), RemarkKind.FACT, seconds[i]));
        }
        return new Gap.Piece(last, parts);
    }

    private static Plan plan(double nowS, Gap gap, Set<String> said, @Nullable Speaking speaking, Candidate... all) {
        PatterRules rules = RULES.withOpenEnd(Math.max(1, gap.endS() - nowS));
        return new Planner()
                .plan(new PlanRequest(nowS, List.of(), List.of(all), said, Optional.empty(), speaking, rules, gap));
    }

    private static Plan plan(Gap gap, Candidate... all) {
        return plan(0, gap, Set.of(), null, all);
    }

    private static Gap gap(double endS, double share, Gap.Piece... pieces) {
        return new Gap(endS, share, null, List.of(pieces), List.of());
    }

    private static List<String> told(Plan plan) {
        return plan.placed().stream()
                .map(p -> p.remarkId() + " " + p.startS() + "-" + p.endS())
                .toList();
    }

    @Test
    void dutiesComeFirstThenPiecesThenFillersAndBetweenThemItIsQuiet() {
        Plan plan = plan(
                gap(200, 0.5, piece(false, "story", 20, 10)),
                candidate("duty", RemarkKind.DUTY, 10),
                filler("joke", 8),
                filler("hats", 12));
        assertThat(told(plan))
                .containsExactly(
                        "duty 0.0-10.0", "story1 20.0-40.0", "story2 40.6-50.6", "hats 81.2-93.2", "joke 105.2-113.2");
    }

    @Test
    void aPieceIsSaidWholeOrNotAtAll() {
        // 30.6 s and half a second to spare.
        assertThat(told(plan(gap(31.1, 0.5, piece(false, "story", 20, 10))))).hasSize(2);
        assertThat(told(plan(gap(31.0, 0.5, piece(false, "story", 20, 10))))).isEmpty();
    }

    @Test
    void thePieceThatDoesNotFitLeavesItsTimeToOneThatDoes() {
        assertThat(told(plan(gap(25, 0.5, piece(false, "long", 20, 10), piece(false, "short", 15)))))
                .containsExactly("short1 0.0-15.0");
    }

    @Test
    void whatLeadsUpToTheNextActStandsAtTheEnd() {
        assertThat(told(plan(gap(100, 0.5, piece(true, "next", 10, 10), piece(false, "story", 30)))))
                .containsExactly("story1 0.0-30.0", "next1 78.9-88.9", "next2 89.5-99.5");
    }

    @Test
    void whatWasBegunGoesOnAtOnceAndAsFarAsThereIsRoom() {
        Gap gap = gap(100, 0.5, piece(false, "story", 20, 10, 15, 10));
        Plan plan = plan(60, gap, Set.of("story1"), new Speaking("story2", RemarkForm.FULL, 58, false));
        assertThat(told(plan)).containsExactly("story2 58.0-68.0", "story3 68.6-83.6", "story4 84.2-94.2");
        Gap shorter = gap(84, 0.5, piece(false, "story", 20, 10, 15, 10));
        Plan cut = plan(60, shorter, Set.of("story1"), new Speaking("story2", RemarkForm.FULL, 58, false));
        assertThat(told(cut)).containsExactly("story2 58.0-68.0", "story3 68.6-83.6");
    }

    @Test
    void afterTalkOfBeforeItIsQuietAsLongAsTheShareAsks() {
        Gap quarter = new Gap(200, 0.25, new Gap.Stretch(-10, -2), List.of(), List.of());
        assertThat(told(plan(0, quarter, Set.of(), null, filler("joke", 8)))).containsExactly("joke 22.0-30.0");
        Gap full = new Gap(200, 1, new Gap.Stretch(-10, -2), List.of(), List.of());
        assertThat(told(plan(0, full, Set.of(), null, filler("joke", 8)))).containsExactly("joke 0.0-8.0");
    }

    @Test
    void withoutAnyShareOfTalkOnlyDutiesAreSaidAndWhatLeadsUp() {
        assertThat(told(plan(
                        gap(200, 0, piece(false, "story", 20)),
                        candidate("duty", RemarkKind.DUTY, 10),
                        filler("joke", 8))))
                .containsExactly("duty 0.0-10.0");
    }

    @Test
    void aShorterGapIsFilledAnew() {
        Candidate[] all = {filler("long", 30), filler("short", 8)};
        assertThat(told(plan(gap(31, 0.5), all))).containsExactly("long 0.0-30.0");
        assertThat(told(plan(gap(30, 0.5), all))).containsExactly("short 0.0-8.0");
        assertThat(told(plan(gap(7, 0.5), all))).isEmpty();
    }

    /** The same gap second by second, with what was said remembered as the program does: never fuller than it may be. */
    @Test
    void aGapOfAnyLengthIsNeverTalkedFullerThanItsShare() {
        for (double share : new double[] {0.2, 0.5, 0.8}) {
            for (double endS : new double[] {5, 61, 300, 900}) {
                List<Candidate> all = new ArrayList<>();
                for (int i = 0; i < 40; i++) {
                    all.add(filler("f" + i, 5 + i % 11));
                }
                Set<String> said = new HashSet<>();
                double talkedS = 0;
                Gap.@Nullable Stretch last = null;
                for (double nowS = 0; nowS < endS; nowS++) {
                    Plan plan = plan(
                            nowS,
                            new Gap(endS, share, last, List.of(), List.of()),
                            said,
                            null,
                            all.toArray(Candidate[]::new));
                    for (Placed placed : plan.placed()) {
                        if (placed.startS() < nowS + 1) {
                            said.add(placed.remarkId());
                            last = new Gap.Stretch(placed.startS(), placed.endS());
                            talkedS += placed.endS() - placed.startS();
                            nowS = Math.ceil(placed.endS()) - 1;
                            break;
                        }
                    }
                }
                // The quiet after the last words may lie behind the end of the gap.
                assertThat(talkedS).as("%s of %s s", share, endS).isLessThanOrEqualTo(share * endS + 15);
                assertThat(said).as("%s of %s s", share, endS).hasSizeGreaterThanOrEqualTo((int) (share * endS / 40));
            }
        }
    }

    @Test
    void theSamePlanIsMadeFromOneSecondToTheNext() {
        Gap gap = gap(300, 0.5, piece(false, "story", 20, 10), piece(true, "next", 15));
        Candidate[] all = {filler("joke", 8), filler("hats", 12), filler("water", 9)};
        Gap told = new Gap(300, 0.5, new Gap.Stretch(-40, 0), gap.pieces(), List.of());
        List<String> first = told(plan(0, told, Set.of(), null, all));
        assertThat(first).hasSize(6);
        for (double nowS = 1; nowS < 39; nowS++) {
            assertThat(told(plan(nowS, told, Set.of(), null, all))).isEqualTo(first);
        }
    }
}
