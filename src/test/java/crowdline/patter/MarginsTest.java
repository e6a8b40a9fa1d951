package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.request;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarginsTest {
    private static PlanRequest loop(double likelyS, double wideS, Candidate... candidates) {
        Slot loop = new Slot("loop", 20, 20 + likelyS, 20 + likelyS, 20 + wideS, List.of());
        return request(0, List.of(loop), candidates);
    }

    private static boolean goodDay(PlanRequest request, String id) {
        Plan plan = new Planner().plan(request);
        Unplaced unplaced = plan.unplaced().stream()
                .filter(u -> u.remarkId().equals(id))
                .findFirst()
                .orElseThrow();
        return new Margins(request, plan).fitsOnAGoodDay(unplaced);
    }

    @Test
    void shortFormIsExplainedWithTheSecondsThere() {
        // The short form, 4 s, lies half a second inside its window, from 20.5 to 24.5 s; the other follows after a
        // breath of
        // 0.6 s, at 25.1 s. If that stays, 20 to 24.5 s are left, and behind it less.
        PlanRequest request = request(
                0,
                List.of(slot("loop", 20, 32)),
                candidate("what", RemarkKind.EXPLANATION, "loop", 9, 4),
                candidate("who", RemarkKind.FACT, "loop", 8));
        Plan plan = new Planner().plan(request);
        Placed what = plan.find("what").orElseThrow();
        assertThat(what.form()).isEqualTo(RemarkForm.SHORT);
        assertThat(new Margins(request, plan).whyShort(what))
                .contains("9.0 s needed, 4.5 s available; the short form fits");
        assertThat(new Margins(request, plan).whyShort(plan.find("who").orElseThrow()))
                .isEmpty();
    }

    @Test
    void remarkThatFitsTheWideEndOfItsFigureFitsOnAGoodDay() {
        // 10 s and 3 s past it hold no 14 s; 14 s and 3 s past it do.
        Candidate what = candidate("what", RemarkKind.EXPLANATION, "loop", 14);
        assertThat(goodDay(loop(10, 14, what), "what")).isTrue();
        assertThat(goodDay(loop(10, 11, what), "what")).isFalse();
    }

    @Test
    void callFitsOnAGoodDayOnlyIfTheFigureBeforeItIsLonger() {
        Slot roll = new Slot("roll", 0, 3, 3, 9, List.of());
        Slot loop = new Slot("loop", 3, 10, 10, 10, List.of());
        Candidate call = candidate("call", RemarkKind.CALL, "loop", 4);
        assertThat(goodDay(request(0, List.of(roll, loop), call), "call")).isTrue();
        Slot always = new Slot("roll", 0, 3, 3, 3, List.of());
        assertThat(goodDay(request(0, List.of(always, loop), call), "call")).isFalse();
    }

    @Test
    void callOfTheFirstFigureHasNoGoodDayNorHasAFigureThatIsNotAhead() {
        assertThat(goodDay(loop(10, 60, candidate("call", RemarkKind.CALL, "loop", 9)), "call"))
                .isFalse();
        assertThat(goodDay(loop(10, 60, candidate("what", RemarkKind.FACT, "spin", 9)), "what"))
                .isFalse();
    }

    /** Of the second figure, from 32 to 44 s; the fact there takes from 36.6 s on. */
    @Test
    void shortFormIsExplainedByTheRoomInItsOwnFigure() {
        PlanRequest request = request(
                0,
                List.of(slot("loop", 20, 32), slot("roll", 32, 44)),
                candidate("first", RemarkKind.EXPLANATION, "loop", 3),
                candidate("what", RemarkKind.EXPLANATION, "roll", 9, 4),
                candidate("who", RemarkKind.FACT, "roll", 8));
        Plan plan = new Planner().plan(request);
        assertThat(new Margins(request, plan).whyShort(plan.find("what").orElseThrow()))
                .contains("9.0 s needed, 4.5 s available; the short form fits");
        assertThat(new Margins(request, plan).whyShort(plan.find("first").orElseThrow()))
                .isEmpty();
    }

    @Test
    void remarkOfNoFigureHasNoGoodDay() {
        assertThat(goodDay(loop(10, 60, candidate("free", RemarkKind.FACT, null, 40)), "free"))
                .isFalse();
    }
}
