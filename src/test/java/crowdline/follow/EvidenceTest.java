package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** A take-off, a figure of which the path is known, and a landing. Everything but the one thing looked at is the same. */
class EvidenceTest {
    private static final double NAN = Double.NaN;

    private final Bins bins = Small.betweenTimed(200, 50, 200).bins;
    private final Evidence evidence = new Evidence(bins);

    private static Seen seen(double alongM, double heightM, double groundMps, double climbMps, double newS) {
        return new Seen(alongM, 0, heightM, groundMps, Double.isNaN(groundMps) ? NAN : 0, climbMps, 1, newS);
    }

    private Seen gentle(double climbMps, double newS) {
        return seen(bins.xM[10], bins.zM[10], 60, climbMps, newS);
    }

    /** All that may be, as likely as each other, and a state in a bin. */
    private Belief even(int bin) {
        Belief belief = new Belief(bins);
        belief.before = 1;
        belief.off = 1;
        belief.offGently = 1;
        belief.after = 1;
        belief.add(1, bin, Moments.of(1, 400, 400), 1);
        return belief;
    }

    private double factor(int bin, Seen seen, ToDoubleFunction<Belief> of) {
        Belief belief = even(bin);
        evidence.weigh(belief, seen);
        return of.applyAsDouble(belief);
    }

    private double inBin(int bin, Seen seen) {
        return factor(bin, seen, b -> b.chance[b.state(1, bin)]);
    }

    /** Readings of one moment are off in the same way; ten within two seconds count as one. */
    @Test
    void readingsCountByTheTimeTheyCover() {
        double whole = inBin(10, gentle(0, 2));
        double tenth = inBin(10, gentle(0, 0.2));
        assertThat(Math.pow(tenth, 10)).isCloseTo(whole, within(1e-6 * whole));
        assertThat(inBin(10, gentle(0, 9))).as("no more than one").isEqualTo(whole);
    }

    @Test
    void takeOffIsGentleFlight() {
        assertThat(inBin(10, gentle(0, 2))).isGreaterThan(20 * inBin(10, gentle(25, 2)));
    }

    @Test
    void takeOffIsFlownAtItsHeight() {
        Seen high = seen(bins.xM[10], bins.zM[10] + 400, 60, 0, 2);
        assertThat(inBin(10, high)).isBetween(0.2 * inBin(10, gentle(0, 2)), 0.5 * inBin(10, gentle(0, 2)));
    }

    @Test
    void takeOffEndsOnTheWayInToTheFirstFigure() {
        int lead = bins.leadFrom[0] + 5;
        Seen there = seen(bins.xM[lead], bins.zM[lead], 60, 0, 2);
        Seen elsewhere = seen(bins.xM[lead] - 600, bins.zM[lead], 60, 0, 2);
        assertThat(inBin(lead, there)).isGreaterThan(5 * inBin(lead, elsewhere));
        assertThat(inBin(10, there)).as("before that it may be anywhere").isCloseTo(inBin(10, elsewhere), within(1e-9));
    }

    @Test
    void offThePlanThereIsGentleFlightToo() {
        assertThat(factor(10, gentle(0, 2), b -> b.offGently)).isGreaterThan(factor(10, gentle(0, 2), b -> b.off));
        assertThat(factor(10, gentle(40, 2), b -> b.offGently)).isLessThan(factor(10, gentle(40, 2), b -> b.off));
    }

    @Test
    void planIsLikelierThanAnythingElseThatFitsAsWell() {
        assertThat(inBin(10, gentle(0, 2))).isGreaterThan(2 * factor(10, gentle(0, 2), b -> b.offGently));
    }

    @Test
    void actIsOverOnceTheAircraftIsOnTheGround() {
        Seen onTheGround = seen(0, 10, 5, 0, 2);
        Seen above = seen(0, 100, 5, 0, 2);
        Seen fast = seen(0, 10, 60, 0, 2);
        assertThat(factor(10, onTheGround, b -> b.after))
                .isGreaterThan(100 * factor(10, above, b -> b.after))
                .isGreaterThan(100 * factor(10, fast, b -> b.after));
    }

    @Test
    void actThatBeginsInTheAirBeginsAtItsPlace() {
        Evidence air = new Evidence(Small.plan(50, 40).bins);
        Bins plan = Small.plan(50, 40).bins;
        assertThat(air.atStart(seen(plan.xM[0], plan.zM[0], 60, 0, 1))).isEqualTo(1);
        assertThat(air.atStart(seen(plan.xM[0] - 2000, plan.zM[0], 60, 0, 1))).isLessThan(0.01);
        assertThat(air.atStart(seen(plan.xM[0], plan.zM[0] + 500, 60, 0, 1))).isLessThan(0.01);
    }
}
