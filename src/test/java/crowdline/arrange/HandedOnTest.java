package crowdline.arrange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.draft.Drafted;
import crowdline.flight.FigureFlight;
import crowdline.flight.Predictor;
import crowdline.measure.Units;
import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.api.Test;

/** The figure after a run-in begins as high and as fast as the run-in is told, unless the list says otherwise of it. */
class RunInTest {
    private static FigureFlight flown(String list, String figure) {
        ShowArranging.Made made = Drafted.arranged(Drafted.empty(), "strong aerobatic monoplane", "Ada Quillan", list);
        return new Predictor(
                        made.show(),
                        CatalogueFile.shipped(),
                        made.act(),
                        made.act().variants().get(0))
                .predict().figures().stream()
                        .filter(f -> f.figureId().equals(figure))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void itBeginsWhereTheRunInEnds() {
        FigureFlight loop = flown("run in from the left at 170 kt, 1500 ft\nloop\nslow roll", "loop");

        assertThat(Units.ftFromM(loop.lowestM())).isCloseTo(1500, within(100.0));
        assertThat(Units.ktFromMps(loop.entryMps())).isCloseTo(170, within(3.0));
    }

    @Test
    void itsOwnHeightWins() {
        FigureFlight loop = flown("run in from the left at 1500 ft\nloop at 800 ft\nslow roll", "loop");

        assertThat(Units.ftFromM(loop.lowestM())).isCloseTo(800, within(100.0));
    }

    @Test
    void aSecondRunInIsNoReasonToClimb() {
        FigureFlight roll = flown("loop\nrun in from the left at 2500 ft\nslow roll\nlow pass", "slow-roll");

        assertThat(Units.ftFromM(roll.lowestM())).isLessThan(1000);
    }

    @Test
    void whatComesAfterThatIsFree() {
        FigureFlight pass = flown("run in from the left at 1500 ft\nloop\nlow pass", "low-pass");

        assertThat(Units.ftFromM(pass.lowestM())).isLessThan(1000);
    }
}
