package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FollowerTest {
    private final FollowPlan plan = Small.plan(50, 40, 50, 40);
    private final SplittableRandom random = new SplittableRandom(3);

    /** A reading of the plan flown to the second, with a metre of noise. */
    private Reading asPlanned(double tS) {
        int bin = (int) Math.min(tS / Bins.WIDTH_S, plan.bins.size - 1);
        double within = tS - (bin + 0.5) * Bins.WIDTH_S;
        return new Reading(
                tS,
                plan.bins.xM[bin] + within * plan.bins.vxMps[bin] + random.nextGaussian(),
                random.nextGaussian(),
                plan.bins.zM[bin] + within * plan.bins.vzMps[bin] + random.nextGaussian(),
                60.0,
                0.0);
    }

    private FollowNow followed(Follower follower, double untilS) {
        FollowNow now = follower.start(0);
        for (double t = 0.2; t <= untilS; t += 0.2) {
            now = follower.reading(asPlanned(t));
        }
        return now;
    }

    @Test
    void beforeAnythingIsToldItIsBeforeTheAct() {
        assertThat(new Follower(plan).tick(0).state()).isEqualTo(FollowNow.State.BEFORE);
        assertThat(new Follower(plan).tick(0).figureIndex()).isEqualTo(-1);
    }

    /** As it was, a flight off the plan ended in "before the act" for as long as it went on. */
    @Test
    void onceAFigureWasFlownThereIsNoBefore() {
        Follower follower = new Follower(plan);
        for (double t = 0.2; t < 10; t += 0.2) {
            follower.reading(asPlanned(t));
        }
        for (double t = 10; t < 200; t += 0.2) {
            Reading away = new Reading(t, 3000 + random.nextGaussian(), 2000 - 25 * t, 200, 0.0, -25.0);
            assertThat(follower.reading(away).state()).as("at %.1f s", t).isNotEqualTo(FollowNow.State.BEFORE);
        }
    }

    @Test
    void clockAloneGoesThroughTheFigures() {
        Follower follower = new Follower(plan);
        follower.start(100);
        assertThat(follower.tick(105).figureIndex()).isZero();
        assertThat(follower.tick(114).figureIndex()).isEqualTo(1);
        assertThat(follower.tick(123).figureIndex()).isEqualTo(2);
    }

    @Test
    void flightAsPlannedIsFollowed() {
        FollowNow now = followed(new Follower(plan), 14);
        assertThat(now.state()).isEqualTo(FollowNow.State.ON_PLAN);
        assertThat(now.figureIndex()).isEqualTo(1);
        assertThat(now.confidence()).isGreaterThanOrEqualTo(FollowNow.SURE);
        assertThat(now.phase()).isBetween(0.35, 0.65);
    }

    @Test
    void frozenReceiverMakesItUnsure() {
        Follower follower = new Follower(plan);
        followed(follower, 14);
        Reading stuck = asPlanned(14.2);
        FollowNow now = follower.reading(stuck);
        for (double t = 14.4; t < 18; t += 0.2) {
            now = follower.reading(new Reading(t, stuck.alongM(), stuck.awayM(), stuck.heightM(), 60.0, 0.0));
        }
        assertThat(now.state()).isEqualTo(FollowNow.State.UNSURE);
        assertThat(now.confidence()).isLessThan(0.9);
        assertThat(now.silentS()).isGreaterThan(3);
    }

    @Test
    void handStepWins() {
        Follower follower = new Follower(plan);
        followed(follower, 5);
        FollowNow now = follower.hand(5, 2);
        assertThat(now.figureIndex()).isEqualTo(2);
        assertThat(follower.reading(asPlanned(5.2)).figureIndex()).isEqualTo(2);
    }

    /** After a figure was dropped, the next one may be flown the other way along the axis. */
    @Test
    void figureTheHandStepsToMayBeFlownTheOtherWay() {
        Follower follower = new Follower(plan);
        FollowNow now = followed(follower, 5);
        follower.hand(5, 2);
        double begins = plan.bins.first[2] * Bins.WIDTH_S;
        for (double t = 5.2; t < 10; t += 0.2) {
            Reading planned = asPlanned(begins + t - 5);
            now = follower.reading(new Reading(t, -planned.alongM(), planned.awayM(), planned.heightM(), -60.0, 0.0));
        }
        assertThat(now.state()).isEqualTo(FollowNow.State.ON_PLAN);
        assertThat(now.figureIndex()).isEqualTo(2);
        assertThat(now.confidence()).isGreaterThan(0.8);
    }

    /** It circles seven kilometres away, as fast and as high as it will begin. */
    @Test
    void actDoesNotBeginFarFromItsPlace() {
        Follower follower = new Follower(plan);
        FollowNow now = follower.tick(0);
        for (double t = 0.2; t < 120; t += 0.2) {
            double turn = 60 * t / 900;
            now = follower.reading(new Reading(
                    t,
                    -7000 + 900 * Math.sin(turn) + random.nextGaussian(),
                    3000 - 900 * Math.cos(turn),
                    300 + random.nextGaussian(),
                    60 * Math.cos(turn),
                    60 * Math.sin(turn)));
        }
        assertThat(now.state()).isEqualTo(FollowNow.State.BEFORE);
    }

    /** Nothing is sure in its first four seconds, but what the hand says. */
    @Test
    void whatTheHandSaysIsSureAtOnce() {
        Follower follower = new Follower(plan);
        followed(follower, 5);
        double begins = plan.bins.first[2] * Bins.WIDTH_S;
        FollowNow now = follower.hand(5, 2);
        for (double t = 5.2; t < 8; t += 0.2) {
            Reading planned = asPlanned(begins + t - 5);
            now = follower.reading(new Reading(t, planned.alongM(), planned.awayM(), planned.heightM(), 60.0, 0.0));
        }
        assertThat(now.figureIndex()).isEqualTo(2);
        assertThat(now.confidence()).isGreaterThan(FollowNow.SURE);
    }

    /** The path of one figure after another from a moment on, to two seconds before the end of the last. */
    private FollowNow flown(Follower follower, double fromS, int... figures) {
        FollowNow now = follower.tick(fromS);
        double begunS = fromS;
        for (int figure : figures) {
            double startS = plan.bins.first[figure] * Bins.WIDTH_S;
            double endS = plan.bins.first[figure + 1] * Bins.WIDTH_S;
            double lastS = figure == figures[figures.length - 1] ? 2 : 0;
            for (double t = 0.2; t < endS - startS - lastS; t += 0.2) {
                Reading planned = asPlanned(startS + t);
                now = follower.reading(
                        new Reading(begunS + t, planned.alongM(), planned.awayM(), planned.heightM(), 60.0, 0.0));
            }
            begunS += endS - startS;
        }
        return now;
    }

    @Test
    void figuresPassedOverMakeItUnsureUnlessThatWasTold() {
        Follower surprised = new Follower(plan);
        surprised.start(0);
        FollowNow after = flown(surprised, 0, 0, 3);
        assertThat(after.figureIndex()).isEqualTo(3);
        assertThat(after.confidence()).isEqualTo(FollowNow.SURE);

        Follower told = new Follower(plan);
        told.told(List.of(0, 3));
        told.start(0);
        FollowNow expected = flown(told, 0, 0, 3);
        assertThat(expected.figureIndex()).isEqualTo(3);
        assertThat(expected.confidence()).isGreaterThan(FollowNow.SURE);
    }

    @Test
    void clockAloneGoesByTheOrderThatWasTold() {
        Follower follower = new Follower(plan);
        follower.told(List.of(0, 2, 1, 3));
        follower.start(0);
        assertThat(follower.tick(14).figureIndex()).isEqualTo(2);
        assertThat(follower.tick(24).figureIndex()).isEqualTo(1);
    }

    /** Two were swapped and nobody said so; what was flown does not come again. */
    @Test
    void afterASwapTheClockGoesOnWithWhatIsLeft() {
        Follower follower = new Follower(plan);
        follower.start(0);
        assertThat(flown(follower, 0, 0, 2, 1).figureIndex()).isEqualTo(1);
        assertThat(follower.tick(33).figureIndex()).isEqualTo(3);
    }

    @Test
    void whatFollowsAStepBackByHandIsStillToBeFlown() {
        Follower follower = new Follower(plan);
        follower.start(0);
        assertThat(flown(follower, 0, 0, 1, 2).figureIndex()).isEqualTo(2);
        follower.hand(28, 1);
        assertThat(follower.tick(40).figureIndex()).isEqualTo(2);
    }

    @Test
    void aircraftOffThePlanMakesItUnsureOfWhatComesAfter() {
        Follower follower = new Follower(plan);
        follower.start(0);
        flown(follower, 0, 0);
        FollowNow now = follower.tick(10);
        for (double t = 10.2; t < 30; t += 0.2) {
            double turn = (t - 10) * 0.5;
            now = follower.reading(new Reading(
                    t,
                    120 * Math.sin(turn) + random.nextGaussian(),
                    600 + 120 * (1 - Math.cos(turn)),
                    700 + 40 * Math.sin(2 * turn),
                    60 * Math.cos(turn),
                    60 * Math.sin(turn)));
        }
        assertThat(now.state()).isEqualTo(FollowNow.State.OFF_PLAN);
        assertThat(flown(follower, 30, 1).confidence()).isLessThanOrEqualTo(FollowNow.SURE);
    }

    /** After a night with the lid closed half an hour is caught up with, and the act is over. */
    @Test
    void longSilenceIsNotCaughtUpWithForEver() {
        Follower follower = new Follower(plan);
        follower.start(0);
        FollowNow now = follower.tick(40_000_000);
        assertThat(now.state()).isEqualTo(FollowNow.State.AFTER);
        assertThat(follower.tick(40_000_001).tS()).isEqualTo(40_000_001);
    }

    @Test
    void receiverIsSilentTwoAndAHalfSecondsAfterItsLastReading() {
        Follower follower = new Follower(plan);
        followed(follower, 6.05);
        assertThat(follower.tick(8.4).state()).isEqualTo(FollowNow.State.ON_PLAN);
        assertThat(follower.tick(8.7).state()).isEqualTo(FollowNow.State.UNSURE);
        assertThat(follower.tick(8.7).silentS()).isCloseTo(2.7, within(1e-6));
    }

    /** A hand is late more often than early. */
    @Test
    void figureMayHaveBegunAMomentBeforeTheHand() {
        Follower follower = new Follower(plan);
        follower.start(0);
        double phase = follower.hand(5, 2).phase();
        assertThat(phase * plan.plannedS(2)).isBetween(0.4, 1.0);
    }

    /** In two minutes one figure in five would be. */
    @Test
    void takeOffThatWasToldIsNotBrokenOff() {
        Follower follower = new Follower(Small.betweenTimed(3000, 50, 50));
        follower.start(0);
        assertThat(follower.tick(120).confidence()).isGreaterThan(0.97);
    }

    @Test
    void flightThatEndsOffThePlanIsOverOnTheGround() {
        Follower follower = new Follower(plan);
        followed(follower, 5);
        FollowNow now = follower.tick(5.1);
        for (double t = 5.2; t < 40; t += 0.2) {
            now = follower.reading(
                    new Reading(t, -300 + 30 * (t - 5), 20 * (t - 5), Math.max(0, 300 - 15 * (t - 5)), 30.0, 20.0));
        }
        assertThat(now.state()).isEqualTo(FollowNow.State.OFF_PLAN);
        for (double t = 40; t < 70; t += 0.2) {
            now = follower.reading(new Reading(t, 750 + 2 * (t - 40) + random.nextGaussian(), 700, 0, 2.0, 0.0));
        }
        assertThat(now.state()).isEqualTo(FollowNow.State.AFTER);
    }

    /** Whatever a reading says for and against, all chances together are one. */
    @Test
    void chancesAddUpToOneAfterEveryReading() {
        Follower follower = new Follower(plan);
        followed(follower, 9);
        for (double t = 9.2; t < 13; t += 0.2) {
            Reading planned = asPlanned(t);
            double lowM = t < 11 ? 40 : 0;
            FollowNow now = follower.reading(
                    new Reading(t, planned.alongM(), planned.awayM(), planned.heightM() - lowM, 60.0, 0.0));
            double all = now.alternatives().stream()
                    .mapToDouble(FollowNow.Candidate::chance)
                    .sum();
            assertThat(all).as("at %.1f s", t).isBetween(0.8, 1.001);
        }
    }

    @Test
    void readingIsHeardInTheAnswerToIt() {
        Follower told = new Follower(plan);
        Follower alone = new Follower(plan);
        followed(told, 9);
        random.nextInt();
        FollowerTest again = new FollowerTest();
        again.followed(alone, 9);
        // Climbing well before its time.
        Reading early = new Reading(9.2, plan.bins.xM[46], 0, plan.bins.zM[46] + 40, 60.0, 0.0);
        double before = alone.tick(9.2).alternatives().get(0).chance();
        assertThat(told.reading(early).alternatives().get(0).chance()).isNotCloseTo(before, within(1e-4));
    }

    @Test
    void silentForExactlyTwoAndAHalfSecondsIsNotYetSilent() {
        Follower follower = new Follower(plan);
        follower.start(0);
        for (double t = 0.25; t <= 6; t += 0.25) {
            follower.reading(asPlanned(t));
        }
        assertThat(follower.tick(8.5).state()).isEqualTo(FollowNow.State.ON_PLAN);
        assertThat(follower.tick(8.5625).state()).isEqualTo(FollowNow.State.UNSURE);
    }

    /** Seconds count from when the figure was first seen, on whichever scale the readings are. */
    @Test
    void figureTheClockCameToIsSureFourSecondsAfterItBegan() {
        Follower follower = new Follower(plan);
        follower.start(1000);
        assertThat(follower.tick(1011.5).figureIndex()).isEqualTo(1);
        double sureS = 0;
        for (double t = 11.6; t < 16 && sureS == 0; t += 0.1) {
            Reading r = asPlanned(t);
            FollowNow now = follower.reading(new Reading(1000 + t, r.alongM(), r.awayM(), r.heightM(), 60.0, 0.0));
            sureS = now.confidence() > FollowNow.SURE ? t : 0;
        }
        assertThat(sureS).isBetween(14.0, 15.5);
    }

    @Test
    void sameReadingsGiveTheSameAnswers() {
        FollowNow first = followed(new Follower(plan), 16);
        random.nextInt();
        FollowerTest again = new FollowerTest();
        assertThat(again.followed(new Follower(again.plan), 16)).isEqualTo(first);
    }

    @Test
    void figureThatIsNotThereIsRefused() {
        Follower follower = new Follower(plan);
        assertThatThrownBy(() -> follower.hand(0, 4)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
