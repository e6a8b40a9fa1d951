package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A stall turn of 20 s from 10 s on: straight up after 3 s, the pivot after 11 s, the pull out after 15 s. */
class TiedRemarkTest {
    private static final MomentName UP = MomentName.first(MomentKind.STRAIGHT_UP);
    private static final MomentName PIVOT = MomentName.first(MomentKind.PIVOTS);
    private static final MomentName OUT = MomentName.first(MomentKind.PULLS_OUT);
    private static final FigureMoments SEEN = new FigureMoments(List.of(
            new Moment(MomentName.first(MomentKind.BEGINS), 0, false),
            new Moment(UP, 3, false),
            new Moment(PIVOT, 11, true),
            new Moment(OUT, 15, false),
            new Moment(MomentName.first(MomentKind.FLIES_OUT), 20, false)));

    private static Slot turn(double lastsS) {
        return Slot.of(new FigureTime("turn", 10, lastsS, lastsS, lastsS, SEEN), List.of());
    }

    private static Candidate tied(
            String id,
            RemarkKind kind,
            double lastsS,
            @Nullable MomentName at,
            @Nullable MomentName until,
            @Nullable Double earliestS,
            @Nullable Double latestS) {
        Remark remark = new Remark(id, kind, id, null, at, until, earliestS, latestS, 1, false, false);
        return new Candidate(remark, "turn", SpokenLength.of(lastsS), null);
    }

    private static Plan plan(Slot slot, Candidate... candidates) {
        return plan(0, slot, Optional.empty(), candidates);
    }

    private static Plan plan(double nowS, Slot slot, Optional<Plan> before, Candidate... candidates) {
        return new Planner()
                .plan(new PlanRequest(
                        nowS, List.of(slot), List.of(candidates), Set.of(), before, null, PatterRules.DEFAULT));
    }

    private static double start(Plan plan, String id) {
        return plan.find(id).orElseThrow().startS();
    }

    @Test
    void whatExplainsAMomentIsSaidAtIt() {
        Plan plan = plan(turn(20), tied("why", RemarkKind.EXPLANATION, 3, PIVOT, null, null, null));
        assertThat(start(plan, "why")).isCloseTo(21, within(1e-9));
    }

    @Test
    void itsOwnTimesCountFromTheMoment() {
        Plan plan = plan(turn(20), tied("look", RemarkKind.EXPLANATION, 2, PIVOT, null, -4.0, -1.0));
        assertThat(start(plan, "look")).isBetween(17.0, 18.0);
    }

    @Test
    void itLiesBetweenTwoMoments() {
        Plan plan = plan(turn(20), tied("while", RemarkKind.EXPLANATION, 7, UP, PIVOT, null, null));
        Placed placed = plan.find("while").orElseThrow();
        assertThat(placed.startS()).isGreaterThanOrEqualTo(12.5);
        assertThat(placed.endS()).isLessThanOrEqualTo(21);
        assertThat(plan(turn(20), tied("while", RemarkKind.EXPLANATION, 9, UP, PIVOT, null, null))
                        .unplaced())
                .singleElement()
                .satisfies(u -> assertThat(u.why()).isEqualTo(Unplaced.Why.TOO_LONG));
    }

    @Test
    void inAFigureThatTakesLongerTheMomentComesLater() {
        Plan plan = plan(turn(30), tied("why", RemarkKind.EXPLANATION, 3, PIVOT, null, null, null));
        assertThat(start(plan, "why")).isCloseTo(10 + 11 * 1.5, within(0.05 + 1e-9));
    }

    @Test
    void whatIsOnTheScreenFollowsItsMoment() {
        Candidate why = tied("why", RemarkKind.EXPLANATION, 3, PIVOT, null, null, null);
        Plan before = plan(turn(20), why);
        Plan later = plan(12, turn(30), Optional.of(before), why);
        assertThat(start(later, "why")).isBetween(26.0, 28.5);
    }

    @Test
    void onceTheMomentIsGoneItIsNotSaidAnyMore() {
        Candidate why = tied("why", RemarkKind.EXPLANATION, 3, PIVOT, null, null, null);
        assertThat(start(plan(22.9, turn(20), Optional.empty(), why), "why")).isCloseTo(22.9, within(0.11));
        assertThat(plan(23.2, turn(20), Optional.empty(), why).find("why")).isEmpty();
    }

    @Test
    void noDutyFactOrFillerCoversWhatIsWorthWatching() {
        for (RemarkKind kind : List.of(RemarkKind.DUTY, RemarkKind.FACT, RemarkKind.FILLER)) {
            for (double lastsS = 2; lastsS < 12; lastsS += 0.7) {
                for (String figure : new String[] {"turn", null}) {
                    Candidate one = new Candidate(Remark.of("it", kind, "it"), figure, SpokenLength.of(lastsS), null);
                    plan(9, turn(20), Optional.empty(), one)
                            .find("it")
                            .ifPresent(p -> assertThat(p.endS() <= 20.5 + 1e-6 || p.startS() >= 22.5 - 1e-6)
                                    .as("%s", p)
                                    .isTrue());
                }
            }
        }
    }

    @Test
    void whatIsTiedToAMomentMayBeSaidOverItAndSoMayAnExplanation() {
        Plan plan = plan(turn(20), tied("fact", RemarkKind.FACT, 4, PIVOT, null, null, null));
        assertThat(start(plan, "fact")).isCloseTo(21, within(1e-9));
        Candidate explains =
                new Candidate(Remark.of("long", RemarkKind.EXPLANATION, "it"), "turn", SpokenLength.of(18), null);
        assertThat(plan(turn(20), explains).find("long")).isPresent();
    }

    @Test
    void whatLeavesNoRoomBesideTheMomentSaysSo() {
        Candidate duty = new Candidate(Remark.of("thanks", RemarkKind.DUTY, "it"), null, SpokenLength.of(13), null);
        Unplaced unplaced = plan(9, turn(20), Optional.empty(), duty).unplaced().get(0);
        assertThat(unplaced.reason()).isEqualTo("13.0 s needed, 11.5 s beside what is worth watching");
    }

    @Test
    void whatIsTiedComesInTheOrderOfItsMomentsHoweverItIsWritten() {
        Plan plan = plan(
                turn(20),
                tied("out", RemarkKind.EXPLANATION, 2, OUT, null, null, null),
                tied("pivot", RemarkKind.EXPLANATION, 2, PIVOT, null, null, null),
                tied("up", RemarkKind.EXPLANATION, 2, UP, null, null, null));
        assertThat(plan.placed().stream().map(Placed::remarkId)).containsExactly("up", "pivot", "out");
    }

    @Test
    void tiedToAMomentThatIsNotThereItGoesByTheRuleOfItsKind() {
        MomentName spin = MomentName.first(MomentKind.SPIN_BEGINS);
        Plan tied = plan(turn(20), tied("why", RemarkKind.EXPLANATION, 3, spin, null, -30.0, null));
        Plan untied = plan(turn(20), tied("why", RemarkKind.EXPLANATION, 3, null, null, null, null));
        assertThat(start(tied, "why")).isEqualTo(start(untied, "why"));
    }

    @Test
    void aCallComesBeforeItsFigureWhateverItIsTiedTo() {
        Plan plan = plan(turn(20), tied("call", RemarkKind.CALL, 2, PIVOT, null, null, null));
        assertThat(plan.find("call").orElseThrow().endS()).isBetween(8.0, 9.0);
    }
}
