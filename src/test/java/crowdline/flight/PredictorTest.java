package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.leg.Sample;
import crowdline.show.DayAir;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PredictorTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final double KT_MPS = 1852 / 3600.0;

    private static Figure own(String id, @Nullable Double minEntryKt, Element... elements) {
        return new Figure(id, id, null, null, List.of(elements), null, null, minEntryKt, List.of(), List.of());
    }

    private static Figure timed(String id, double seconds, @Nullable Placing exit) {
        return new Figure(id, "hangar doors", null, null, null, seconds, exit, null, List.of(), List.of());
    }

    private static Flight flown(double kt, Figure... figures) {
        return Rig.predictor(CATALOGUE, 1500, kt, figures).predict();
    }

    private static boolean slow(Flight flight) {
        return flight.findings().stream().anyMatch(f -> f.code().equals("slow-to-begin"));
    }

    @Test
    void timedFigureTakesItsTimeAndIsSampledOnItsWay() {
        Placing exit = new Placing(300, 40, 500, 60, Placing.Heading.LEFT);
        Flight flight = flown(120, timed("gap", 10, exit), own("run", null, Rig.line(Until.SECONDS, 1)));
        FigureFlight gap = flight.figures().get(0);

        assertThat(gap.simulated()).isFalse();
        assertThat(gap.durationS()).isEqualTo(10);
        assertThat(gap.exitAlongM()).isEqualTo(300);
        assertThat(gap.exitAwayM()).isEqualTo(40);
        assertThat(gap.lowestM()).isCloseTo(500 * 0.3048, within(1e-9));
        assertThat(gap.highestM()).isCloseTo(1500 * 0.3048, within(1e-9));
        assertThat(gap.leastMps()).isCloseTo(60 * KT_MPS, within(1e-9));
        assertThat(gap.greatestMps()).isCloseTo(120 * KT_MPS, within(1e-9));
        Sample halfway = flight.samples().stream()
                .filter(s -> Math.abs(s.tS() - 5) < 1e-6)
                .findFirst()
                .orElseThrow();
        assertThat(halfway.place().x()).isCloseTo(150, within(1e-6));
        assertThat(flight.samples().get(flight.samples().size() - 1).place().x())
                .isLessThan(300);
    }

    @Test
    void figureWithoutAPlaceToEndGoesOnFromWhereItWas() {
        FigureFlight gap = flown(120, timed("gap", 10, null)).figures().get(0);

        assertThat(gap.exitAlongM()).isZero();
        assertThat(gap.exitMps()).isCloseTo(120 * KT_MPS, within(1e-9));
    }

    @Test
    void ownSpeedToBeginIsHeldAndOwnElementsNeedNone() {
        Element run = Rig.line(Until.SECONDS, 1);

        assertThat(slow(flown(80, own("loop", null, run)))).isFalse();
        assertThat(slow(flown(80, own("loop", 90.0, run)))).isTrue();
        assertThat(slow(flown(80, own("loop", 70.0, run)))).isFalse();
    }

    private static List<String> told(Flight flight) {
        return flight.findings().stream().map(FlightFinding::code).toList();
    }

    @Test
    void repositionThatComesToItsPlaceIsNotMentionedAndOneThatCannotIsToldByHowMuch() {
        assertThat(told(flown(120, own("reposition", null, new Element.Reposition(-1200, 1500, 120, 50, 1)))))
                .isEmpty();
        Flight high = flown(120, own("reposition", null, new Element.Reposition(-1200, 9000, 120, 50, 1)));
        assertThat(high.findings())
                .filteredOn(f -> f.code().equals("misses-its-place"))
                .singleElement()
                .satisfies(f -> assertThat(f.message())
                        .matches("reposition does not come to the place it was given: it ends \\d+ ft too low.*"));
    }

    @Test
    void figureThatLacksSomethingHasTheNumbersOfTheMomentItWasLeftOutAt() {
        FigureFlight loop = flown(60, Figure.of("loop", "loop")).figures().get(0);

        assertThat(loop.completed()).isFalse();
        assertThat(loop.durationS()).isZero();
        assertThat(loop.leastMps()).isCloseTo(60 * KT_MPS, within(1e-9));
        assertThat(loop.lowestM()).isCloseTo(1500 * 0.3048, within(1e-9));
    }

    /** The wing of this biplane carries it down to 54 kt. */
    @Test
    void levelPassSlowerThanTheWingCanHoldIsTold() {
        Element idle = new Element.Line(Until.SECONDS, 3, 0);
        assertThat(told(flown(46, own("low pass", null, idle)))).contains("too-slow-to-hold");
        assertThat(told(flown(70, own("low pass", null, idle)))).doesNotContain("too-slow-to-hold");
    }

    /** A line of metres takes less time the faster it is begun; over 20 m thrust and drag change the speed by little. */
    @Test
    void variedEntrySpeedIsAddedToTheOneGiven() {
        Predictor predictor = Rig.predictor(CATALOGUE, 1500, 120, own("run", null, Rig.line(Until.METRES, 20)));
        double fast = predictor.durations(new Variation(1, 1, 1, 1, 1, 1, 6, 0, 0))[0];

        assertThat(fast).isCloseTo(20 / (120 * KT_MPS + 6), within(0.002));
    }

    /** Flown along the A-axis to a place in a wind that carries it there: 400 m at airspeed plus wind. */
    @Test
    void variedWindIsAddedToTheDays() {
        DayAir day = new DayAir(1013.25, 15, 270, 10, null);
        Predictor predictor = Rig.predictor(CATALOGUE, 1500, 120, day, own("run", null, Rig.line(Until.ALONG_M, 20)));
        double seconds = predictor.durations(new Variation(1, 1, 1, 1, 1, 1, 0, 5, 0))[0];

        assertThat(seconds).isCloseTo(20 / (130 * KT_MPS + 5), within(0.002));
    }

    /** Pauses vary with a standard deviation of 15 %: four fifths of a line of 10 s are within 1.2816 of them. */
    @Test
    void spreadOfALineOfSecondsIsThatOfThePauses() {
        Predictor predictor = Rig.predictor(CATALOGUE, 1500, 120, own("run", null, Rig.line(Until.SECONDS, 10)));
        Spread.Band band = new Spread(predictor, 3, Workers.ALONE)
                .fly(2000, share -> {})
                .bands()
                .get(0);

        assertThat(band.middleS()).isCloseTo(10, within(0.1));
        assertThat(band.lowS()).isCloseTo(10 - 1.28 * 1.5, within(0.15));
        assertThat(band.highS()).isCloseTo(10 + 1.28 * 1.5, within(0.15));
    }

    @Test
    void variationMustLeaveAnAircraft() {
        assertThat(new Variation(1, 0, 1, 1, 1, 0, 0, 0, 0).power()).isZero();
        assertThatThrownBy(() -> new Variation(0, 1, 1, 1, 1, 1, 0, 0, 0))
                .hasMessage("factors must be above 0, not 0.0, 1.0, 1.0, 1.0, 1.0, 1.0");
        assertThatThrownBy(() -> new Variation(1, 1, 0, 1, 1, 1, 0, 0, 0)).hasMessageContaining("not 1.0, 1.0, 0.0");
        assertThatThrownBy(() -> new Variation(1, 1, 1, 0, 1, 1, 0, 0, 0)).hasMessageContaining("1.0, 0.0, 1.0, 1.0");
        assertThatThrownBy(() -> new Variation(1, 1, 1, 1, 0, 1, 0, 0, 0)).hasMessageContaining("1.0, 0.0, 1.0");
    }
}
