package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.moment.Moment;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks a plan against the rules as they are written, in seconds, with no help from the planner. */
final class Judge {
    /** Slots are taken to the nearest tenth. */
    private static final double ROUNDING_S = 0.05 + 1e-6;

    private Judge() {}

    static void check(String act, PlanRequest request, Plan plan) {
        List<Placed> placed = plan.placed();
        PatterRules rules = request.rules();
        Speaking speaking = request.speaking();
        for (int i = 0; i < placed.size(); i++) {
            Placed p = placed.get(i);
            String what = act + ": " + p;
            if (i > 0) {
                assertThat(p.startS() - placed.get(i - 1).endS())
                        .as(what + " keeps a breath")
                        .isGreaterThanOrEqualTo(rules.breathS() - 1e-6);
            }
            if (speaking != null && speaking.remarkId().equals(p.remarkId())) {
                assertThat(i).as(what + " goes first").isZero();
                continue;
            }
            Candidate candidate = candidate(request, p.remarkId());
            SpokenLength length = candidate.length(p.form());
            assertThat(length).as(what + " has that form").isNotNull();
            assertThat(p.endS() - p.startS())
                    .as(what)
                    .isCloseTo(length == null ? -1 : length.seconds(), within(0.1 + 1e-6));
            assertThat(request.alreadySaid()).as(what).doesNotContain(p.remarkId());
            assertThat(p.startS()).as(what + " is not in the past").isGreaterThanOrEqualTo(request.nowS() - 1e-6);
            checkWindow(what, request, candidate.remark(), p);
            checkQuiets(what, request, p);
            checkWatched(what, request, candidate.remark(), p);
        }
        checkOrder(act, request, placed);
        checkNothingLost(act, request, plan);
    }

    private static void checkWindow(String what, PlanRequest request, Remark remark, Placed p) {
        if (p.figureId() == null) {
            return;
        }
        Slot slot = request.slots().stream()
                .filter(s -> s.figureId().equals(p.figureId()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(what + " has no slot"));
        double startS = slot.startS();
        PatterRules rules = request.rules();
        if (p.kind() == RemarkKind.CALL) {
            assertThat(startS - p.endS())
                    .as(what + " ends before its figure")
                    .isBetween(rules.callEndsAtLeastBeforeS() - ROUNDING_S, rules.callEndsAtMostBeforeS() + ROUNDING_S);
            assertThat(startS - p.startS())
                    .as(what + " starts not too early")
                    .isLessThanOrEqualTo(rules.callStartsAtMostBeforeS() + ROUNDING_S);
        } else {
            Exhaustion.Own own = Exhaustion.Own.of(remark, slot);
            double earliestS = own.fromS() == null ? 0 : own.fromS();
            if (own.beginS() != null) {
                assertThat(p.startS())
                        .as(what + " begins before its moment is gone")
                        .isLessThanOrEqualTo(startS + own.beginS() + ROUNDING_S);
            }
            if (own.untilS() != null) {
                assertThat(p.endS()).as(what).isLessThanOrEqualTo(startS + own.untilS() + ROUNDING_S);
            }
            assertThat(p.startS()).as(what).isGreaterThanOrEqualTo(startS + earliestS - ROUNDING_S);
            assertThat(p.endS()).as(what).isLessThanOrEqualTo(slot.endS() + rules.runPastS() + ROUNDING_S);
            if (own.untilS() == null && own.beginS() == null) {
                double lengthS = p.endS() - p.startS();
                assertThat(p.endS())
                        .as(what + " is half said of what is still flown, or begins with its window")
                        .isLessThanOrEqualTo(
                                Math.max(slot.endS() + lengthS / 2, startS + earliestS + lengthS + 2 * rules.spareS())
                                        + ROUNDING_S);
            }
        }
        if (!remark.isTied() && remark.earliestS() != null) {
            assertThat(p.startS()).as(what).isGreaterThanOrEqualTo(startS + remark.earliestS() - ROUNDING_S);
        }
        if (!remark.isTied() && remark.latestS() != null) {
            assertThat(p.endS()).as(what).isLessThanOrEqualTo(startS + remark.latestS() + ROUNDING_S);
        }
    }

    private static void checkQuiets(String what, PlanRequest request, Placed p) {
        for (Slot slot : request.slots()) {
            for (Quiet quiet : slot.quiets()) {
                double fromS = slot.startS() + quiet.fromS();
                double toS = quiet.toS() == null ? slot.endS() : Math.min(slot.endS(), slot.startS() + quiet.toS());
                boolean clear = p.endS() <= fromS + 2 * ROUNDING_S || p.startS() >= toS - 2 * ROUNDING_S;
                assertThat(clear)
                        .as(what + " keeps quiet from " + fromS + " to " + toS)
                        .isTrue();
            }
        }
    }

    private static void checkWatched(String what, PlanRequest request, Remark remark, Placed p) {
        boolean tied = remark.at() != null || remark.until() != null;
        boolean mayCover = p.kind() == RemarkKind.CALL
                || p.kind() == RemarkKind.EXPLANATION
                || (tied && p.kind() != RemarkKind.FILLER);
        for (Slot slot : request.slots()) {
            for (Moment moment : slot.moments().moments()) {
                double atS = slot.startS() + moment.afterS();
                boolean clear = p.endS() <= atS - 0.5 + 2 * ROUNDING_S || p.startS() >= atS + 1.5 - 2 * ROUNDING_S;
                assertThat(clear || mayCover || !moment.worthWatching())
                        .as(what + " lets them watch " + moment)
                        .isTrue();
            }
        }
    }

    private static void checkOrder(String act, PlanRequest request, List<Placed> placed) {
        List<String> figures = request.slots().stream().map(Slot::figureId).toList();
        int last = -1;
        for (Placed p : placed) {
            boolean moves = p.figureId() != null && p.kind() != RemarkKind.FILLER;
            if (moves && figures.contains(p.figureId())) {
                assertThat(figures.indexOf(p.figureId()))
                        .as(act + ": order at " + p)
                        .isGreaterThanOrEqualTo(last);
                last = figures.indexOf(p.figureId());
            }
        }
    }

    private static void checkNothingLost(String act, PlanRequest request, Plan plan) {
        List<String> seen = new ArrayList<>();
        plan.placed().forEach(p -> seen.add(p.remarkId()));
        plan.unplaced().forEach(u -> seen.add(u.remarkId()));
        Set<String> wanted = new HashSet<>();
        request.candidates().forEach(c -> wanted.add(c.remark().id()));
        wanted.removeAll(request.alreadySaid());
        assertThat(seen).as(act).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(wanted);
        assertThat(plan.unplaced())
                .as(act)
                .allSatisfy(u -> assertThat(u.reason()).isNotBlank());
    }

    static Candidate candidate(PlanRequest request, String remarkId) {
        return request.candidates().stream()
                .filter(c -> c.remark().id().equals(remarkId))
                .findFirst()
                .orElseThrow();
    }

    /** What the plan is worth by the documented table. */
    static long worth(PlanRequest request, Plan plan) {
        long sum = 0;
        Speaking speaking = request.speaking();
        for (Placed p : plan.placed()) {
            boolean counts = p.kind() != RemarkKind.FILLER
                    && (speaking == null || !speaking.remarkId().equals(p.remarkId()));
            if (counts) {
                double weight = candidate(request, p.remarkId()).remark().weight();
                sum += Worth.of(p.kind(), weight, p.form(), Exhaustion.wasPlanned(request, p.remarkId(), p.form()));
            }
        }
        return sum;
    }
}
