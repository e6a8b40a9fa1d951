package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LookoutTest {
    /** Level, climbing, level and descending. */
    private final Bins bins = Small.plan(50, 60, 120, 60).bins;

    private final Lookout lookout = new Lookout(bins, new Fit(bins), new Order(bins));
    private final Belief belief = new Belief(bins);

    /** What is seen in a bin as it is planned, and how well what is believed explains it, as a logarithm for a second. */
    private void fly(int fromBin, int toBin, double explained) {
        for (int bin = fromBin; bin <= toBin; bin++) {
            Seen seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            lookout.look(belief, seen, bin * Bins.WIDTH_S, Math.exp(explained * Bins.WIDTH_S));
        }
        belief.settle(0, 0, 0);
    }

    private void offThePlan() {
        belief.off = 1;
    }

    @Test
    void figureThatIsFlownIsFoundWhereItIsFlown() {
        offThePlan();
        fly(235, 265, 2.5);
        assertThat(belief.in(3)).isGreaterThan(0.3);
        assertThat(belief.in(0) + belief.in(1) + belief.in(2)).isLessThan(0.01);
        assertThat(belief.low[Lanes.of(0, 1) * bins.figures + 3]).isGreaterThan(235);
        assertThat(belief.high[Lanes.of(0, 1) * bins.figures + 3]).isLessThan(290);
        assertThat(Math.abs(belief.mean(3, Moments.HEIGHT))).isLessThan(20);
    }

    @Test
    void nothingIsFoundWhereWhatIsBelievedExplainsItAsWell() {
        offThePlan();
        fly(235, 265, 5.5);
        assertThat(belief.in(3)).isZero();
    }

    /** Figures that begin alike are told apart by what comes. */
    @Test
    void figureThatIsExplainedByItsPathIsNotDoubted() {
        belief.add(0, 70, OffsetDrift.anywhere(1), 0.9);
        belief.off = 0.1;
        belief.settle(0, 0, 0);
        fly(235, 265, 4);
        assertThat(belief.in(3)).as("well enough").isZero();
        fly(266, 280, 2);
        assertThat(belief.in(3)).as("worse").isPositive();
    }

    /** A way is flown on any path, and so is another. */
    @Test
    void nothingLevelIsFoundWhileAWayIsBelievedIn() throws ShowFileException {
        Bins solo = FollowTrial.display("jackanapes-solo").plan.bins;
        int pass = IntStream.range(0, solo.figures)
                .filter(f -> solo.way(f) == null && !solo.timed[solo.first[f]] && solo.length(f) > 70)
                .filter(f ->
                        IntStream.range(solo.first[f], solo.first[f + 1]).allMatch(i -> Math.abs(solo.vzMps[i]) < 5))
                .findFirst()
                .orElseThrow();
        int way = IntStream.range(0, solo.figures)
                .filter(f -> solo.way(f) != null && Math.abs(f - pass) > 1)
                .findFirst()
                .orElseThrow();
        assertThat(seenFor14S(solo, pass, 0, way)).isPositive();
        assertThat(seenFor14S(solo, pass, 0.9, way)).isZero();
    }

    private static double seenFor14S(Bins solo, int pass, double onWay, int way) {
        Lookout out = new Lookout(solo, new Fit(solo), new Order(solo));
        Belief of = new Belief(solo);
        of.add(0, solo.first[way], OffsetDrift.anywhere(1), onWay);
        of.off = 1 - onWay;
        of.settle(0, 0, 0);
        for (int bin = solo.first[pass]; bin <= solo.first[pass] + 70; bin++) {
            Seen seen = new Seen(solo.xM[bin], solo.yM[bin], solo.zM[bin], solo.vxMps[bin], solo.vyMps[bin], 0, 1, 0.2);
            out.look(of, seen, bin * Bins.WIDTH_S, Math.exp(2.5 * Bins.WIDTH_S));
        }
        of.settle(0, 0, 0);
        return of.in(pass);
    }

    @Test
    void figureBelievedInKeepsItsOwnTime() {
        belief.add(0, 280, OffsetDrift.anywhere(1), 1);
        belief.settle(0, 0, 0);
        fly(235, 265, 2.5);
        assertThat(belief.high[3]).isEqualTo(280);
        assertThat(belief.low[3]).isEqualTo(280);
    }

    @Test
    void nothingIsFoundBeforeTheActNorByWhatWasSeenBeforeTheHandSpoke() {
        belief.before = 1;
        fly(235, 265, 2.5);
        assertThat(belief.in(3)).isZero();
        belief.before = 0;
        offThePlan();
        lookout.clear();
        fly(266, 268, 2.5);
        assertThat(belief.in(3)).isZero();
        fly(269, 289, 2.5);
        assertThat(belief.in(3)).isPositive();
    }

    /** Any straight flight fits a level figure. */
    @Test
    void levelFlightIsBelievedInLater() {
        offThePlan();
        fly(110, 165, 2.5);
        assertThat(belief.in(2)).as("after 11 s").isZero();
        fly(166, 200, 2.5);
        assertThat(belief.in(2)).as("after 18 s").isPositive();
    }

    /** Where nothing was left to believe in, all begins anew. */
    @Test
    void whatCannotBeCountedIsForgotten() {
        offThePlan();
        fly(235, 262, 2.5);
        Belief fresh = new Belief(bins);
        fresh.off = 1;
        Seen seen = new Seen(bins.xM[263], 0, bins.zM[263], 60, 0, bins.vzMps[263], 1, 0.2);
        lookout.look(fresh, seen, 52.6, 0);
        for (int bin = 264; bin < 274; bin++) {
            seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            lookout.look(fresh, seen, bin * Bins.WIDTH_S, 1);
        }
        fresh.settle(0, 0, 0);
        assertThat(fresh.in(3)).as("for it was seen for two seconds").isZero();
    }

    /** Half Cubans and Cuban eights are alike, and minutes apart. */
    @Test
    void whatWasFlownLongAgoHasToBeSeenForLonger() {
        Bins longer = Small.plan(20, 20, 20, 60, 20, 20, 20, 20).bins;
        assertThat(found(longer, false, 25)).isPositive();
        assertThat(found(longer, true, 25)).isLessThan(found(longer, false, 25) / 3);
        assertThat(found(longer, true, 45)).isPositive();
    }

    /** What is believed of the fourth figure after so many bins of it, off the plan. */
    private static double found(Bins bins, boolean flown, int after) {
        Order order = new Order(bins);
        if (flown) {
            order.saw(3, 1);
        }
        order.saw(6, 1);
        Lookout out = new Lookout(bins, new Fit(bins), order);
        Belief belief = new Belief(bins);
        belief.off = 1;
        for (int bin = 60; bin <= 60 + after; bin++) {
            Seen seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            out.look(belief, seen, bin * Bins.WIDTH_S, Math.exp(3.5 * Bins.WIDTH_S));
        }
        belief.settle(0, 0, 0);
        return belief.in(3);
    }
}
