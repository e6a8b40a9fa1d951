package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Times that nobody flies: most figures far shorter or far longer than any such figure. */
class HardlyFlownTest {
    private static final ActTimes EXPECTED = new ActTimes(
            "a",
            "full",
            List.of(
                    new FigureTime("loop", 0, 12, 10, 14),
                    new FigureTime("roll", 12, 6, 5, 8),
                    new FigureTime("landing", 18, 60, 58, 62)));

    private static boolean hardly(double loopS, double rollS, double landingS) {
        List<Pass.TimedFigure> figures = new ArrayList<>();
        figures.add(new Pass.TimedFigure("loop", 0, loopS));
        figures.add(new Pass.TimedFigure("roll", loopS, loopS + rollS));
        figures.add(new Pass.TimedFigure("landing", loopS + rollS, loopS + rollS + landingS));
        return HardlyFlown.in(Pass.of("p", "a", "full", Pass.How.LIVE, Instant.EPOCH, figures), EXPECTED);
    }

    @Test
    void clickedThroughIsNoFlight() {
        assertThat(hardly(1.2, 0.8, 1.5)).isTrue();
        assertThat(hardly(4.9, 2.4, 60)).isTrue();
    }

    @Test
    void leftStandingIsNoFlight() {
        assertThat(hardly(43, 25, 60)).isTrue();
    }

    @Test
    void oneFigureFlownInAnotherWayIs() {
        assertThat(hardly(12, 6, 15)).isFalse();
        assertThat(hardly(5.1, 2.6, 30)).isFalse();
        assertThat(hardly(41, 23, 180)).isFalse();
    }

    @Test
    void ofFiguresNobodyKnowsNothingIsSaid() {
        Pass other =
                Pass.of("p", "a", "full", Pass.How.LIVE, Instant.EPOCH, List.of(new Pass.TimedFigure("spin", 0, 0.2)));
        assertThat(HardlyFlown.in(other, EXPECTED)).isFalse();
    }
}
