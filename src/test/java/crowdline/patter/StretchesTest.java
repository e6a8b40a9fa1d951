package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.request;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.patter.Starts.Stretch;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Stretches of time in ticks, tenths of a second: where a remark may begin, what is free, how long the plan is. */
class StretchesTest {
    private static final int NEVER = Tick.NEVER;

    private static Stretch stretch(int from, int to) {
        return new Stretch(from, to);
    }

    private static Starts starts() {
        // From 10 to 60, four long, clear of 20 to 30 by two: 10 to 14 and 32 to 60.
        return Starts.within(10, 60, 4, List.of(stretch(20, 30)), 2);
    }

    /** Every start between 0 and 100 that is held, counted one by one. */
    private static NavigableSet<Integer> held(Starts starts) {
        TreeSet<Integer> held = new TreeSet<>();
        for (int moment = 0; moment <= 100; moment++) {
            if (starts.holds(moment)) {
                held.add(moment);
            }
        }
        return held;
    }

    @Test
    void startsKeepClearOfWhatIsBlocked() {
        TreeSet<Integer> expected = new TreeSet<>();
        for (int moment = 10; moment <= 60; moment++) {
            if (moment + 4 + 2 <= 20 || moment >= 30 + 2) {
                expected.add(moment);
            }
        }
        assertThat(held(starts())).isEqualTo(expected);
        assertThat(starts().first()).isEqualTo(10);
        assertThat(starts().last()).isEqualTo(60);
    }

    @Test
    void earliestAndLatestAreTheNearestOnTheirSide() {
        for (int moment = 0; moment <= 100; moment++) {
            Integer after = held(starts()).ceiling(moment);
            Integer before = held(starts()).floor(moment);
            assertThat(starts().earliest(moment)).isEqualTo(after == null ? NEVER : after);
            assertThat(starts().latest(moment)).isEqualTo(before == null ? -NEVER : before);
        }
    }

    @Test
    void oneRangeIsSearchedAsManyAre() {
        Starts one = Starts.within(10, 12, 4, List.of(), 2);

        assertThat(held(one)).containsExactly(10, 11, 12);
        assertThat(one.earliest(13)).isEqualTo(NEVER);
        assertThat(one.latest(9)).isEqualTo(-NEVER);
        assertThat(one.latest(13)).isEqualTo(12);
    }

    @Test
    void oneMomentMoreIsHeldAsWell() {
        assertThat(held(starts().and(25))).isEqualTo(plus(held(starts()), 25));
        assertThat(held(starts().and(5))).isEqualTo(plus(held(starts()), 5));
        assertThat(starts().and(5).first()).isEqualTo(5);
        Starts same = starts();
        assertThat(same.and(12)).isSameAs(same);
    }

    private static NavigableSet<Integer> plus(NavigableSet<Integer> held, int more) {
        TreeSet<Integer> all = new TreeSet<>(held);
        all.add(more);
        return all;
    }

    @Test
    void windowTooShortForItsLengthHoldsNothing() {
        assertThat(Starts.within(10, 9, 4, List.of(), 0).isEmpty()).isTrue();
        assertThat(held(Starts.within(10, 10, 4, List.of(), 0))).containsExactly(10);
        assertThat(held(Starts.within(10, 20, 4, List.of(stretch(14, 20)), 0))).containsExactly(10, 20);
    }

    private static Horizon horizon(double nowS, Slot... slots) {
        return Horizon.of(request(nowS, List.of(slots), candidate("a", RemarkKind.FACT, null, 3)), null);
    }

    @Test
    void planLastsThreeSecondsPastTheLastFigureOrAMinuteWithoutOne() {
        assertThat(horizon(5, slot("loop", 10, 30), slot("roll", 30, 40)).end()).isEqualTo(430);
        assertThat(horizon(5).end()).isEqualTo(650);
        assertThat(horizon(50, slot("loop", 10, 30)).end()).isEqualTo(500);
    }

    @Test
    void nextRemarkWaitsForABreathAfterTheOneBeingSaid() {
        PlanRequest request = request(5, List.of(), candidate("a", RemarkKind.FACT, null, 3));
        Placed saying = new Placed("b", null, RemarkKind.FACT, RemarkForm.FULL, 3, 8, false);
        Placed over = new Placed("b", null, RemarkKind.FACT, RemarkForm.FULL, 1, 4.1, false);

        assertThat(Horizon.of(request, saying).freeFrom()).isEqualTo(86);
        assertThat(Horizon.of(request, over).freeFrom()).isEqualTo(50);
    }

    private static Quiet quiet(double fromS, @Nullable Double toS) {
        return new Quiet(fromS, toS, null);
    }

    @Test
    void quietsThatMeetAreOneAndNoneOutlastsItsFigure() {
        assertThat(horizon(0, slot("loop", 10, 30, quiet(4, 8.0), quiet(6, 10.0), quiet(15, null)))
                        .quiets())
                .containsExactly(stretch(140, 200), stretch(250, 300));
        assertThat(horizon(0, slot("loop", 10, 30, quiet(4, 8.0), quiet(8, 10.0)))
                        .quiets())
                .containsExactly(stretch(140, 200));
        assertThat(horizon(0, slot("loop", 10, 30, quiet(4, 12.0), quiet(5, 6.0)))
                        .quiets())
                .containsExactly(stretch(140, 220));
        assertThat(horizon(0, slot("loop", 10, 30, quiet(15, null), quiet(4, 8.0)))
                        .quiets())
                .as("in the order of time, however written")
                .containsExactly(stretch(140, 180), stretch(250, 300));
        assertThat(horizon(0, slot("loop", 10, 30, quiet(15, 90.0))).quiets()).containsExactly(stretch(250, 300));
        assertThat(horizon(0, slot("loop", 10, 30, quiet(25, 90.0))).quiets()).isEmpty();
    }

    @Test
    void gapsAreWhatIsLeftWithABreathAroundWhatIsTaken() {
        Horizon horizon = horizon(5, slot("loop", 10, 30, quiet(4, 8.0)));
        Gaps gaps = new Gaps(horizon, horizon.quiets(), 6);
        gaps.take(210, 240);

        assertThat(gaps.all()).containsExactly(stretch(50, 140), stretch(180, 204), stretch(246, 330));
        assertThat(gaps.within(100, 300)).containsExactly(stretch(100, 140), stretch(180, 204), stretch(246, 300));
        assertThat(gaps.longest(0, 1000)).isEqualTo(90);
        assertThat(gaps.longest(140, 180)).isZero();
        assertThat(gaps.within(150, 204)).containsExactly(stretch(180, 204));
    }

    private static Window window(RemarkKind kind, int length, @Nullable Double earliestS, @Nullable Double latestS) {
        Remark remark = new Remark("a", kind, "a", null, earliestS, latestS, 1, false);
        return Window.of(remark, length, slot("loop", 20, 32), PatterRules.DEFAULT);
    }

    /** A call ends one to two seconds before its figure and starts eight at most. */
    @Test
    void windowOfACallIsCountedFromItsEnd() {
        assertThat(window(RemarkKind.CALL, 30, null, null)).isEqualTo(new Window(150, 160, 5, 155, true));
        assertThat(window(RemarkKind.CALL, 65, null, null)).isEqualTo(new Window(120, 125, 5, 122, true));
        assertThat(window(RemarkKind.CALL, 30, -4.5, null)).isEqualTo(new Window(155, 160, 5, 157, true));
    }

    /** Between 1.4 and 1 s before its figure there are only 0.2 s to spare on either side. */
    @Test
    void windowOfACallSparesNoMoreThanHalfOfIt() {
        PatterRules narrow = new PatterRules(0.6, 1, 1.4, 8, 3, 0.5, 6, 2, 60);
        Remark remark = new Remark("a", RemarkKind.CALL, "a", null, null, null, 1, false);
        assertThat(Window.of(remark, 30, slot("loop", 20, 32), narrow)).isEqualTo(new Window(156, 160, 2, 158, true));
    }

    /** From the start of the figure until half of it, or three seconds, are past the end, half a second inside if it can. */
    @Test
    void windowOfAnotherRemarkIsItsFigure() {
        assertThat(window(RemarkKind.FACT, 50, null, null)).isEqualTo(new Window(200, 295, 5, 205, false));
        assertThat(window(RemarkKind.DUTY, 50, null, null)).isEqualTo(new Window(200, 295, 5, 205, true));
        assertThat(window(RemarkKind.FACT, 50, -3.0, 10.0)).isEqualTo(new Window(170, 250, 5, 175, true));
        assertThat(window(RemarkKind.FACT, 50, null, 15.0)).isEqualTo(new Window(200, 300, 5, 205, true));
        assertThat(window(RemarkKind.FACT, 50, null, 40.0)).isEqualTo(new Window(200, 300, 5, 205, false));
    }

    @Test
    void newRemarkLiesInsideItsWindowUnlessItMustBeSaid() {
        Horizon horizon = horizon(0, slot("loop", 20, 32));

        assertThat(window(RemarkKind.FACT, 50, null, null)
                        .forNewcomer(50, horizon, horizon.quiets())
                        .first())
                .isEqualTo(205);
        assertThat(window(RemarkKind.FACT, 50, null, null)
                        .forNewcomer(50, horizon, horizon.quiets())
                        .last())
                .isEqualTo(290);
        assertThat(window(RemarkKind.FACT, 150, null, null)
                        .forNewcomer(150, horizon, horizon.quiets())
                        .isEmpty())
                .isTrue();
        assertThat(window(RemarkKind.DUTY, 150, null, null)
                        .forNewcomer(150, horizon, horizon.quiets())
                        .first())
                .isEqualTo(200);
        assertThat(window(RemarkKind.FACT, 150, null, null)
                        .all(150, horizon, horizon.quiets())
                        .first())
                .isEqualTo(200);
    }

    @Test
    void whatFloatsMayBeginAtOnceAndEndsInsideThePlan() {
        Horizon horizon = horizon(3, slot("loop", 20, 32));
        Window free = Window.floating(RemarkKind.FACT, 50, horizon, PatterRules.DEFAULT);

        assertThat(free.forNewcomer(50, horizon, horizon.quiets()).first()).isEqualTo(30);
        assertThat(free.forNewcomer(50, horizon, horizon.quiets()).last()).isEqualTo(350 - 50 - 5);
        assertThat(free.wished()).isEqualTo(30);
        assertThat(free.insist()).isFalse();
        assertThat(Window.floating(RemarkKind.DUTY, 50, horizon, PatterRules.DEFAULT)
                        .insist())
                .isTrue();
    }
}
