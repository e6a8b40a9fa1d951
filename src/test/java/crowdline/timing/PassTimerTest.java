package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class PassTimerTest {
    private static final Instant THEN = Instant.parse("2030-06-01T12:00:00Z");

    private final PassTimer fresh = PassTimer.of(List.of("a", "b", "c"));

    @Test
    void everyKeyEndsOneFigureAndBeginsTheNext() {
        PassTimer over = fresh.next(100).next(112).next(118).next(125);
        assertThat(over.over()).isTrue();
        assertThat(figures(over)).containsExactly(timed("a", 0, 12), timed("b", 12, 18), timed("c", 18, 25));
    }

    @Test
    void droppedFigureIsPassedOver() {
        PassTimer timer = fresh.next(0).drop();
        assertThat(timer.upcoming()).contains("c");
        assertThat(figures(timer.next(10).next(20))).containsExactly(timed("a", 0, 10), timed("c", 10, 20));
    }

    @Test
    void goingBackTakesTheLastKeyBack() {
        PassTimer early = fresh.next(0).next(4);
        assertThat(early.current()).contains("b");
        assertThat(early.back().current()).contains("a");
        assertThat(figures(early.back().next(10).end(15))).containsExactly(timed("a", 0, 10), timed("b", 10, 15));
        assertThat(fresh.next(0).drop().back().upcoming()).contains("b");
        assertThat(fresh.back()).isEqualTo(fresh);
    }

    @Test
    void endKeepsWhatWasTimed() {
        PassTimer over = fresh.next(5).end(9);
        assertThat(over.over()).isTrue();
        assertThat(over.current()).isEmpty();
        assertThat(figures(over)).containsExactly(timed("a", 0, 4));
        assertThat(over.next(20)).isEqualTo(over);
        assertThat(fresh.end(3)).isEqualTo(fresh);
    }

    @Test
    void keyThatBouncesChangesNothing() {
        PassTimer timer = fresh.next(5);
        assertThat(timer.next(5)).isEqualTo(timer);
        assertThat(timer.next(4)).isEqualTo(timer);
        assertThat(timer.next(Double.NaN)).isEqualTo(timer);
    }

    @Test
    void withEveryFigureDroppedThereIsNothingToTime() {
        PassTimer none = fresh.drop().drop().drop().drop();
        assertThat(none.upcoming()).isEmpty();
        assertThat(none.next(3).over()).isTrue();
        assertThat(figures(none.next(3))).isEmpty();
    }

    @Test
    void walkedPassSaysSo() {
        Pass pass = fresh.next(0).next(3).pass("w", "dawn", "full", Pass.How.WALKED, THEN);
        assertThat(pass.how()).isEqualTo(Pass.How.WALKED);
        assertThat(pass.teaches()).isFalse();
    }

    private static List<Pass.TimedFigure> figures(PassTimer timer) {
        return timer.pass("p", "dawn", "full", Pass.How.BY_HAND, THEN).figures();
    }

    private static Pass.TimedFigure timed(String id, double startS, double endS) {
        return new Pass.TimedFigure(id, startS, endS);
    }
}
