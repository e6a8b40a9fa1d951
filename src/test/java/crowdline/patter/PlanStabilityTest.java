package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlanStabilityTest {
    private final Planner planner = new Planner();

    private final PlanRequest ordinary = Acts.request(
            0,
            List.of(slot("loop", 15, 27), slot("roll", 27, 35), slot("turn", 36, 52)),
            candidate("call loop", RemarkKind.CALL, "loop", 3),
            candidate("what loop", RemarkKind.EXPLANATION, "loop", 6, 3.5),
            candidate("call roll", RemarkKind.CALL, "roll", 2),
            candidate("what roll", RemarkKind.EXPLANATION, "roll", 5, 3),
            candidate("call turn", RemarkKind.CALL, "turn", 2.5),
            candidate("what turn", RemarkKind.EXPLANATION, "turn", 8),
            candidate("fact turn", RemarkKind.FACT, "turn", 7),
            candidate("thanks", RemarkKind.DUTY, null, 6),
            candidate("engine", RemarkKind.FACT, null, 5),
            candidate("age", RemarkKind.FACT, null, 4),
            candidate("wood", RemarkKind.FACT, null, 4));

    @Test
    void halfASecondOfDriftChangesNothingOnTheScreen() {
        Plan before = planner.plan(ordinary);
        assertThat(before.placed()).hasSizeGreaterThan(7);
        for (double driftS : new double[] {-0.5, -0.3, -0.1, 0.1, 0.3, 0.5}) {
            Plan after = planner.plan(Acts.with(ordinary, 0, Acts.drifted(ordinary.slots(), driftS), before));
            assertThat(after.placed()).as("drift " + driftS).isEqualTo(before.placed());
        }
    }

    @Test
    void planAgainWithoutCauseIsThePlan() {
        for (int seed = 0; seed < 100; seed++) {
            PlanRequest request = Acts.random(new Random(seed), 5, 2, 7);
            Plan before = planner.plan(request);
            Plan after = planner.plan(Acts.with(request, 0, request.slots(), before));
            assertThat(after.placed()).as("act " + seed).isEqualTo(before.placed());
        }
    }

    @Test
    void planStillAllowedAfterADriftIsOnlyLeftForABetterOne() {
        int allowed = 0;
        for (int seed = 0; seed < 100; seed++) {
            PlanRequest request = Acts.random(new Random(seed), 5, 2, 6);
            Plan before = planner.plan(request);
            for (double driftS : new double[] {-0.4, 0.4}) {
                String act = "act " + seed + " drifted by " + driftS;
                PlanRequest drifted = Acts.with(request, 0, Acts.drifted(request.slots(), driftS), before);
                Plan after = planner.plan(drifted);
                Judge.check(act, drifted, after);
                if (isAllowed(drifted, before)) {
                    allowed++;
                    long worthBefore = Judge.worth(drifted, before);
                    assertThat(Judge.worth(drifted, after)).as(act).isGreaterThanOrEqualTo(worthBefore);
                    if (Judge.worth(drifted, after) == worthBefore) {
                        assertThat(spoken(after)).as(act).isEqualTo(spoken(before));
                    }
                }
            }
        }
        assertThat(allowed).isGreaterThan(100);
    }

    /** The landing is flown minutes before its time, or not at all: its thanks are not held back until then. */
    @Test
    void whatBelongedToAFigureOfAnActThatIsOverIsSaidAsSoonAsItCan() {
        PlanRequest flying =
                Acts.request(0, List.of(slot("landing", 400, 460)), candidate("thanks", RemarkKind.DUTY, "landing", 6));
        Plan before = planner.plan(flying);
        assertThat(before.find("thanks").orElseThrow().startS()).isGreaterThan(390);
        PlanRequest over = Acts.request(1, List.of(), candidate("thanks", RemarkKind.DUTY, null, 6));
        Plan after = planner.plan(Acts.with(over, 1, List.of(), before));
        assertThat(after.find("thanks").orElseThrow().startS()).isLessThan(10);
    }

    private static boolean isAllowed(PlanRequest request, Plan plan) {
        try {
            Judge.check("", request, plan);
            return true;
        } catch (AssertionError notAllowed) {
            return false;
        }
    }

    private static List<String> spoken(Plan plan) {
        return plan.placed().stream()
                .filter(p -> p.kind() != RemarkKind.FILLER)
                .map(p -> p.remarkId() + " " + p.form() + " " + p.startS())
                .toList();
    }

    @Test
    void remarkNotBegunInTimeIsOfferedAtOnce() {
        Plan before = planner.plan(ordinary);
        Placed first = before.placed().get(0);
        Plan after = planner.plan(Acts.with(ordinary, first.startS() + 0.4, ordinary.slots(), before));
        assertThat(after.placed().get(0).remarkId()).isEqualTo(first.remarkId());
        assertThat(after.placed())
                .extracting(Placed::remarkId)
                .containsExactlyElementsOf(
                        before.placed().stream().map(Placed::remarkId).toList());
    }

    @Test
    void droppedFigureTakesOnlyItsOwnRemarksAway() {
        Plan before = planner.plan(ordinary);
        List<Slot> slots = List.of(slot("loop", 15, 27), slot("turn", 28, 44));
        Plan after = planner.plan(Acts.with(ordinary, 0, slots, before));
        List<String> expected = before.placed().stream()
                .filter(p -> !"roll".equals(p.figureId()))
                .map(Placed::remarkId)
                .toList();
        assertThat(after.placed())
                .extracting(Placed::remarkId)
                .containsAll(expected.stream()
                        .filter(id -> !id.equals("age") && !id.equals("wood") && !id.equals("engine"))
                        .toList());
        assertThat(after.placed()).filteredOn(p -> "roll".equals(p.figureId())).isEmpty();
    }
}
