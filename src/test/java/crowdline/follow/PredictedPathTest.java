package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Four places, the last two a second apart. */
class PredictedPathTest {
    private static final Offset<Double> EXACTLY = within(1e-12);

    private final PredictedPath path =
            new PredictedPath(List.of(at(0, 0, 5, 300), at(2, 100, 5, 310), at(4, 120, 7, 310), at(5, 170, 7, 300)));

    private static Sample at(double tS, double x, double y, double z) {
        return new Sample(tS, new Vec(x, y, z), 60, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1, 1);
    }

    @Test
    void atASampleItIsThere() {
        assertThat(path.x(0)).isZero();
        assertThat(path.x(2)).isEqualTo(100);
        assertThat(path.y(4)).isEqualTo(7);
        assertThat(path.z(5)).isEqualTo(300);
    }

    @Test
    void betweenSamplesItIsOnTheLine() {
        assertThat(path.x(1.5)).isCloseTo(75, EXACTLY);
        assertThat(path.y(3)).isCloseTo(6, EXACTLY);
        assertThat(path.z(4.5)).isCloseTo(305, EXACTLY);
    }

    @Test
    void beforeTheFirstItGoesOnBackwardsByOneStepAtMost() {
        assertThat(path.x(-1)).isCloseTo(-50, EXACTLY);
        assertThat(path.x(-9)).isCloseTo(-100, EXACTLY);
    }

    @Test
    void afterTheLastItStays() {
        assertThat(path.x(6)).isCloseTo(170, EXACTLY);
        assertThat(path.z(60)).isCloseTo(300, EXACTLY);
    }
}
