package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

    /** v² / r by g, as of any circle: 60 m/s round 200 m is 1.83 g. */
    @Test
    void pullToASideIsThatOfTheCircleFlown() {
        assertThat(Objects.requireNonNull(receiver.take(circle(0))).sidewaysG()).isNaN();
        Seen seen = null;
        for (double t = 0.2; t < 3; t += 0.2) {
            seen = receiver.take(circle(t));
        }
        assertThat(Objects.requireNonNull(seen).sidewaysG()).isCloseTo(60.0 * 60 / 200 / 9.80665, within(0.01));
        Reading untold = circle(3);
        Seen blind = receiver.take(new Reading(3, untold.alongM(), untold.awayM(), untold.heightM(), null, null));
        assertThat(Objects.requireNonNull(blind).sidewaysG()).isNaN();
    }

    @Test
    void straightAndEvenFlightIsSteadyAndNothingElse() {
        assertThat(Objects.requireNonNull(receiver.take(level(0))).steady()).isZero();
        double least = 1;
        for (double t = 0.2; t < 6; t += 0.2) {
            double steady = Objects.requireNonNull(receiver.take(level(t))).steady();
            least = t < 2.5 ? 1 : Math.min(least, steady);
        }
        assertThat(least).as("with noise in the height").isGreaterThan(0.5);
        ReadingCheck turns = new ReadingCheck(100);
        ReadingCheck pulls = new ReadingCheck(100);
        ReadingCheck slows = new ReadingCheck(100);
        Seen turned = null;
        Seen pulled = null;
        Seen slowed = null;
        for (double t = 0; t < 4; t += 0.2) {
            turned = turns.take(circle(t));
            pulled = pulls.take(new Reading(t, 60 * t, 0, 300 + 10 * t * t, 60.0, 0.0));
            slowed = slows.take(new Reading(t, 60 * t - 4 * t * t, 0, 300, 60 - 8 * t, 0.0));
        }
        assertThat(Objects.requireNonNull(turned).steady())
                .as("1.8 g to a side")
                .isLessThan(0.01);
        assertThat(Objects.requireNonNull(pulled).steady()).as("2 g upwards").isLessThan(0.1);
        assertThat(Objects.requireNonNull(slowed).steady())
                .as("0.8 g backwards")
                .isLessThan(0.1);
    }

    private static Reading circle(double tS) {
        double angle = 60.0 / 200 * tS;
        return new Reading(
                tS, 200 * Math.sin(angle), 200 * Math.cos(angle), 300, 60 * Math.cos(angle), -60 * Math.sin(angle));
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

    private static Reading at(double tS, double alongM, double heightM, @Nullable Double mps) {
        return new Reading(tS, alongM, 0, heightM, mps, mps == null ? null : 0.0);
    }

    @Test
    void readingThatIsNotLaterTellsNothing() {
        assertThat(receiver.take(level(1))).isNotNull();
        assertThat(receiver.take(level(1))).isNull();
        assertThat(receiver.take(level(0.8))).isNull();
        assertThat(receiver.lastAnyS()).isEqualTo(1);
        assertThat(receiver.take(level(1.2))).isNotNull();
    }

    @Test
    void faultIsHeardButDoesNotCount() {
        levelUntil(3);
        assertThat(receiver.take(at(3, 480, 300, 60.0))).isNull();
        assertThat(receiver.lastAnyS()).isEqualTo(3);
        assertThat(receiver.lastGoodS()).isCloseTo(2.8, within(1e-9));
    }

    /** Taxiing or waiting, it may well send one place twice; where no speed is told, only near the ground. */
    @Test
    void aircraftThatStandsStillMaySendOnePlaceTwice() {
        for (double mps : new double[] {0, 4}) {
            assertThat(twice(at(1, 50, 300, mps), at(1.2, 50, 300, mps))).isNotNull();
        }
        assertThat(twice(at(1, 50, 300, 4.1), at(1.2, 50, 300, 4.1))).isNull();
        assertThat(twice(at(1, 50, 30, null), at(1.2, 50, 30, null))).isNotNull();
        assertThat(twice(at(1, 50, 31, null), at(1.2, 50, 31, null))).isNull();
    }

    private static @Nullable Seen twice(Reading first, Reading second) {
        ReadingCheck check = new ReadingCheck(120);
        check.take(first);
        return check.take(second);
    }

    /** 25 m of noise and 120 m/s. */
    @Test
    void jumpIsFurtherThanTheFastestFliesAndNoiseExplains() {
        assertThat(twice(at(1, 0, 300, 60.0), at(2, 144, 300, 60.0))).isNotNull();
        assertThat(twice(at(1, 0, 300, 60.0), at(2, 146, 300, 60.0))).isNull();
        assertThat(twice(at(1, 0, 300, 60.0), at(2, 0, 446, 60.0)))
                .as("upwards too")
                .isNull();
        assertThat(twice(at(1, 0, 300, 60.0), at(10.5, 5000, 300, 60.0)))
                .as("in nine seconds")
                .isNull();
        assertThat(twice(at(1, 0, 300, 60.0), at(11, 5000, 300, 60.0)))
                .as("after ten it may be anywhere")
                .isNotNull();
    }

    @Test
    void speedsThatAreNotToldAreTheSlopeOfTheLastSecond() {
        @Nullable Seen seen = receiver.take(new Reading(0, 0, 0, 300, null, null));
        assertThat(Objects.requireNonNull(seen).hasSpeeds()).isFalse();
        assertThat(seen.hasClimb()).isFalse();
        assertThat(seen.newS()).as("news of two seconds at most").isEqualTo(2);
        for (double t = 0.2; t < 3; t += 0.2) {
            seen = receiver.take(new Reading(t, 40 * t + t * t, -5 * t + t * t, 300, null, null));
        }
        assertThat(Objects.requireNonNull(seen).alongMps()).isCloseTo(40 + 2 * 2.3, within(0.01));
        assertThat(seen.awayMps()).isCloseTo(-5 + 2 * 2.3, within(0.01));
        assertThat(seen.groundMps()).isEqualTo(Math.hypot(seen.alongMps(), seen.awayMps()));
        assertThat(seen.overS()).isCloseTo(1, within(1e-9));
        assertThat(seen.newS()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void afterASilenceNoClimbIsKnown() {
        levelUntil(3);
        Seen soon = Objects.requireNonNull(receiver.take(level(6)));
        assertThat(soon.overS()).as("of two readings 3.2 s apart").isCloseTo(3.2, within(1e-9));
        assertThat(soon.newS()).isEqualTo(2);
        Seen late = Objects.requireNonNull(receiver.take(level(9.3)));
        assertThat(late.overS()).isZero();
        assertThat(late.hasClimb()).isFalse();
        assertThat(late.hasSpeeds()).as("which were told").isTrue();
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
