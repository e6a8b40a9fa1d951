package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.telemetry.Reading;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ReadingCheckTest {
    private final ReadingCheck receiver = new ReadingCheck(120);
    private final SplittableRandom random = new SplittableRandom(8);

    private Reading level(double tS) {
        return new Reading(
                tS, 60 * tS + random.nextGaussian(), random.nextGaussian(), 300 + random.nextGaussian(), 60.0, 0.0);
    }

    private void levelUntil(double untilS) {
        for (double t = 0; t < untilS - 1e-6; t += 0.2) {
            assertThat(receiver.take(level(t))).isNotNull();
        }
    }

    @Test
    void repeatedPositionInFlightIsAFault() {
        levelUntil(3);
        Reading r = level(3);
        assertThat(receiver.take(r)).isNotNull();
        assertThat(receiver.take(new Reading(3.2, r.alongM(), r.awayM(), r.heightM(), 60.0, 0.0)))
                .isNull();
    }

    @Test
    void oneReadingFarAwayIsAFault() {
        levelUntil(3);
        assertThat(receiver.take(new Reading(3, 180 + 250, 0, 300, 60.0, 0.0))).isNull();
        assertThat(receiver.take(level(3.2))).isNotNull();
    }

    @Test
    void jumpThatStaysIsBelievedInTheEnd() {
        levelUntil(3);
        int refused = 0;
        for (double t = 3; t < 5; t += 0.2) {
            Reading r = level(t);
            refused +=
                    receiver.take(new Reading(t, r.alongM() + 250, r.awayM(), r.heightM(), 60.0, 0.0)) == null ? 1 : 0;
        }
        assertThat(refused).isBetween(1, 4);
    }

    @Test
    void lineReckonedToTheMillimetreIsAFault() {
        int taken = 0;
        for (int i = 0; i < 20; i++) {
            taken += receiver.take(new Reading(i * 0.2, 12.0 * i, 3, 300 + 2.0 * i, 60.0, 0.0)) == null ? 0 : 1;
        }
        assertThat(taken).isLessThan(6);
    }

    @Test
    void climbIsTheSlopeOfTheLastSecond() {
        @Nullable Seen seen = null;
        for (double t = 0; t < 3; t += 0.2) {
            seen = receiver.take(new Reading(t, 40 * t + 3 * t * t, 0, 300 + 10 * t, 40.0, 0.0));
        }
        assertThat(Objects.requireNonNull(seen).climbMps()).isBetween(9.99, 10.01);
    }
}
