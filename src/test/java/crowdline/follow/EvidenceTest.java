package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
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

    private static Seen banked(Seen seen, double sidewaysG) {
        return flown(seen, sidewaysG, 0, null);
    }

    private static Seen steady(Seen seen, double steady) {
        return flown(seen, 0, steady, null);
    }

    private static Seen flown(Seen seen, double sidewaysG, double steady, @Nullable Effort effort) {
        return new Seen(
                seen.alongM(),
                seen.awayM(),
                seen.heightM(),
                seen.alongMps(),
                seen.awayMps(),
                seen.climbMps(),
                seen.overS(),
                seen.newS(),
                sidewaysG,
                steady,
                effort);
    }

    /** As it was, a glider that sank home at half its speed was on its farewell pass until it had landed. */
    @Test
    void slowAndSteadyFlightSpeaksForTheLanding() {
        int landing = bins.first[2] + 50;
        Seen slow = seen(bins.xM[landing], bins.zM[landing], 30, 0, 2);
        double unsteady = inBin(landing, steady(slow, 0));
        assertThat(inBin(landing, steady(slow, 1)) / unsteady).isCloseTo(10.5, within(0.1));
        assertThat(inBin(landing, steady(slow, 0.1)) / unsteady).isCloseTo(1.95, within(0.05));
        Seen fast = seen(bins.xM[landing], bins.zM[landing], 75, 0, 2);
        assertThat(inBin(landing, steady(fast, 1)) / inBin(landing, steady(fast, 0)))
                .as("at the speed of its figures")
                .isBetween(1.0, 2.0);
        Seen rolls = seen(bins.xM[landing], bins.zM[landing], 17, 0, 2);
        assertThat(inBin(landing, steady(rolls, 1))).as("on the ground").isEqualTo(inBin(landing, steady(rolls, 0)));
        assertThat(inBin(20, steady(slow, 1))).as("a take-off").isEqualTo(inBin(20, steady(slow, 0)));
    }

    /** As it was, a circuit was said to be whatever line of the plan lay nearest, to the ground. */
    @Test
    void gentleFlightForAWhileSpeaksForTheLandingAndIsNotSure() {
        Bins lands = Small.betweenTimed(100, 50, 100, 100).bins;
        assertThat(lands.lands()).isTrue();
        int landing = lands.first[3] + 20;
        Effort gentle = new Effort(35, 0.8, 3, 400);
        Seen circuit = seen(lands.xM[landing], lands.zM[landing], 35, 0, 2);
        assertThat(landing(lands, landing, after(circuit, gentle), false) / landing(lands, landing, circuit, false))
                .isCloseTo(101, within(1.0));
        Seen rolls = seen(lands.xM[landing], lands.zM[landing], 17, 0, 2);
        assertThat(landing(lands, landing, after(rolls, gentle), false))
                .isEqualTo(landing(lands, landing, rolls, false));
        Effort pulled = new Effort(35, 2.5, 3, 400);
        assertThat(landing(lands, landing, after(circuit, pulled), false))
                .isCloseTo(landing(lands, landing, circuit, false), within(1.0));
        assertThat(landing(lands, landing, after(circuit, gentle), true))
                .as("loose")
                .isEqualTo(1);
        assertThat(landing(lands, landing, circuit, true)).as("not loose").isZero();
        assertThat(landing(lands, 20, after(circuit, gentle), false))
                .as("a take-off")
                .isEqualTo(landing(lands, 20, circuit, false));
    }

    @Test
    void whatEndsInTheAirIsNoLandingHoweverGentleItIs() {
        assertThat(bins.lands()).isFalse();
        int end = bins.first[2] + 50;
        Seen slow = seen(bins.xM[end], bins.zM[end], 35, 0, 2);
        assertThat(inBin(end, after(slow, new Effort(35, 0.8, 3, 400)))).isEqualTo(inBin(end, slow));
    }

    /** As it was, an act that is to leave and was broken off to land was on a figure of its plan, to the ground. */
    @Test
    void gentleFlightSpeaksForNothingOfAPlanThatDoesNotLand() {
        Seen slow = seen(bins.xM[20], bins.zM[20], 35, 0, 2);
        Effort gentle = new Effort(35, 0.8, 3, 400);
        double off = factor(20, slow, b -> b.offGently);
        assertThat(factor(20, after(slow, gentle), b -> b.offGently) / off).isCloseTo(101, within(1.0));
        assertThat(factor(20, steady(slow, 1), b -> b.offGently) / off).isBetween(8.0, 11.0);
        Bins lands = Small.betweenTimed(100, 50, 100, 100).bins;
        assertThat(offGently(lands, after(slow, gentle)))
                .as("where a landing is planned, it is that")
                .isEqualTo(offGently(lands, slow));
    }

    private static double offGently(Bins bins, Seen seen) {
        Belief belief = new Belief(bins);
        belief.offGently = 1;
        new Evidence(bins).weigh(belief, seen);
        return belief.offGently;
    }

    /** The chance of a state after a reading, or whether it is loose. */
    private static double landing(Bins bins, int bin, Seen seen, boolean loose) {
        Evidence evidence = new Evidence(bins);
        Belief belief = new Belief(bins);
        belief.add(1, bin, Moments.of(1, 400, 400), 1);
        evidence.weigh(belief, seen);
        return loose ? evidence.isLoose(bins.figure[bin]) ? 1 : 0 : belief.chance[belief.state(1, bin)];
    }

    private static Seen after(Seen seen, Effort effort) {
        return flown(seen, seen.sidewaysG(), seen.steady(), effort);
    }

    /** As it was, an extra turn at 60° of bank was said to be the landing after ten seconds. */
    @Test
    void turnAsSteepAsOfADisplaySpeaksForNoTimedFigure() {
        int landing = bins.first[2] + 50;
        Seen flown = seen(bins.xM[landing], bins.zM[landing], 60, 0, 2);
        double like = inBin(landing, flown);
        assertThat(inBin(landing, banked(flown, 1.2))).as("50° of bank").isEqualTo(like);
        assertThat(inBin(landing, banked(flown, 0.3))).isEqualTo(like);
        assertThat(inBin(landing, banked(flown, 1.7)) / like).as("60°").isBetween(0.2, 0.6);
        double off = factor(landing, flown, b -> b.offGently);
        assertThat(inBin(landing, banked(flown, 2.7)) / off).as("70°").isCloseTo(1, within(0.1));
        int figure = bins.first[1] + 20;
        Seen there = seen(bins.xM[figure], bins.zM[figure], 60, 0, 2);
        assertThat(inBin(figure, banked(there, 2.7))).isEqualTo(inBin(figure, there));
    }

    /** As it was, a jet that turned back at 150 m/s was said to land. */
    @Test
    void timedFigureSlowsDownToNotMuchMoreThanTheSpeedItEndsAt() {
        int settled = bins.first[2] + 150;
        Seen slow = seen(bins.xM[settled], bins.zM[settled], 60, 0, 2);
        Seen fast = seen(bins.xM[settled], bins.zM[settled], 150, 0, 2);
        double like = inBin(settled, slow);
        assertThat(inBin(settled, seen(bins.xM[settled], bins.zM[settled], 30, 0, 2)))
                .isEqualTo(like);
        assertThat(inBin(settled, fast)).isBetween(like / 20, like / 3);
        assertThat(inBin(settled, seen(bins.xM[settled], bins.zM[settled], 400, 0, 2)))
                .isCloseTo(0.03 * like, within(0.01 * like));
    }

    private static double near(double sigmas, double floor) {
        double u = 1 + sigmas * sigmas / 3;
        return floor + (1 - floor) / (u * u);
    }

    /** Of a whole reading in a climb of 9 m/s, one and a half times what is gentle. */
    @Test
    void ratiosAreWhatTheyAreTunedTo() {
        double gentle = 3000 * near(1.5, 0.003);
        Seen climbing = gentle(9, 2);
        assertThat(factor(10, climbing, b -> b.off)).isCloseTo(160, within(1e-9));
        assertThat(factor(10, climbing, b -> b.offGently)).isCloseTo(0.25 * gentle, within(1e-9));
        assertThat(inBin(10, climbing)).as("a take-off climbs").isCloseTo(3000, within(1e-9));
        double most = 0.2 * bins.endMps[0];
        assertThat(inBin(10, gentle(most + 9, 2))).isCloseTo(gentle, within(1e-9));
        assertThat(inBin(10, gentle(-9, 2))).as("but does not sink").isCloseTo(gentle, within(1e-9));
        Seen high = seen(bins.xM[10], bins.zM[10] + 180, 60, most + 9, 2);
        assertThat(inBin(10, high)).isCloseTo(gentle * near(1.5, 0.3), within(1e-9));
        int lead = bins.leadFrom[0] + 5;
        Seen short120 = seen(bins.xM[lead] - 120, bins.zM[lead], 60, most + 9, 2);
        assertThat(inBin(lead, short120)).isCloseTo(gentle * near(1.5, 0.1), within(1e-9));
        assertThat(factor(10, seen(0, 300, 60, NAN, 2), b -> b.offGently))
                .as("no climb is known")
                .isCloseTo(0.25 * 3000, within(1e-9));
    }

    @Test
    void figureFlownTheOtherWayIsWeighedAsWell() {
        int lead = bins.leadFrom[0] + 5;
        Belief mirrored = new Belief(bins);
        mirrored.add(Lanes.of(1, 1), lead, Moments.of(1, 400, 400), 1);
        evidence.weigh(mirrored, seen(-bins.xM[lead], bins.zM[lead], 60, 0, 2));
        assertThat(mirrored.chance[mirrored.state(Lanes.of(1, 1), lead)]).isCloseTo(3000, within(1e-9));
    }

    @Test
    void beforeTheActAndAfterItAreWeighedByTheGroundWhereSpeedsAreKnown() {
        Seen flying = seen(0, 300, 60, 0, 2);
        assertThat(factor(10, flying, b -> b.after)).isCloseTo(16, within(1e-9));
        assertThat(factor(10, flying, b -> b.before))
                .as("the act begins in the air")
                .isCloseTo(3000, within(1e-9));
        assertThat(factor(10, seen(0, 10, 5, 0, 2), b -> b.after)).isCloseTo(15_000, within(1e-9));
        Seen unknown = seen(0, 300, NAN, 0, 2);
        assertThat(factor(10, unknown, b -> b.after)).isCloseTo(160, within(1e-9));
        assertThat(factor(10, unknown, b -> b.before)).isCloseTo(3000, within(1e-9));
    }

    /** 3 g and a climb of half its speed are no way to wait; in an act that is watched from before it, it says nothing. */
    @Test
    void whoFliesFiguresHardlyWaitsForAnActThatMayHaveBegun() {
        Seen flying = seen(0, 300, 60, 0, 2);
        Seen pulled = after(flying, new Effort(60, 3.5, 5, 0));
        Seen climbed = after(flying, new Effort(60, 1, 45, 0));
        assertThat(factor(10, pulled, b -> b.before)).isCloseTo(3000, within(1e-3));
        evidence.isHeardLate();
        assertThat(factor(10, flying, b -> b.before)).isCloseTo(3000, within(1e-3));
        assertThat(factor(10, pulled, b -> b.before)).isBetween(30.0, 100.0);
        assertThat(factor(10, climbed, b -> b.before)).isBetween(30.0, 100.0);
        assertThat(factor(10, after(flying, new Effort(60, 1.7, 10, 0)), b -> b.before))
                .as("a holding turn at 60°")
                .isGreaterThan(2000);
    }

    @Test
    void groundIsWhereAnAircraftIsSlowLowAndLevel() {
        assertThat(grounded(17.9, 39.9, 10)).isTrue();
        assertThat(grounded(18, 39.9, 10)).isFalse();
        assertThat(grounded(17.9, 40, 10)).isFalse();
        assertThat(grounded(17.9, 39.9, -10.1)).isFalse();
        assertThat(grounded(17.9, 39.9, NAN)).as("no climb is known").isTrue();
    }

    private boolean grounded(double mps, double heightM, double climbMps) {
        return factor(10, seen(0, heightM, mps, climbMps, 2), b -> b.after) > 1000;
    }

    /** 150 m along, 150 m away and 90 m up, each one and a half times what is usual. */
    @Test
    void nearnessToTheStartFallsOffInEveryDirection() {
        Bins plan = Small.plan(50, 40).bins;
        Evidence air = new Evidence(plan);
        double off = near(1.5, 0.001);
        double x = plan.xM[0];
        double z = plan.zM[0];
        assertThat(air.atStart(seen(x - 150, z, 60, 0, 1))).isCloseTo(off, within(1e-9));
        assertThat(air.atStart(seen(-x + 150, z, 60, 0, 1)))
                .as("from the other end")
                .isCloseTo(off, within(1e-9));
        assertThat(air.atStart(seen(x, z - 90, 60, 0, 1))).isCloseTo(off, within(1e-9));
        assertThat(air.atStart(new Seen(x, 150, z, 60, 0, 0, 1, 1))).isCloseTo(off, within(1e-9));
    }

    @Test
    void takeOffIsGentleFlight() {
        assertThat(inBin(10, gentle(0, 2))).isGreaterThan(20 * inBin(10, gentle(40, 2)));
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
