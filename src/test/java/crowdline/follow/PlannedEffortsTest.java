package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import org.junit.jupiter.api.Test;

/** Ten seconds of the plan at one speed lead into ten at another; the usual speed is 60 m/s. */
class PlannedEffortsTest {
    private static PlannedEfforts flown(double beforeMps, double afterMps) {
        return new PlannedEfforts(Small.kink(new Vec(beforeMps, 0, 0), new Vec(afterMps, 0, 0)).bins, 60);
    }

    private static Effort seen(double mps, double bentG, double climbMps, double awayM) {
        return new Effort(mps, bentG, climbMps, awayM);
    }

    @Test
    void whatThePlanNeverDoesIsALanding() {
        assertThat(flown(60, 60).landsRatherThan(seen(36, 0.8, 3, 0))).isCloseTo(101, within(1.0));
    }

    /** A glider's last pass is as slow as its circuit. */
    @Test
    void whatThePlanDoesTooSaysLittle() {
        PlannedEfforts slowToo = flown(30, 90);
        assertThat(slowToo.landsRatherThan(seen(36, 0.8, 3, 0))).isBetween(2.5, 5.0);
        assertThat(slowToo.landsRatherThan(seen(36, 0.8, 3, 500)))
                .as("far from the display line")
                .isCloseTo(101, within(1.0));
    }

    @Test
    void onlyWhatIsGentleIsALanding() {
        PlannedEfforts efforts = flown(60, 60);
        assertThat(efforts.landsRatherThan(seen(36, 1.8, 3, 0)))
                .as("60° of bank")
                .isCloseTo(1, within(0.2));
        assertThat(efforts.landsRatherThan(seen(36, 0.8, 18, 0)))
                .as("sinking fast")
                .isCloseTo(1, within(0.2));
        assertThat(efforts.landsRatherThan(seen(66, 0.8, 3, 0)))
                .as("as fast as figures")
                .isCloseTo(1, within(0.2));
    }

    /** Ways are flown wherever they lead: a turn back far out is no landing. */
    @Test
    void aWayIsAsGentleFarFromTheDisplayLine() throws Exception {
        PlannedEfforts jet = new PlannedEfforts(FollowTrial.display("arranged/pilot-three-jet-trainer").plan.bins, 500);

        assertThat(jet.landsRatherThan(seen(150, 1.1, 15, 5000))).isLessThan(15);
        assertThat(new PlannedEfforts(Small.kink(new Vec(150, 0, 0), new Vec(150, 0, 0)).bins, 500)
                        .landsRatherThan(seen(150, 1.1, 15, 5000)))
                .as("with no way")
                .isGreaterThan(50);
    }

    @Test
    void nothingPlannedSaysNothing() {
        PlannedEfforts timed = new PlannedEfforts(Small.betweenTimed(50, 10, 50).bins, 60);
        assertThat(timed.landsRatherThan(seen(36, 0.8, 3, 0))).isEqualTo(1);
    }
}
