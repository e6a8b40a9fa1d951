package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Another pilot flies the same acts in other circles, and another receiver tells of them late. */
@Tag("slow")
class OthersTest {
    private static final long SEED = 6102;

    private static Scenario scenario(String name) {
        return Scenario.byOthers().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** An aircraft that climbs at 20 m/s, told half a second late, and its height a quarter of a second later yet. */
    @Test
    void readingsComeLateAndHeightsLaterInSteps() {
        List<Reading> log = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            log.add(new Reading(0.2 * i, 12.0 * i, 3, 4.0 * i, 60.0, 0.0));
        }
        List<Reading> late = new LateHeights(0.5, 0.25, 10, 30).receive(log);
        Reading last = late.get(49);
        assertThat(last.tS()).isCloseTo(9.8 + 0.5, within(1e-9));
        assertThat(last.alongM()).isEqualTo(588);
        assertThat(last.heightM()).as("196 − 5 + 30 m").isCloseTo(220, within(1e-9));
        assertThat(late).allMatch(r -> Math.abs(Math.IEEEremainder(r.heightM(), 10)) < 1e-9);
    }

    @Test
    void noTwoReceiversAreLateAlike() {
        LateHeights one = LateHeights.drawn(new SplittableRandom(1));
        LateHeights other = LateHeights.drawn(new SplittableRandom(2));
        assertThat(one.lateS()).isBetween(0.2, 1.0).isNotEqualTo(other.lateS());
        assertThat(one.laterS()).isBetween(0.0, 0.7);
    }

    /** The solo's loop is planned with one load, so that its top is tight: geometry. Held at one radius it is rounder. */
    @Test
    void circlesAreOthersAndStayAboveTheGround() throws Exception {
        Display solo = FollowTrial.display("jackanapes-solo");
        Truth flight = scenario("another pilot").fly(solo, SEED);
        assertThat(flight.instants).allMatch(i -> i.place().z() > -5);
        assertThat(roundness(solo, flight))
                .isGreaterThan(
                        0.1 + roundness(solo, Scenario.inAHardSky().get(0).fly(solo, SEED)));
    }

    /** Lost after a figure was dropped, the follower was right for 23 % of this flight while it looked for none that it had forgotten. */
    @Test
    void figureThatWasForgottenIsFoundAgain() throws Exception {
        Display trainer = FollowTrial.display("arranged/pilot-two-old-trainer");
        Scenario dropped = scenario("another pilot, received late, one dropped");
        Truth truth = dropped.fly(trainer, 7780);
        Score score = new Score();
        score.count(truth, FollowTrial.follow(trainer, dropped, truth, dropped.receive(truth, 7780)));
        assertThat(score.rightShare()).isGreaterThan(0.7);
    }

    /** Radius of the loop's upper half as a share of that of its lower half. */
    private static double roundness(Display solo, Truth flight) {
        Truth.Flown loop = flight.flown.get(2);
        assertThat(solo.plan.name(loop.figure())).isEqualTo("loop");
        List<V3> moved = flight.instants.stream()
                .filter(i -> i.tS() >= loop.startS() && i.tS() <= loop.endS())
                .map(Truth.Instant::groundMps)
                .toList();
        double way = Math.signum(moved.get(0).x());
        double[] length = new double[2];
        double[] turned = new double[2];
        for (int i = 1; i < moved.size(); i++) {
            V3 v = moved.get(i);
            double rad = Math.acos(Math.min(1, v.unit().dot(moved.get(i - 1).unit())));
            int upper = v.x() * way < 0 ? 1 : 0;
            if (upper == 1 || Math.abs(v.z()) > 0.3 * v.length()) {
                length[upper] += v.length();
                turned[upper] += rad;
            }
        }
        return length[1] / turned[1] / (length[0] / turned[0]);
    }
}
