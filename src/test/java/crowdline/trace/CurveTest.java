package crowdline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurveTest {
    private static final double RADIUS_M = 100;
    private static final double RAD_PER_S = 0.4;

    private static Curve circle(double... tS) {
        double[] x = new double[tS.length];
        double[] z = new double[tS.length];
        for (int i = 0; i < tS.length; i++) {
            x[i] = RADIUS_M * Math.cos(RAD_PER_S * tS[i]);
            z[i] = RADIUS_M * Math.sin(RAD_PER_S * tS[i]);
        }
        return new Curve(tS, new double[][] {x, z});
    }

    /** Halfway on a chord of 0.4 rad one is 100 (1 − cos 0.2) = 2.0 m within the circle: geometry. */
    @Test
    void betweenTwoReadingsOfACircleItIsOnTheCircle() {
        Curve curve = circle(0, 1, 2, 3, 4, 5);
        for (int i = 0; i < curve.tS.length; i++) {
            double t = curve.tS[i];
            // At either end nobody knows how it came or goes on.
            double within = t > 1 && t < 4 ? 0.1 : 1.5;
            assertThat(Math.hypot(curve.places[0][i], curve.places[1][i])).isCloseTo(RADIUS_M, within(within));
            if (t > 1 && t < 4) {
                assertThat(curve.places[0][i]).isCloseTo(RADIUS_M * Math.cos(RAD_PER_S * t), within(0.3));
            }
        }
        assertThat(curve.tS).hasSize(21).contains(0.25, 2.5, 4.75);
    }

    /** From place to place it would fly up to half of 0.4 rad, 11 degrees, to either side of where it flies. */
    @Test
    void pathSeenOnceASecondTurnsEvenly() {
        List<Reading> readings = new ArrayList<>();
        for (int t = 0; t < 12; t++) {
            double angle = RAD_PER_S * t;
            readings.add(new Reading(t, RADIUS_M * Math.sin(angle), 0, RADIUS_M * (1 - Math.cos(angle)), null, null));
        }
        Path path = Path.of(readings);
        for (int i = path.at(2); i <= path.at(9); i++) {
            double angle = RAD_PER_S * path.tS(i);
            double along = path.tx[i] * Math.cos(angle) + path.tz[i] * Math.sin(angle);
            assertThat(Math.toDegrees(Math.acos(Math.min(1, along)))).isLessThan(3);
        }
    }

    @Test
    void readingsAreKeptAndThoseNearEachOtherHaveNothingBetween() {
        double[] t = {0, 0.2, 0.4, 0.9, 1.9, 8, 8.2};
        Curve curve = circle(t);
        assertThat(curve.tS).contains(t).hasSize(t.length + 3).isSorted();
        assertThat(Arrays.stream(curve.tS)).as("for longer nobody knows").noneMatch(s -> s > 1.9 && s < 8);
        for (double at : t) {
            int i = Arrays.binarySearch(curve.tS, at);
            assertThat(curve.places[1][i]).isCloseTo(RADIUS_M * Math.sin(RAD_PER_S * at), within(1e-9));
        }
    }

    /** With even speed, whatever the steps. */
    @Test
    void straightLineStaysStraight() {
        double[] t = {0, 1, 3, 3.6, 5};
        double[] x = {0, 60, 180, 216, 300};
        Curve curve = new Curve(t, new double[][] {x});
        for (int i = 0; i < curve.tS.length; i++) {
            assertThat(curve.places[0][i]).isCloseTo(60 * curve.tS[i], within(1e-9));
        }
    }
}
