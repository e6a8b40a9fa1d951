package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PathSoFarTest {
    private final Bins bins = Small.plan(50, 60, 50, 60).bins;
    private final PathSoFar path = new PathSoFar(bins, new Fit(bins));

    private Seen planned(int bin) {
        return new Seen(bins.xM[bin], 0, bins.zM[bin], 60, 0, bins.vzMps[bin], 1, 0.2);
    }

    /** The path as planned, from a bin on, off the plan; explained as well as any flight at all. */
    private void fly(double fromS, int fromBin, int toBin) {
        for (int bin = fromBin; bin <= toBin; bin++) {
            path.add(fromS + (bin - fromBin) * Bins.WIDTH_S, planned(bin), 0, 1);
        }
    }

    @Test
    void aLookIsASecond() {
        assertThat(path.add(0, planned(60), 0, 1)).isTrue();
        assertThat(path.add(0.9, planned(64), 0, 1)).isFalse();
        assertThat(path.add(1, planned(65), 3, 1)).isTrue();
        assertThat(path.add(2, new Seen(0, 0, 300, Double.NaN, Double.NaN, 0, 1, 1), 5, 1))
                .as("without a speed")
                .isFalse();
        assertThat(path.add(3, planned(75), 7, 1)).isTrue();
        assertThat(path.size()).isEqualTo(3);
        assertThat(path.binThen(75, 1)).isEqualTo(65);
        assertThat(path.binThen(75, 2)).isEqualTo(60);
        assertThat(path.seen(1)).isEqualTo(planned(65));
    }

    @Test
    void itGoesFifteenLooksBackAndAfterASilenceNone() {
        fly(0, 0, 200);
        assertThat(path.size()).isEqualTo(15);
        assertThat(path.seen(14)).isEqualTo(planned(130));
        path.add(44, planned(0), 0, 1);
        assertThat(path.size()).isEqualTo(1);
        path.clear();
        assertThat(path.size()).isZero();
    }

    @Test
    void whatIsFlownExplainsThePathBetterThanAnythingElse() {
        fly(0, 30, 85);
        double flown = path.likelierSinceOff(85, 0, -1000);
        Moments offsets = new Moments();
        offsets.set(path.offsets());
        assertThat(flown).as("six seconds, 5 a second and more").isGreaterThan(30);
        assertThat(path.explainsPerS()).as("of eight").isCloseTo(flown / 8, within(1e-9));
        assertThat(offsets.mean(Moments.ALONG)).isCloseTo(0, within(1.0));
        assertThat(offsets.mean(Moments.HEIGHT)).isCloseTo(0, within(1.0));
        assertThat(path.likelierSinceOff(85, 1, -1000)).as("the other way").isLessThan(flown - 10);
        assertThat(path.likelierSinceOff(195, 0, -1000)).as("a descent").isLessThan(flown - 10);
        assertThat(path.likelierSinceOff(85, 0, flown)).isEqualTo(flown);
        assertThat(path.likelierSinceOff(195, 0, flown)).as("given up").isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(path.likelierSinceOff(65, 0, -1000)).as("for two seconds").isBetween(5.0, 0.6 * flown);
    }

    /** What explains the path as well as the figure does is no worse than it; and it must have been off the plan. */
    @Test
    void itIsLikelierByWhatIsBelievedIsWorseAndByHowLikelyItWasOffThePlan() {
        fly(0, 50, 85);
        double surelyOff = path.likelierSinceOff(85, 0, -1000);
        path.clear();
        for (int bin = 50; bin <= 85; bin++) {
            double tS = (bin - 50) * Bins.WIDTH_S;
            path.add(tS, planned(bin), 4 * tS, 1);
        }
        assertThat(surelyOff - path.likelierSinceOff(85, 0, -1000)).isBetween(4 * 6.0, 4 * 7.0);
        path.clear();
        for (int bin = 50; bin <= 85; bin++) {
            path.add((bin - 50) * Bins.WIDTH_S, planned(bin), 0, bin == 50 ? 0.1 : 1);
        }
        assertThat(surelyOff - path.likelierSinceOff(85, 0, -1000)).isCloseTo(Math.log(10), within(1e-9));
        path.clear();
        for (int bin = 50; bin <= 85; bin++) {
            path.add((bin - 50) * Bins.WIDTH_S, planned(bin), 0, bin == 50 ? 0 : 1);
        }
        assertThat(path.likelierSinceOff(85, 0, -1000)).as("never").isEqualTo(Double.NEGATIVE_INFINITY);
    }
}
