package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.storage.file.ShowFileException;
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
        Belief flown = after(plan, at(plan, 10, 0), 20, false);
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
                wherever += c * Math.pow(plan.bins.xM[bin] - plan.bins.xM[10] - 103, 2);
            }
        }
        double mean = place / sum;
        assertThat(mean).as("two seconds at 60 m/s, at the tempo of the lane").isCloseTo(103, within(6.0));
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
