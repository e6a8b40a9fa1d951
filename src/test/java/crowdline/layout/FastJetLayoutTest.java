package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static crowdline.layout.LayoutTest.figure;
import static crowdline.layout.LayoutTest.laid;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FastJetLayoutTest {
    /** With all its thrust it would be 170 kt faster at the end of a pass. */
    @ParameterizedTest
    @ValueSource(strings = {"low pass", "slow roll", "inverted pass"})
    void aFastJetKeepsItsSpeedInWhatIsFlownLevel(String figure) {
        Piece piece = figure(laid("fast jet", a(figure)), 1);

        assertThat(piece.to().speedMps()).isLessThan(1.1 * piece.from().speedMps());
    }
}
