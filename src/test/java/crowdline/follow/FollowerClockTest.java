package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What the follower makes of time, with few readings or none. */
class FollowerClockTest {
    private final FollowPlan plan = Small.plan(50, 40, 50, 40);
    private final SplittableRandom random = new SplittableRandom(3);

    @Test
    void askedTwiceAtOneMomentItSaysTheSame() {
        Follower follower = new Follower(plan);
        follower.start(100);
        FollowNow once = follower.tick(108);
        for (int i = 0; i < 50; i++) {
            follower.tick(108);
        }
        assertThat(follower.tick(108)).isEqualTo(once);
    }

    @Test
    void clockRunsAsFastAsTimeDoes() {
        Follower follower = new Follower(Small.plan(200, 50));
        double beganS = follower.start(0).phase() * 40;
        double tenthS = follower.tick(0.1).phase() * 40 - beganS;
        assertThat(tenthS).isBetween(0.05, 0.15);
    }

    /** A silence of half an hour is the longest that is caught up with; a quarter of an hour of act is none. */
    @Test
    void afterAQuarterOfAnHourItGoesOnSecondBySecond() {
        Follower follower = new Follower(plan);
        follower.start(0);
        follower.tick(950);
        follower.hand(950, 1);
        FollowNow now = follower.tick(952);
        assertThat(now.figureIndex()).isEqualTo(1);
        assertThat(now.phase() * 8).isCloseTo(2.6, within(0.3));
    }

    /** So late on the mean as a hand is, by a share that fades with its delay, and the middle of the bin. */
    @Test
    void figureTheHandStepsToBeganAsLongAgoAsAHandIsLate() {
        double sum = 0;
        double ago = 0;
        for (int k = 0; k < 12; k++) {
            double share = Math.exp(-k * 0.2 / 0.6);
            sum += share;
            ago += share * (k + 0.5) * 0.2;
        }
        Follower follower = new Follower(Small.plan(200, 50));
        assertThat(follower.hand(5, 0).phase() * 40).isCloseTo(ago / sum, within(0.002));
    }

    /** While one looks, a take-off may have come to its end, which brings it on by a little; what is to come shows the rest. */
    @Test
    void takeOffThatIsWatchedMayHaveEnded() {
        FollowPlan takeOff = Small.betweenTimed(600, 50, 50);
        Follower watched = new Follower(takeOff);
        Follower unwatched = new Follower(takeOff);
        watched.start(1000);
        unwatched.start(1000);
        for (double t = 1010; t < 1012; t += 0.2) {
            watched.reading(
                    new Reading(t, 60 * (t - 1010) + random.nextGaussian(), 0, 300 + random.nextGaussian(), 60.0, 0.0));
        }
        double ahead = watched.tick(1012).phase() - unwatched.tick(1012).phase();
        assertThat(ahead).isBetween(0.005, 0.05);
    }

    /** An end that nobody could have seen is not believed in. */
    @Test
    void takeOffThatNobodyWatchesTakesItsTime() {
        FollowPlan takeOff = Small.betweenTimed(600, 50, 50);
        Follower follower = new Follower(takeOff);
        follower.start(1000);
        follower.reading(new Reading(1001, -600, 0, 20, 60.0, 0.0));
        follower.reading(new Reading(1002, -540, 0, 30, 60.0, 0.0));
        FollowNow now = follower.tick(1080);
        assertThat(now.figureIndex()).isZero();
        assertThat(now.alternatives()).hasSize(1);
        assertThat(now.alternatives().get(0).chance()).isGreaterThan(0.95);
    }

    /** What was seen last of an aircraft that waits elsewhere holds while its receiver is silent. */
    @Test
    void actDoesNotBeginInASilenceThatFoundTheAircraftFarAway() {
        Follower follower = new Follower(plan);
        follower.tick(0);
        for (double t = 0.2; t < 10; t += 0.2) {
            follower.reading(new Reading(t, -7000 + 60 * t, 3000, 300 + random.nextGaussian(), 60.0, 0.0));
        }
        assertThat(follower.tick(70).state()).isEqualTo(FollowNow.State.BEFORE);
        assertThat(follower.tick(70).confidence()).isGreaterThan(0.8);
    }
}
