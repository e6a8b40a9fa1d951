package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A straight line at 60 m/s that is one figure until 20 s and another after it. */
class BoundTest {
    private static final double MPS = 60;
    private static final double BOUNDARY_S = 20;
    private static final int FLIGHTS = 60;

    /** @param radiusM of the circle flown from the boundary on, to the left; infinite where it goes straight on */
    private static Truth flight(double radiusM) {
        Truth truth = new Truth();
        for (double t = 0; t <= 2 * BOUNDARY_S; t += 0.05) {
            double angle = Math.max(0, t - BOUNDARY_S) * MPS / radiusM;
            double x = MPS * Math.min(t, BOUNDARY_S)
                    + (angle == 0 ? MPS * Math.max(0, t - BOUNDARY_S) : radiusM * Math.sin(angle));
            double y = angle == 0 ? 0 : radiusM * (1 - Math.cos(angle));
            V3 way = new V3(MPS * Math.cos(angle), MPS * Math.sin(angle), 0);
            truth.instants.add(new Truth.Instant(t, new V3(x, y, 300), way));
        }
        truth.flown.add(new Truth.Flown(0, 0, BOUNDARY_S));
        truth.flown.add(new Truth.Flown(1, BOUNDARY_S, 2 * BOUNDARY_S));
        return truth;
    }

    private static Bound bound(Truth truth) {
        Bound all = new Bound();
        for (long seed = 0; seed < FLIGHTS; seed++) {
            List<Reading> log = new ArrayList<>(Radio.good(5).receive(truth, new SplittableRandom(seed)));
            all.count(truth, truth, log, seed);
        }
        return all;
    }

    /** 1.8 g to a side lead 3 m, which is the noise, off the line within 0.6 s. */
    @Test
    void bendShowsOnceItHasGoneOnForAWhileAndAfterwardsExactly() {
        Bound bend = bound(flight(200));
        assertThat(bend.liveS(0.5)).isBetween(0.1, 0.7);
        assertThat(bend.liveS(0.9)).isLessThan(1);
        assertThat(bend.afterwardsS(0.5)).isLessThan(0.15);
    }

    /** Where nothing bends there is what was expected, 0.8 s off; half of a bell are within 0.67 of that. */
    @Test
    void boundaryThatDoesNotShowIsWhereItWasExpected() {
        Bound straight = bound(flight(Double.POSITIVE_INFINITY));
        assertThat(straight.liveS(0.5)).isCloseTo(0.67 * 0.8, within(0.15));
        assertThat(straight.afterwardsS(0.5)).isCloseTo(0.67 * 0.8, within(0.15));
    }

    /** A circle is so far from its tangent: 10 m after s² = 2 r d, 63 m or 1.06 s; 50 m after 2.4 s. */
    @Test
    void changeShowsWhenThePathHasLeftTheOnePlanned() {
        Truth planned = flight(Double.POSITIVE_INFINITY);
        Truth changed = flight(200);
        changed.flown.set(1, new Truth.Flown(Truth.UNKNOWN, BOUNDARY_S, 2 * BOUNDARY_S));
        Bound bound = new Bound();
        bound.count(changed, planned, List.of(), 1);
        assertThat(bound.changeShowsS(0.5, false)).isCloseTo(1.06, within(0.1));
        assertThat(bound.changeShowsS(0.5, true)).isCloseTo(2.4, within(0.15));
    }
}
