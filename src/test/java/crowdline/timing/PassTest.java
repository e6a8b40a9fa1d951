package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.timing.Pass.How;
import crowdline.timing.Pass.TimedFigure;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PassTest {
    private static final Instant THEN = Instant.parse("2030-06-01T12:00:00Z");

    private final Pass pass = pass(How.BY_LOG, timed("loop", 100, 112), timed("roll", 114, 120));

    private static Pass pass(How how, TimedFigure... figures) {
        return Pass.of("p", "dawn", "full", how, THEN, List.of(figures));
    }

    private static TimedFigure timed(String id, double startS, double endS) {
        return new TimedFigure(id, startS, endS);
    }

    @Test
    void fromZeroMovesEveryFigureByTheStartOfTheFirst() {
        assertThat(pass.fromZero().figures()).containsExactly(timed("loop", 0, 12), timed("roll", 14, 20));
        assertThat(pass(How.LIVE).fromZero()).isEqualTo(pass(How.LIVE));
    }

    @Test
    void sameRunIsToldByItsMomentsWhoeverKeptIt() {
        Pass kept = new Pass("q", "dawn", "full", How.BY_LOG, THEN.plusSeconds(60), "calm", pass.figures(), false, 1);

        assertThat(pass.isSameRun(kept)).isTrue();
        assertThat(pass.isSameRun(pass(How.BY_LOG, timed("loop", 100.004, 111.996), timed("roll", 114, 120))))
                .isTrue();
    }

    @Test
    void anotherMomentFigureCountOrActIsAnotherRun() {
        assertThat(pass.isSameRun(pass(How.BY_LOG, timed("loop", 100.01, 112), timed("roll", 114, 120))))
                .isFalse();
        assertThat(pass.isSameRun(pass(How.BY_LOG, timed("loop", 100, 112.01), timed("roll", 114, 120))))
                .isFalse();
        assertThat(pass.isSameRun(pass(How.BY_LOG, timed("loop", 100, 112), timed("roll", 114, 119))))
                .isFalse();
        assertThat(pass.isSameRun(pass(How.BY_LOG, timed("loop", 100, 112), timed("spin", 114, 120))))
                .isFalse();
        assertThat(pass.isSameRun(pass(How.BY_LOG, timed("loop", 100, 112)))).isFalse();
        assertThat(pass.isSameRun(pass(How.LIVE, timed("loop", 100, 112), timed("roll", 114, 120))))
                .isFalse();
        assertThat(pass.isSameRun(Pass.of("p", "dusk", "full", How.BY_LOG, THEN, pass.figures())))
                .isFalse();
        assertThat(pass.isSameRun(Pass.of("p", "dawn", "flat", How.BY_LOG, THEN, pass.figures())))
                .isFalse();
    }

    /** The variance of a difference is the sum of both variances. */
    @Test
    void durationIsAsUncertainAsTwoMarksTogether() {
        double errorS = pass.withMarkErrorS(0.2).durationErrorS();

        assertThat(errorS * errorS).isCloseTo(0.04 + 0.04, within(1e-12));
    }

    /** Errors within 0.2 s in the median have 0.2 / 0.6745 = 0.30 s; a hand is as far off as people take to react. */
    @Test
    void marksAreAsGoodAsWhatMadeThem() {
        assertThat(How.BY_LOG.markErrorS()).isCloseTo(0.2 / 0.6745, within(0.005));
        assertThat(How.BY_HAND.markErrorS()).isCloseTo(0.231, within(0.02));
        assertThat(How.LIVE.markErrorS()).isEqualTo(How.BY_HAND.markErrorS());
        assertThat(pass.markErrorS()).isEqualTo(How.BY_LOG.markErrorS());
    }

    @ParameterizedTest
    @EnumSource(How.class)
    void onlyAPassThatWasFlownAndCountsTeaches(How how) {
        assertThat(pass(how).teaches()).isEqualTo(how != How.WALKED);
        assertThat(pass(how).counting(false).teaches()).isFalse();
    }

    @Test
    void figureMustEndAfterItStarts() {
        assertThatThrownBy(() -> timed("loop", 3, 3))
                .hasMessage("figure loop lasts from 3.0 to 3.0 s; its end must be after its start");
        assertThatThrownBy(() -> timed("loop", 0, Double.POSITIVE_INFINITY))
                .hasMessage("figure loop lasts from 0.0 to Infinity s; its end must be after its start");
    }

    @Test
    void passNeedsAnIdAndAnErrorThatIsANumber() {
        assertThatThrownBy(() -> Pass.of(" ", "dawn", "full", How.LIVE, THEN, List.of()))
                .hasMessage("the pass has no id; it needs one");
        assertThatThrownBy(() -> pass.withMarkErrorS(-0.1))
                .hasMessage("markErrorS of pass p is -0.1; it must be 0 or more");
        assertThat(pass.withMarkErrorS(0).durationErrorS()).isZero();
    }
}
