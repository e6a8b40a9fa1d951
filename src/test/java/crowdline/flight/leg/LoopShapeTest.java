package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shape of a loop against the sum of its small pieces. */
class LoopShapeTest {
    private static final int PIECES = 20_000;

    /** How far it moves on and how far it rises to an angle from the bottom, in radii at the bottom. */
    private static double[] summed(LoopShape shape, double toRad) {
        double on = 0;
        double up = 0;
        for (int i = 0; i < PIECES; i++) {
            double angle = (i + 0.5) * toRad / PIECES;
            double piece = shape.radius(Math.cos(angle)) * toRad / PIECES;
            on += piece * Math.cos(angle);
            up += piece * Math.sin(angle);
        }
        return new double[] {on, up};
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.95, 0.9, 0.85, 0.8})
    void downToItsLeastItEndsWhereItBegan(double topShare) {
        double[] round = summed(LoopShape.ofTop(topShare), 2 * Math.PI);
        assertThat(round[0]).isCloseTo(0, within(1e-6));
        assertThat(round[1]).isCloseTo(0, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 0.5, 0.3, 0.15})
    void tighterItMovesOnAsItsPartInTheAngleSays(double topShare) {
        LoopShape shape = LoopShape.ofTop(topShare);
        double moves = Math.PI * shape.a() / (1 + shape.a() + shape.b() + shape.c());
        assertThat(summed(shape, 2 * Math.PI)[0]).isPositive().isCloseTo(moves, within(1e-6));
        assertThat(summed(shape, 2 * Math.PI)[1]).isCloseTo(0, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.9, 0.8, 0.6, 0.3})
    void itIsAsWideAsAskedAtBottomAndTopAndFallsWhatItRose(double topShare) {
        LoopShape shape = LoopShape.ofTop(topShare);
        assertThat(shape.radius(1)).isCloseTo(1, within(1e-12));
        assertThat(shape.radius(-1)).isCloseTo(topShare, within(1e-12));
        for (double angle = 0.3; angle < Math.PI; angle += 0.4) {
            assertThat(shape.topQuarter())
                    .isCloseTo(summed(shape, Math.PI / 2)[0] - summed(shape, Math.PI)[0], within(1e-6));
            assertThat(shape.fall(Math.cos(angle))).isCloseTo(summed(shape, angle)[1], within(1e-6));
        }
    }
}
