package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RecentEffortTest {
    private final RecentEffort recent = new RecentEffort();

    private @Nullable Effort straight(double fromS, double untilS, double alongMps, double upMps) {
        Effort effort = null;
        for (double t = fromS; t < untilS - 1e-6; t += 0.2) {
            effort = recent.add(t, alongMps, 0, upMps, 100);
        }
        return effort;
    }

    /** v² / r by g, as of any circle: 60 m/s round 200 m is 1.83 g. */
    @Test
    void bendIsThatOfTheCircleFlown() {
        Effort level = null;
        for (double t = 0; t < 8; t += 0.2) {
            level = recent.add(t, 60 * Math.cos(0.3 * t), 60 * Math.sin(0.3 * t), 0, 0);
        }
        assertThat(Objects.requireNonNull(level).bentG()).isCloseTo(60.0 * 60 / 200 / 9.80665, within(0.02));
        Effort upright = null;
        recent.clear();
        for (double t = 0; t < 8; t += 0.2) {
            upright = recent.add(t, 60 * Math.cos(0.3 * t), 0, 60 * Math.sin(0.3 * t), 0);
        }
        assertThat(Objects.requireNonNull(upright).bentG()).isCloseTo(60.0 * 60 / 200 / 9.80665, within(0.02));
        assertThat(upright.mps()).isCloseTo(60, within(1e-9));
    }

    @Test
    void whatGainsSpeedOnALineDoesNotBend() {
        Effort effort = null;
        for (double t = 0; t < 8; t += 0.2) {
            effort = recent.add(t, 20 + 6 * t, 0, -20 - 6 * t, 250);
        }
        assertThat(Objects.requireNonNull(effort).bentG()).isCloseTo(0, within(1e-6));
        assertThat(effort.climbMps()).as("down counts as up").isCloseTo(20 + 6 * 7.8, within(1e-9));
        assertThat(effort.awayM()).isCloseTo(250, within(1e-9));
    }

    @Test
    void saysNothingUntilItHasBeenWatchedNorAfterAGap() {
        assertThat(straight(0, 5, 50, 0)).isNull();
        assertThat(straight(5, 7, 50, 0)).isNotNull();
        assertThat(recent.add(9.5, 50, 0, 0, 100)).as("some missing").isNotNull();
        straight(9.6, 12.5, 50, 0);
        assertThat(recent.add(15.5, 50, 0, 0, 100)).as("missing for a while").isNull();
        assertThat(straight(15.6, 19, 50, 0)).isNull();
    }

    @Test
    void forgetsWhatIsLongerAgo() {
        straight(0, 7, 90, 20);
        assertThat(Objects.requireNonNull(straight(7, 12, 50, 0)).mps()).isGreaterThan(90);
        Effort later = Objects.requireNonNull(straight(12, 15, 50, 0));
        assertThat(later.mps()).isEqualTo(50);
        assertThat(later.climbMps()).isZero();
        assertThat(later.bentG()).isZero();
    }
}
