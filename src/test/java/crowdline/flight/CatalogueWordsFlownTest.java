package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.leg.Sample;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the catalogue says of a figure is what its elements fly. */
class CatalogueWordsFlownTest {
    private static CatalogueEntry entry(String name) {
        return CatalogueFile.shipped().find(name).orElseThrow();
    }

    private static List<Sample> flown(String name) {
        return CatalogueFlightTest.fly(entry(name)).samples();
    }

    private static double headingRad(Sample sample) {
        return Math.atan2(sample.nose().y(), sample.nose().x());
    }

    @Test
    void loopIsHeavyAtTheBottomAndAlmostFloatsAtTheTop() {
        assertThat(entry("loop").pilotFeels()).contains("Several times the normal weight", "almost floating");
        List<Sample> loop = flown("loop");
        Sample top = loop.stream().max(Comparator.comparing(s -> s.place().z())).orElseThrow();
        assertThat(loop.get(0).g()).isGreaterThan(3);
        assertThat(top.g()).isBetween(0.0, 0.7);
    }

    @Test
    void rollingTurnIsHalfACircle() {
        assertThat(entry("rolling turn").whatItIs()).contains("half a circle");
        List<Sample> turn = flown("rolling turn");
        double turned = Math.abs(headingRad(turn.get(turn.size() - 1)) - headingRad(turn.get(0)));
        assertThat(turned).isCloseTo(Math.PI, within(0.1));
    }

    @Test
    void steepTurnShowsItsUndersideFirstAndCarriesTwice() {
        assertThat(entry("steep turn").lookFor()).startsWith("See its underside as it turns away");
        List<Sample> turn = flown("steep turn");
        Sample early = turn.get(turn.size() / 8);
        // The crowd looks along +y: what points away from it shows its other side.
        assertThat(early.up().y()).isGreaterThan(0.5);
        assertThat(early.g()).isGreaterThan(1.8);
    }

    @Test
    void chandelleEndsBackHigherAndSlower() {
        List<Sample> turn = flown("chandelle");
        Sample first = turn.get(0);
        Sample last = turn.get(turn.size() - 1);
        assertThat(last.nose().x()).isLessThan(-0.95);
        assertThat(last.place().z()).isGreaterThan(first.place().z() + 100);
        assertThat(last.speedMps()).isLessThan(0.85 * first.speedMps());
    }
}
