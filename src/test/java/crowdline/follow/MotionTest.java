package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.storage.file.ShowFileException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How chances move by themselves from one moment to the next. */
class MotionTest {
    private static final int NONE = -1;
    private static final double SURE_OF_THE_PLACE_M2 = 1;

    private static Belief after(FollowPlan plan, Belief start, int steps, boolean watched) {
        Motion motion = new Motion(plan.bins, plan.rate, plan.variance, new Order(plan.bins));
        Belief from = start;
        Belief to = new Belief(plan.bins);
        for (int i = 0; i < steps; i++) {
            motion.step(from, to, NONE, watched);
            Belief done = from;
            from = to;
            to = done;
        }
        from.settle(0, 0, 0);
        return from;
    }

    /** An aircraft believed to be so far along from where a bin has it. */
    private static Belief at(FollowPlan plan, int bin, double alongM) {
        Moments m = new Moments();
        m.moved(Moments.of(1, SURE_OF_THE_PLACE_M2, SURE_OF_THE_PLACE_M2), alongM, 0);
        Belief belief = new Belief(plan.bins);
        belief.add(0, bin, m, 1);
        return belief;
    }

    /** Chance in one bin, whatever the lane. */
    private static double in(Belief belief, int bin) {
        return IntStream.range(0, Lanes.COUNT)
                .mapToDouble(lane -> belief.chance[belief.state(lane, bin)])
                .sum();
    }

    /** However much of a line is thought to be behind the aircraft, it has flown on as it flies. */
    @Test
    void aircraftOnALineFliesOnWhereverOnTheLineItIs() {
        FollowPlan plan = Small.plan(60, 40);
        hasFlown(plan, after(plan, at(plan, 10, 0), 20, false), 120);
    }

    /** One that crept along at half its speed was thought to be where it would have been at its whole speed. */
    @Test
    void aircraftOnALineFliesOnAsFastAsItIsBelievedToBe() {
        FollowPlan plan = Small.plan(60, 40);
        Belief slow = at(plan, 10, 0);
        int cell = slow.state(0, 10) * Moments.WIDTH + Moments.FASTER;
        slow.cells[cell] = -0.5;
        slow.cells[cell + 1] = 0.2501;
        hasFlown(plan, after(plan, slow, 20, false), 63);
    }

    private static void hasFlown(FollowPlan plan, Belief flown, double metres) {
        double wherever = 0;
        double place = 0;
        double place2 = 0;
        double sum = 0;
        for (int bin = 0; bin < 60; bin++) {
            int state = flown.state(0, bin);
            double c = flown.chance[state];
            if (c > 0) {
                double m = flown.moment(state, Moments.ALONG) / c + plan.bins.xM[bin] - plan.bins.xM[10];
                sum += c;
                place += c * m;
                place2 += c * m * m;
                wherever += c * Math.pow(plan.bins.xM[bin] - plan.bins.xM[10] - metres, 2);
            }
        }
        double mean = place / sum;
        assertThat(mean).as("in two seconds").isCloseTo(metres, within(6.0));
        assertThat(Math.sqrt(wherever / sum)).isGreaterThan(25);
        assertThat(Math.sqrt(place2 / sum - mean * mean)).isLessThan(3);
    }

    @Test
    void lineToAPlaceEndsOnceTheAircraftIsThere() throws ShowFileException {
        FollowPlan plan = FollowTrial.display("jackanapes-solo").plan;
        Bins bins = plan.bins;
        int line = IntStream.range(0, bins.size)
                .filter(i -> bins.lineEnd[i] == i + 20 && !bins.toHeight[i])
                .findFirst()
                .orElseThrow();
        double there = bins.goalM[line] - bins.xM[line];
        double way = Math.signum(bins.vxMps[line]);
        double past = in(after(plan, at(plan, line, there + way * 60), 1, false), bins.lineEnd[line]);
        double before = in(after(plan, at(plan, line, there - way * 80), 1, false), bins.lineEnd[line]);
        double almost = in(after(plan, at(plan, line, there - 0.3 * bins.vxMps[line]), 1, false), bins.lineEnd[line]);
        assertThat(past).isBetween(0.3, 0.45);
        assertThat(before).isLessThan(0.02);
        assertThat(almost).as("by the time it is seen it has ended").isCloseTo(past / 2, within(0.02));
    }

    /** An aircraft so many metres past the goal of a line, as far as that shows, one step later. */
    private static Belief pastTheGoal(FollowPlan plan, int bin, double pastM) {
        Bins bins = plan.bins;
        boolean height = bins.toHeight[bin];
        double offM = bins.goalM[bin] + pastM - (height ? bins.zM[bin] : bins.xM[bin]);
        Moments m = new Moments();
        m.moved(Moments.of(1, SURE_OF_THE_PLACE_M2, SURE_OF_THE_PLACE_M2), height ? 0 : offM, height ? offM : 0);
        Belief belief = new Belief(bins);
        belief.add(1, bin, m, 1);
        return after(plan, belief, 1, false);
    }

    /**
     * The share of the normal distribution below some standard deviations, from any table of it; what stands for it is within
     * a hundredth. Four ends a second are 0.4 in a step; a pilot comes within 15.6 m of a place and 9.6 m of a height; a bend
     * shows 0.3 s after it began. A tenth of all lines end elsewhere, 60 m off: the last two columns are the same distances of
     * a place and a height in shares of that. What is believed of the place has wandered by 6.4 m², of the height by 12 m².
     */
    @Test
    void lineEndsAsLikelyAsTheAircraftIsAtItsPlaceOrHeight() {
        FollowPlan plan = Small.lines(50, 40);
        double[][] table = {
            {-2, 0.0228, 0.2988, 0.3662},
            {-1, 0.1587, 0.3959, 0.4321},
            {-0.5, 0.3085, 0.4475, 0.4659},
            {0, 0.5, 0.5, 0.5},
            {0.5, 0.6915, 0.5525, 0.5341},
            {1, 0.8413, 0.6041, 0.5679},
            {2, 0.9772, 0.7012, 0.6338}
        };
        for (double[] row : table) {
            double toPlaceM = row[0] * Math.sqrt(1 + 6.4 + 15.6 * 15.6) - 0.3 * 60;
            assertThat(in(pastTheGoal(plan, 10, toPlaceM), 40))
                    .as("place, %s standard deviations past it", row[0])
                    .isCloseTo(0.4 * (0.9 * row[1] + 0.1 * row[2]), within(0.005));
            double toHeightM = row[0] * Math.sqrt(1 + 12 + 9.6 * 9.6) - 0.3 * 30;
            assertThat(in(pastTheGoal(plan, 60, toHeightM), 80))
                    .as("height, %s standard deviations past it", row[0])
                    .isCloseTo(0.4 * (0.9 * row[1] + 0.1 * row[3]), within(0.005));
        }
    }

    /** A glider whose receiver told heights 50 m too high was said to be still coming down to its pass when it had landed. */
    @Test
    void lineToAHeightMayEndAtAnother() {
        FollowPlan plan = Small.lines(50, 40);
        assertThat(in(pastTheGoal(plan, 60, -50), 80)).isBetween(0.005, 0.02);
        assertThat(in(pastTheGoal(plan, 60, -300), 80)).isLessThan(0.0005);
    }

    @Test
    void landingLastsUntilTheAircraftStandsAsLongAsItIsWatched() {
        FollowPlan plan = Small.betweenTimed(100, 40, 20, 90);
        Belief last = at(plan, plan.bins.size - 1, 0);
        assertThat(after(plan, last, 20, true).after).isBetween(0.1, 0.3);
        assertThat(after(plan, at(plan, plan.bins.size - 1, 0), 20, false).after)
                .isGreaterThan(0.6);
    }

    /**
     * A trainer that dived for its speed after a loop was said to be in its stall turn, and when that began, in the loop again:
     * nothing had waited for it.
     */
    @Test
    void lineToASpeedTakesAsLongAsItTakes() {
        FollowPlan plan = Small.linesToSpeed(50, 40);
        assertThat(plan.bins.lineEnd[39]).isEqualTo(40);
        assertThat(plan.bins.toSpeed[39]).isTrue();
        assertThat(plan.bins.toSpeed[40]).isFalse();
        double early = in(after(plan, at(plan, 20, 0), 1, false), 40);
        double due = in(after(plan, at(plan, 39, 0), 1, false), 40);
        assertThat(due).as("about 0.7 a second").isBetween(0.05, 0.08);
        assertThat(early).as("4 s before its time").isLessThan(0.02 * due);
        Belief waits = after(plan, at(plan, 39, 0), 20, false);
        assertThat(in(waits, 39)).as("two seconds late").isBetween(0.15, 0.35);
        Belief overtaken = after(plan, at(plan, 30, 0), 1, false);
        int next = overtaken.state(0, 40);
        assertThat(plan.bins.xM[40] + overtaken.moment(next, Moments.ALONG) / overtaken.chance[next])
                .as("where it was, and flown on")
                .isCloseTo(plan.bins.xM[30] + 6, within(1e-6));
    }

    /** A torque roll whose pull-out led away from where it was planned to was off the plan, and the tail slide after it too. */
    @Test
    void aircraftThatFallsMayComeOutOfItTheOtherWay() {
        FollowPlan plan = Small.kink(new Vec(5, 0, -60), new Vec(60, 0, 0));
        Bins bins = plan.bins;
        assertThat(bins.falls[20]).isTrue();
        assertThat(bins.falls[bins.first[1] + 20]).as("level").isFalse();
        Belief fallen = after(plan, at(plan, 20, 30), 1, false);
        int turned = fallen.state(Lanes.of(1, 0), 20);
        assertThat(fallen.chance[turned]).as("0.02 a second").isCloseTo(0.002, within(1e-4));
        double alongM = bins.xM[20] + fallen.moment(turned, Moments.ALONG) / fallen.chance[turned];
        assertThat(-alongM).as("where it was").isCloseTo(bins.xM[20] + 30, within(1e-9));
        assertThat(spreadM(fallen, turned, Moments.ALONG))
                .as("and as well known")
                .isCloseTo(spreadM(fallen, fallen.state(0, 20), Moments.ALONG), within(0.5));
        Belief later = after(plan, at(plan, 20, 30), 20, false);
        double other = IntStream.range(Lanes.of(1, 0), Lanes.COUNT)
                .mapToDouble(lane -> IntStream.range(0, bins.size)
                        .mapToDouble(bin -> later.chance[later.state(lane, bin)])
                        .sum())
                .sum();
        assertThat(other).isCloseTo(0.04, within(0.005));
    }

    /** However much of the line was left, the aircraft is where it was and has flown on for a tenth of a second. */
    @Test
    void whereALineEndsTheAircraftHasNotLeapt() {
        FollowPlan plan = Small.lines(50, 40);
        Bins bins = plan.bins;
        Belief place = pastTheGoal(plan, 10, 30);
        int atPlace = place.state(1, 40);
        assertThat(bins.xM[40] + place.moment(atPlace, Moments.ALONG) / place.chance[atPlace])
                .isCloseTo(bins.goalM[10] + 30 + 6, within(1e-6));
        Belief height = pastTheGoal(plan, 60, 20);
        int atHeight = height.state(1, 80);
        assertThat(bins.zM[80] + height.moment(atHeight, Moments.HEIGHT) / height.chance[atHeight])
                .isCloseTo(bins.goalM[60] + 20 + 3, within(1e-6));
        assertThat(bins.xM[80] + height.moment(atHeight, Moments.ALONG) / height.chance[atHeight])
                .isCloseTo(bins.xM[60] + 6, within(1e-6));
    }

    /** Phase runs on along a line, but only the place itself ends it. */
    @Test
    void clockAloneDoesNotEndALine() {
        FollowPlan plan = Small.lines(50, 40);
        Belief flown = pastTheGoal(plan, 38, -900);
        assertThat(in(flown, 38) + in(flown, 39)).isGreaterThan(0.999);
        assertThat(in(flown, 39)).as("half a bin is gained").isGreaterThan(0.2);
        assertThat(IntStream.range(40, 50).mapToDouble(bin -> in(flown, bin)).sum())
                .isLessThan(1e-6);
    }

    /** Eight metres in a second, see what drifts; the chances of one bin all come from the bin before. */
    @Test
    void placeWandersInAStep() {
        FollowPlan plan = Small.plan(60, 40);
        Belief flown = after(plan, at(plan, 10, 0), 1, false);
        assertThat(Math.pow(spreadM(flown, flown.state(0, 11), Moments.ALONG), 2))
                .isCloseTo(SURE_OF_THE_PLACE_M2 + 6.4, within(0.1));
    }

    private static double all(Belief belief) {
        return Arrays.stream(belief.chance).sum() + belief.before + belief.unplanned() + belief.after;
    }

    /** Of what leaves a figure for one hardly likely some is forgotten, a few millionths. */
    @Test
    void noChanceIsLostAndNoneIsMade() {
        for (FollowPlan plan : List.of(Small.lines(50, 40, 40), Small.betweenTimed(100, 50, 100))) {
            Motion motion = new Motion(plan.bins, plan.rate, plan.variance, new Order(plan.bins));
            for (int bin = 0; bin < plan.bins.size; bin++) {
                Belief from = new Belief(plan.bins);
                from.before = 0.1;
                from.off = 0.1;
                from.offGently = 0.1;
                from.after = 0.1;
                from.addInAnyLane(bin, Moments.of(1, 400, 400), 0.6);
                Belief to = new Belief(plan.bins);
                motion.step(from, to, NONE, true);
                assertThat(all(to)).as("from bin %d", bin).isCloseTo(1, within(1e-5));
            }
        }
    }

    @Test
    void afterTheLastFigureTheActIsOver() {
        FollowPlan plan = Small.plan(20, 40);
        Belief last = after(plan, at(plan, 59, 0), 1, false);
        double left = 1 - last.in(1);
        assertThat(last.after / left)
                .as("0.7 against 0.05 for the figure again, one passed over, off the plan")
                .isBetween(0.75, 0.95);
        assertThat(last.unplanned() / left).as("0.03 against 0.7").isBetween(0.03, 0.05);
        assertThat(last.in(0)).as("one passed over").isPositive();
    }

    @Test
    void actBeginsOnlyAtItsPlace() {
        FollowPlan plan = Small.plan(20, 40);
        Motion motion = new Motion(plan.bins, plan.rate, plan.variance, new Order(plan.bins));
        Belief before = new Belief(plan.bins);
        before.before = 1;
        Belief far = new Belief(plan.bins);
        motion.isAtStart(0);
        motion.step(before, far, NONE, false);
        assertThat(far.before).isEqualTo(1);
        Belief there = new Belief(plan.bins);
        motion.isAtStart(1);
        motion.step(before, there, NONE, false);
        assertThat(there.before).isLessThan(1);
    }

    @Test
    void figureFlownTheOtherWayRoundIsFollowedByOneTheOtherWayRound() {
        FollowPlan plan = Small.plan(20, 40);
        Belief mirrored = new Belief(plan.bins);
        mirrored.add(Lanes.of(1, 0), 18, Moments.of(1, 400, 400), 1);
        Belief next = after(plan, mirrored, 10, false);
        assertThat(next.in(3, 1)).isGreaterThan(0.1);
        assertThat(next.in(4, 1) / next.in(3, 1))
                .as("0.6 of all figures against 0.2")
                .isGreaterThan(2.5);
        assertThat(next.in(0, 1) + next.in(1, 1) + next.in(2, 1)).isLessThan(0.01);
    }

    @Test
    void whatWasTakenForALandingMayTurnOutToBeSomethingElse() {
        FollowPlan plan = Small.betweenTimed(100, 50, 100);
        assertThat(after(plan, at(plan, plan.bins.first[2], 0), 10, false).unplanned())
                .isBetween(0.05, 0.15);
        assertThat(after(plan, at(plan, plan.bins.first[0], 0), 10, false).unplanned())
                .as("a take-off is none")
                .isLessThan(0.01);
    }

    /** The readings show whether the aircraft comes in. */
    @Test
    void takeOffMayEndEarlyWhileTheAircraftIsWatched() {
        FollowPlan plan = Small.betweenTimed(200, 50, 100);
        int late = 100;
        int lead = plan.bins.leadFrom[0];
        assertThat(in(after(plan, at(plan, late, 0), 1, true), lead)).isGreaterThan(0.001);
        assertThat(in(after(plan, at(plan, late, 0), 1, false), lead)).isZero();
    }

    @Test
    void nextFigureBeginsInTheSameDirectionAtAnyTempo() {
        FollowPlan plan = Small.plan(20, 40);
        Belief next = after(plan, at(plan, 18, 0), 10, false);
        assertThat(next.in(0, 1)).isGreaterThan(0.1);
        assertThat(next.in(1, 1)).isGreaterThan(0.1);
        assertThat(next.in(2, 1)).isGreaterThan(0.1);
        assertThat(next.in(3, 1) + next.in(4, 1) + next.in(5, 1)).isLessThan(0.01);
    }

    /** How the last figure ended says less about where the next one is flown. */
    @Test
    void placeIsLessCertainInTheNextFigure() {
        FollowPlan plan = Small.plan(20, 40);
        Belief next = after(plan, at(plan, 19, 0), 5, false);
        int state = IntStream.range(20, 60)
                .map(bin -> next.state(1, bin))
                .filter(s -> next.chance[s] > 0.01)
                .findFirst()
                .orElseThrow();
        assertThat(spreadM(next, state, Moments.ALONG)).isBetween(40.0, 120.0);
        assertThat(spreadM(next, state, Moments.HEIGHT)).isBetween(40.0, 120.0);
    }

    private static double spreadM(Belief belief, int state, int offset) {
        double mean = belief.moment(state, offset) / belief.chance[state];
        return Math.sqrt(belief.moment(state, offset + 1) / belief.chance[state] - mean * mean);
    }
}
