package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** A glider spends height for speed between two figures; it does not come round for every one of them. */
class GliderFlowTest {
    private static LaidOut laid(String... figures) {
        return LayoutTest.laid(
                "aerobatic glider", Arrays.stream(figures).map(LayoutTest::a).toArray(LayoutTest.Wanted[]::new));
    }

    private static long turns(LaidOut laid) {
        return laid.pieces().stream()
                .filter(piece -> piece.transit() == Transit.TURNS_BACK)
                .count();
    }

    @Test
    void oneLoopFollowsAnotherOnceThereIsSpeed() {
        assertThat(turns(laid("dive", "loop", "loop"))).isZero();
        assertThat(turns(laid("loop", "stall turn", "loop"))).isZero();
    }

    @Test
    void anActOfSixFiguresTurnsBackOnceAtMost() {
        LaidOut laid = laid("loop", "stall turn", "loop", "half Cuban", "spin", "low pass");

        assertThat(turns(laid)).isLessThan(2);
        assertThat(laid.seconds()).isLessThan(180);
        assertThat(laid.pieces().get(0).transit()).isEqualTo(Transit.RUNS_IN);
    }
}
