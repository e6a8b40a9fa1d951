package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Rig;
import crowdline.show.DayAir;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class DriftTest {
    private static final DayAir SOUTHERLY = new DayAir(1013.25, 15, 180, 10, null);
    private static final DayAir WESTERLY = new DayAir(1013.25, 15, 270, 10, null);
    private static final double TEN_KT = 10 * 1852.0 / 3600;

    /** Closed form: along its way a steady wind carries everything its speed times the time there was. */
    @Test
    void steadyWindBehindCarriesItsSpeedTimesTheTime() {
        Figure line = new Figure(
                "line",
                "low pass",
                null,
                null,
                List.of(Rig.line(Element.Until.SECONDS, 20)),
                null,
                null,
                null,
                List.of(),
                List.of());
        Drift drift = Drift.between(fly(WESTERLY, 125, line), fly(DayAir.STANDARD, 125, line))
                .get(0);
        assertThat(drift.alongM()).isCloseTo(20 * TEN_KT, within(0.05));
        assertThat(drift.awayM()).isCloseTo(0, within(1e-6));
    }

    /** The nose leans into the wind, so that the figure stands where it would without. */
    @Test
    void steadyWindAcrossIsHeldAgainst() {
        Drift drift =
                Drift.between(fly(SOUTHERLY, 125), fly(DayAir.STANDARD, 125)).get(1);
        assertThat(drift.awayM()).isCloseTo(0, within(0.05));
        assertThat(drift.alongM()).isCloseTo(0, within(5.0));
    }

    /** What falls is carried away. */
    @Test
    void steadyWindCarriesASpinAway() {
        Figure spin = Figure.of("spin", "spin");
        Flight blown = fly(SOUTHERLY, 80, spin);
        Drift drift = Drift.between(blown, fly(DayAir.STANDARD, 80, spin)).get(0);
        ElementFlight turning = blown.figures().get(0).elements().get(0);
        assertThat(drift.awayM()).isBetween(0.2 * TEN_KT, TEN_KT * (turning.endS() - turning.startS()));
    }

    @Test
    void driftBehindAFigureNobodyCanFlyIsUnknown() {
        Flight stuck = fly(SOUTHERLY, 40);
        assertThat(Drift.between(stuck, stuck)).hasSize(2).noneMatch(Drift::isKnown);
    }

    private static Flight fly(DayAir air, double kt) {
        return fly(air, kt, Figure.of("loop", "loop"), Figure.of("roll", "slow roll"));
    }

    private static Flight fly(DayAir air, double kt, Figure... figures) {
        return Rig.predictor(CatalogueFile.shipped(), 2500, kt, air, figures).predict();
    }

    /** As much further one way as it is less far the other. */
    @Test
    void headwindCarriesBackAndFigureForFigure() {
        DayAir easterly = new DayAir(1013.25, 15, 90, 10, null);
        Flight still = fly(DayAir.STANDARD, 125);
        Flight blown = fly(easterly, 125);
        Drift drift = Drift.between(blown, still).get(0);
        FigureFlight here = blown.figures().get(0);
        FigureFlight there = still.figures().get(0);
        assertThat(drift.alongM()).isEqualTo(here.exitAlongM() - there.exitAlongM());
        assertThat(drift.awayM()).isEqualTo(here.exitAwayM() - there.exitAwayM());
    }

    @Test
    void ofAFlightNobodyKnowsOfNothingIsKnown() {
        Flight flight = fly(DayAir.STANDARD, 125);
        assertThat(Drift.unknown(flight)).hasSameSizeAs(flight.figures()).noneMatch(Drift::isKnown);
        assertThat(new Drift(1, Double.NaN).isKnown()).isFalse();
        assertThat(new Drift(Double.NaN, 1).isKnown()).isFalse();
        assertThat(new Drift(1, 2).isKnown()).isTrue();
    }
}
