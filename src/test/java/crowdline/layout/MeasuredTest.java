package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.measure.Units;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a figure needs, measured one way, is what it needs the other way in still air. */
class MeasuredTest {
    private static final double HEIGHT_M = 300;

    @ParameterizedTest
    @ValueSource(strings = {"light aerobatic biplane", "fast jet"})
    void theOtherWayIsMeasuredAsFromNothing(String kind) {
        FigureTrial trial = new FigureTrial(
                KindsFile.shipped().named(kind).airframe("a", "The aircraft", Sliders.TYPICAL), Air.STANDARD);
        List<CatalogueEntry> entries = CatalogueFile.shipped().entries();
        for (int i = 0; i < entries.size(); i += 6) {
            CatalogueEntry e = entries.get(i);
            Wish wish = LayoutTest.a(e.name()).made(e.name());
            Measured right = Measured.of(wish, trial, true, HEIGHT_M, true);
            Measured left = Measured.of(wish, trial, false, HEIGHT_M, true);
            Measured sooner = right.theOtherWay(wish, trial, false, HEIGHT_M, true);

            assertThat(sooner.lack()).as(e.name()).isEqualTo(left.lack());
            assertThat(sooner.toRight()).as(e.name()).isFalse();
            assertThat(sooner.slowestMps()).as(e.name()).isEqualTo(left.slowestMps(), within(0.1));
            assertThat(sooner.fastestMps()).as(e.name()).isEqualTo(left.fastestMps(), within(0.1));
            assertThat(sooner.leftM()).as(e.name()).isEqualTo(left.leftM(), within(1.0));
            assertThat(sooner.end().toRight()).as(e.name()).isEqualTo(left.end().toRight());
        }
    }

    /** Of the usual 110 kt a Cuban eight of a glider comes out 60 ft lower than it began: reviewed in the list of what kinds lack. */
    @Test
    void whatWouldComeOutLowIsBegunFaster() {
        FigureTrial trial = new FigureTrial(
                KindsFile.shipped().named("aerobatic glider").airframe("a", "The aircraft", Sliders.TYPICAL),
                Air.STANDARD);
        Measured measured = Measured.of(LayoutTest.a("Cuban eight").made("it"), trial, true, HEIGHT_M, true);

        assertThat(measured.isWell()).isTrue();
        assertThat(Units.ktFromMps(measured.mps())).isGreaterThan(112);
        assertThat(measured.downM()).isGreaterThan(-10);
    }

    /** It would have to dive for more than its engine holds: a pilot begins higher. */
    @Test
    void nothingIsDivedForOnlyToComeOutAsHigh() {
        FigureTrial trial = new FigureTrial(
                KindsFile.shipped().named("aerobatic two-seater").airframe("a", "The aircraft", Sliders.TYPICAL),
                Air.STANDARD);
        Measured measured =
                Measured.of(LayoutTest.a("humpty bump with push top").made("it"), trial, true, HEIGHT_M, true);

        assertThat(measured.isLow()).isTrue();
        assertThat(trial.climbs(measured.mps(), HEIGHT_M)).isPositive();
    }
}
