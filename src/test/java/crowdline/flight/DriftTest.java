package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.DayAir;
import crowdline.show.Figure;
import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.api.Test;

class DriftTest {
    private static final DayAir SOUTHERLY = new DayAir(1013.25, 15, 180, 10, null);

    /** Closed form: a steady wind carries everything its speed times the time there was. */
    @Test
    void steadyWindCarriesItsSpeedTimesTheTime() {
        Flight blown = fly(SOUTHERLY, 125);
        Drift drift = Drift.between(blown, fly(DayAir.STANDARD, 125)).get(0);
        assertThat(drift.alongM()).isCloseTo(0, within(0.05));
        assertThat(drift.awayM())
                .isCloseTo(10 * 1852.0 / 3600 * blown.figures().get(0).endS(), within(0.05));
    }

    @Test
    void driftBehindAFigureNobodyCanFlyIsUnknown() {
        Flight stuck = fly(SOUTHERLY, 40);
        assertThat(Drift.between(stuck, stuck)).hasSize(2).noneMatch(Drift::isKnown);
    }

    private static Flight fly(DayAir air, double kt) {
        return Rig.predictor(
                        CatalogueFile.shipped(),
                        1500,
                        kt,
                        air,
                        Figure.of("loop", "loop"),
                        Figure.of("roll", "slow roll"))
                .predict();
    }
}
