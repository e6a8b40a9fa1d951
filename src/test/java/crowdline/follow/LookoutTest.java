package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LookoutTest {
    /** Level, climbing, level and descending. */
    private final Bins bins = Small.plan(50, 60, 120, 60).bins;

    private final Order order = new Order(bins);
    private final Lookout lookout = new Lookout(bins, new Fit(bins), order);
    private final Belief belief = new Belief(bins);

    LookoutTest() {
        belief.off = 1;
        order.saw(2, 1);
    }

    /** What is seen in a bin as it is planned, and how well what is believed explains it, as a logarithm for a second. */
    private void fly(int fromBin, int toBin, double explained) {
        for (int bin = fromBin; bin <= toBin; bin++) {
            Seen seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            lookout.look(belief, seen, bin * Bins.WIDTH_S, Math.exp(explained * Bins.WIDTH_S));
        }
        belief.settle(0, 0, 0);
    }

    @Test
    void figureThatIsFlownIsFoundWhereItIsFlown() {
        fly(225, 265, 2.5);
        assertThat(belief.in(3)).isGreaterThan(0.3);
        assertThat(belief.in(0) + belief.in(1) + belief.in(2)).isLessThan(0.01);
        assertThat(belief.low[Lanes.of(0, 1) * bins.figures + 3]).isGreaterThan(235);
        assertThat(belief.high[Lanes.of(0, 1) * bins.figures + 3]).isLessThan(290);
    }

    @Test
    void nothingIsFoundWhereWhatIsBelievedExplainsItAsWell() {
        fly(225, 260, 7);
        assertThat(belief.in(3)).isZero();
    }

    /** However badly what is believed explains it. */
    @Test
    void nothingIsLookedForWhileItIsMostlyNotOffThePlan() {
        belief.add(0, 70, OffsetDrift.anywhere(1), 0.6);
        belief.off = 0.4;
        belief.settle(0, 0, 0);
        fly(225, 260, -1);
        assertThat(belief.in(3)).isZero();
    }

    /** What began while it was on the plan came after a figure of it. */
    @Test
    void whatBeganBeforeItWasOffThePlanHasNotComeBack() {
        belief.off = 0;
        belief.add(0, 70, OffsetDrift.anywhere(1), 1);
        belief.settle(0, 0, 0);
        fly(225, 246, 2.5);
        belief.clear();
        belief.off = 1;
        fly(247, 265, 2.5);
        assertThat(belief.in(3)).isZero();
    }

    @Test
    void whatIsFarOffInTheOrderIsNotLookedFor() {
        Bins longer = Small.plan(20, 60, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20).bins;
        assertThat(secondAfter(longer, 0)).isPositive();
        assertThat(secondAfter(longer, 13)).isZero();
    }

    /** What is believed of the second figure, off the plan, after seven seconds of it, when another was the last that was seen. */
    private static double secondAfter(Bins bins, int last) {
        Order order = new Order(bins);
        order.saw(last, 1);
        Lookout out = new Lookout(bins, new Fit(bins), order);
        Belief belief = new Belief(bins);
        belief.off = 1;
        for (int bin = 15; bin <= 55; bin++) {
            Seen seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            out.look(belief, seen, bin * Bins.WIDTH_S, Math.exp(2.5 * Bins.WIDTH_S));
        }
        belief.settle(0, 0, 0);
        return belief.in(1);
    }

    @Test
    void figureBelievedInKeepsItsOwnTime() {
        belief.off = 0.9;
        belief.add(0, 280, OffsetDrift.anywhere(1), 0.1);
        belief.settle(0, 0, 0);
        fly(225, 260, 2.5);
        assertThat(belief.high[3]).isEqualTo(280);
        assertThat(belief.low[3]).isEqualTo(280);
    }

    @Test
    void nothingIsFoundByWhatWasSeenBeforeTheHandSpoke() {
        fly(225, 238, 2.5);
        lookout.clear();
        fly(239, 252, 2.5);
        assertThat(belief.in(3)).isZero();
        fly(253, 275, 2.5);
        assertThat(belief.in(3)).isPositive();
    }

    /** Any straight flight fits a level figure. */
    @Test
    void levelFlightIsNotLookedFor() {
        Order begun = new Order(bins);
        begun.saw(1, 1);
        Lookout out = new Lookout(bins, new Fit(bins), begun);
        for (int bin = 100; bin <= 200; bin++) {
            Seen seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            out.look(belief, seen, bin * Bins.WIDTH_S, Math.exp(2.5 * Bins.WIDTH_S));
        }
        belief.settle(0, 0, 0);
        assertThat(belief.in(2)).isZero();
    }

    /** A way fits any path; one that is found is flown as it is planned. */
    @Test
    void wayIsFoundByItsPathAlone() throws ShowFileException {
        Bins solo = FollowTrial.display("jackanapes-solo").plan.bins;
        int way = IntStream.range(2, solo.figures)
                .filter(f -> solo.isWay(f) && solo.length(f) > 120)
                .findFirst()
                .orElseThrow();
        assertThat(seenFor20S(solo, way, 0)).isPositive();
        assertThat(seenFor20S(solo, way, 900)).isZero();
    }

    /** The same as planned, but so far aside and with every turn the other way. */
    private static double seenFor20S(Bins solo, int way, double asideM) {
        Order order = new Order(solo);
        order.saw(way - 1, 1);
        Lookout out = new Lookout(solo, new Fit(solo), order);
        Belief of = new Belief(solo);
        of.off = 1;
        double other = asideM > 0 ? -1 : 1;
        for (int bin = solo.first[way] - 5; bin <= solo.first[way] + 100; bin++) {
            Seen seen = new Seen(
                    solo.xM[bin],
                    asideM + other * solo.yM[bin],
                    solo.zM[bin],
                    solo.vxMps[bin],
                    other * solo.vyMps[bin],
                    solo.vzMps[bin],
                    1,
                    0.2);
            out.look(of, seen, bin * Bins.WIDTH_S, Math.exp(2.5 * Bins.WIDTH_S));
        }
        of.settle(0, 0, 0);
        return of.in(way);
    }

    /** Where nothing was left to believe in, all begins anew. */
    @Test
    void whatCannotBeCountedIsForgotten() {
        fly(225, 252, 2.5);
        Belief fresh = new Belief(bins);
        fresh.off = 1;
        Seen seen = new Seen(bins.xM[253], 0, bins.zM[253], 60, 0, bins.vzMps[253], 1, 0.2);
        lookout.look(fresh, seen, 50.6, 0);
        for (int bin = 254; bin < 264; bin++) {
            seen = new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
            lookout.look(fresh, seen, bin * Bins.WIDTH_S, 1);
        }
        fresh.settle(0, 0, 0);
        assertThat(fresh.in(3)).as("for it was seen for two seconds").isZero();
    }
}
