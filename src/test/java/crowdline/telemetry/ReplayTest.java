package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReplayTest {
    private final FlightLog log =
            new FlightLog(LogFormat.IGC, List.of(fix(100), fix(101), fix(103)), HeightKind.ELLIPSOID, List.of());

    @Test
    void fixesComeDueAsTheyWereFlown() {
        Replay replay = new Replay(log, 1);

        assertThat(replay.upTo(0)).containsExactly(fix(100));
        assertThat(replay.nextDueS()).hasValue(1);
        assertThat(replay.upTo(0.99)).isEmpty();
        assertThat(replay.upTo(3)).containsExactly(fix(101), fix(103));
        assertThat(replay.nextDueS()).isEmpty();
        assertThat(replay.upTo(100)).isEmpty();
    }

    @Test
    void fasterReplayKeepsTheReceiversOwnTimes() {
        Replay replay = new Replay(log, 10);

        assertThat(replay.upTo(0.3)).extracting(Fix::tS).containsExactly(100.0, 101.0, 103.0);
    }

    @Test
    void factorMustBeAboveZero() {
        assertThatThrownBy(() -> new Replay(log, 0)).hasMessage("factor is 0.0; it must be a number above 0");
    }

    private static Fix fix(double tS) {
        return new Fix(tS, null, 52, -1, 300, HeightKind.ELLIPSOID, null, null, FixQuality.UNSTATED);
    }
}
