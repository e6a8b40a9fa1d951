package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LogDistanceTest {
    private final FollowPlan plan = Small.plan(50, 40);

    private List<Reading> log(double aside, double higher, double climbMps) {
        Bins bins = plan.bins;
        List<Reading> log = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            log.add(new Reading(
                    i,
                    bins.xM[30] + i - 30,
                    bins.yM[30] + aside,
                    bins.zM[30] + higher + climbMps * (i % 2),
                    null,
                    null));
        }
        return log;
    }

    @Test
    void logWithinTheActIsNoDistanceFromIt() {
        LogDistance none = LogDistance.of(plan, log(0, 0, 0));
        assertThat(none.asideM()).isZero();
        assertThat(none.heightM()).isZero();
        assertThat(none.steepShare()).isZero();
    }

    @Test
    void distanceIsCountedFromTheEdgeOfTheAct() {
        LogDistance far = LogDistance.of(plan, log(5000, 900, 0));
        assertThat(far.asideM()).isBetween(3000.0, 5000.0);
        assertThat(far.heightM()).isBetween(300.0, 900.0);
        assertThat(LogDistance.of(plan, log(0, -2000, 0)).heightM()).isNegative();
    }

    @Test
    void steepFlightIsCountedByTime() {
        assertThat(LogDistance.of(plan, log(0, 0, 40)).steepShare()).isCloseTo(1, within(0.01));
    }

    @Test
    void distanceIsSaidInOneSentence() {
        assertThat(new LogDistance(0, 0, 0.125, 0.5).words())
                .isEqualTo(
                        "The middle of the log lies within the act's space and at its heights; it climbs or dives steeply"
                                + " for 13% of its time, the act for 50%.");
        assertThat(new LogDistance(12_345.4, -310, 0, 0.5).words())
                .contains("12,345 m outside the act's space and 310 m below its heights;");
    }
}
