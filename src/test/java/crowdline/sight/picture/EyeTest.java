package crowdline.sight.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.sight.Sighting;
import org.junit.jupiter.api.Test;

/**
 * A picture on an upright pane is central projection: a point, its image and the eye lie on one straight line (any textbook
 * of descriptive geometry; Hartley and Zisserman, Multiple View Geometry, 2nd ed. 2004, section 6.1).
 */
class EyeTest {
    private static final Eye EYE = new Eye(300, 2);

    private static Eye.Spot seen(double x, double y, double z) {
        return EYE.see(new Vec(x, y, z)).orElseThrow();
    }

    @Test
    void whatStandsOnThePaneIsWhereItIs() {
        Eye.Spot spot = seen(-120, 0, 85);
        assertThat(spot).isEqualTo(new Eye.Spot(-120, 85, 1));
    }

    @Test
    void twiceAsFarIsHalfAsLargeTowardsTheHeightOfTheEye() {
        Eye.Spot spot = seen(100, 300, 62);
        assertThat(spot.alongM()).isCloseTo(50, within(1e-9));
        assertThat(spot.upM()).isCloseTo(2 + 30, within(1e-9));
        assertThat(spot.scale()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void pointImageAndEyeLieOnOneLine() {
        for (double y : new double[] {-250, -40, 0, 77, 900, 20_000}) {
            for (double x : new double[] {-800, -3, 0, 410}) {
                Eye.Spot spot = seen(x, y, 140);
                // By the directions in which the naked eye looks for both.
                Sighting there = Sighting.of(new Vec(x, y, 140 - 2), 300);
                Sighting image = Sighting.of(new Vec(spot.alongM(), 0, spot.upM() - 2), 300);
                assertThat(image.rightDeg()).isCloseTo(there.rightDeg(), within(1e-9));
                assertThat(image.upDeg()).isCloseTo(there.upDeg(), within(1e-9));
            }
        }
    }

    @Test
    void whatIsVeryFarComesDownToTheHorizonWhichIsAsHighAsTheEye() {
        assertThat(seen(500, 1e9, 150).upM()).isCloseTo(2, within(1e-3));
        assertThat(seen(500, 1e9, 0).upM()).isCloseTo(2, within(1e-3));
    }

    @Test
    void nothingIsSeenBesideOrBehindTheEye() {
        assertThat(EYE.see(new Vec(0, -300, 50))).isEmpty();
        assertThat(EYE.see(new Vec(0, -900, 50))).isEmpty();
        assertThat(EYE.see(new Vec(0, Double.NaN, 50))).isEmpty();
        assertThat(EYE.see(new Vec(0, -290, 50))).isPresent();
    }

    @Test
    void sideTurnedToTheEyeIsTheOneItLooksAt() {
        assertThat(EYE.faces(new Vec(0, 0, 100), Vec.DOWN)).isTrue();
        assertThat(EYE.faces(new Vec(0, 0, 100), Vec.UP)).isFalse();
        assertThat(EYE.faces(new Vec(400, 0, 2), new Vec(-1, 0, 0))).isTrue();
        assertThat(EYE.faces(new Vec(400, 0, 2), new Vec(1, 0, 0))).isFalse();
    }

    @Test
    void anEyeStandsBeforeTheLine() {
        for (double no : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Eye(no, 1.6))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("before the display line, not " + no + " m");
        }
    }
}
