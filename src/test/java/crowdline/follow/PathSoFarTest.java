package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PathSoFarTest {
    private final Bins bins = Small.plan(50, 60, 50, 60).bins;
    private final PathSoFar path = new PathSoFar(bins, new Fit(bins));

    /** The path as planned, from a bin on; explained as well as any flight at all. */
    private Seen planned(int bin) {
        return new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
    }

    private void fly(double fromS, int fromBin, int toBin) {
        for (int bin = fromBin; bin <= toBin; bin++) {
            path.add(fromS + (bin - fromBin) * Bins.WIDTH_S, planned(bin), 0);
        }
    }

    @Test
    void aLookIsASecond() {
        assertThat(path.add(0, planned(60), 0)).isTrue();
        assertThat(path.add(0.9, planned(64), 0)).isFalse();
        assertThat(path.add(1, planned(65), 3)).isTrue();
        assertThat(path.add(2, new Seen(0, 0, 300, Double.NaN, Double.NaN, 0, 1, 1), 5))
                .as("without a speed")
                .isFalse();
        assertThat(path.add(3, planned(75), 7)).isTrue();
        assertThat(path.size()).isEqualTo(3);
        assertThat(path.binThen(75, 1)).isEqualTo(65);
        assertThat(path.binThen(75, 2)).isEqualTo(60);
        assertThat(path.seen(1)).isEqualTo(planned(65));
        assertThat(path.explainedPerS(1)).isCloseTo(2, within(1e-9));
        assertThat(path.explainedPerS(2)).isCloseTo(7 / 3.0, within(1e-9));
    }

    @Test
    void itGoesFifteenLooksBackAndAfterASilenceNone() {
        fly(0, 0, 200);
        assertThat(path.size()).isEqualTo(15);
        assertThat(path.seen(14)).isEqualTo(planned(130));
        path.add(44, planned(0), 0);
        assertThat(path.size()).isEqualTo(1);
        path.clear();
        assertThat(path.size()).isZero();
    }

    @Test
    void whatIsFlownExplainsThePathBetterThanAnythingElse() {
        fly(0, 30, 85);
        double flown = path.betterThanBelieved(85, 0, -1000);
        Moments offsets = new Moments();
        offsets.set(path.offsets());
        assertThat(flown).as("six seconds, 5 a second and more").isGreaterThan(30);
        assertThat(offsets.mean(Moments.ALONG)).isCloseTo(0, within(1.0));
        assertThat(offsets.mean(Moments.HEIGHT)).isCloseTo(0, within(1.0));
        assertThat(path.betterThanBelieved(85, 1, -1000)).as("the other way").isLessThan(flown - 10);
        assertThat(path.betterThanBelieved(195, 0, -1000)).as("a descent").isLessThan(flown - 10);
        assertThat(path.betterThanBelieved(85, 0, flown)).isEqualTo(flown);
        assertThat(path.betterThanBelieved(195, 0, flown)).as("given up").isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(path.betterThanBelieved(65, 0, -1000)).as("for two seconds").isBetween(5.0, 0.6 * flown);
    }

    /** What explains the path as well as the figure does is no worse than it. */
    @Test
    void itIsBetterByWhatIsBelievedIsWorse() {
        fly(0, 50, 85);
        double better = path.betterThanBelieved(85, 0, -1000);
        path.clear();
        for (int bin = 50; bin <= 85; bin++) {
            double tS = (bin - 50) * Bins.WIDTH_S;
            path.add(tS, planned(bin), 4 * tS);
        }
        assertThat(better - path.betterThanBelieved(85, 0, -1000)).isBetween(4 * 6.0, 4 * 7.0);
    }
}
