package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Rig;
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

    /** Banked one way and heavy, then on underneath, and banked and heavy the other way the instant the roll ends. */
    @Test
    void derryTurnRollsUnderneathFromOneTurnIntoTheOther() {
        assertThat(entry("Derry turn").whatItIs())
                .isEqualTo(
                        "A turn one way, a roll on underneath through upside down, and at once a turn the other way.");
        List<Sample> all = flown("Derry turn");
        double bankDeg = Rig.kind("strong aerobatic monoplane").usual().turnBankDeg();
        List<Sample> under = all.stream().filter(s -> s.up().z() < 0).toList();
        Sample before = all.stream()
                .filter(s -> s.tS() < under.get(0).tS() && s.g() > 1.8)
                .reduce((a, b) -> b)
                .orElseThrow();
        Sample after = all.stream()
                .filter(s -> s.tS() > under.get(under.size() - 1).tS() && s.g() > 1.8)
                .findFirst()
                .orElseThrow();
        assertThat(Math.abs(before.rollDeg())).isCloseTo(bankDeg, within(2.0));
        assertThat(after.rollDeg()).isCloseTo(-before.rollDeg(), within(2.0));
        assertThat(before.g()).isCloseTo(1 / Math.cos(Math.toRadians(bankDeg)), within(0.1));
        assertThat(after.g()).isCloseTo(before.g(), within(0.1));
        assertThat(all)
                .filteredOn(s -> s.tS() > before.tS() && s.tS() < after.tS())
                .allSatisfy(s -> assertThat(Math.abs(s.rollDeg()))
                        .as("never through level")
                        .isGreaterThan(bankDeg - 2));
        Sample first = all.get(0);
        Sample last = all.get(all.size() - 1);
        assertThat(last.nose().minus(first.nose()).length()).isLessThan(0.06);
    }

    @Test
    void chandelleEndsBackHigherAndSlower() {
        List<Sample> turn = flown("chandelle");
        Sample first = turn.get(0);
        Sample last = turn.get(turn.size() - 1);
        assertThat(last.nose().x()).isLessThan(-0.95);
        assertThat(last.place().z()).isGreaterThan(first.place().z() + 100);
        assertThat(entry("chandelle").whyHard()).endsWith("little speed left.");
        assertThat(last.speedMps()).isBetween(0.4 * first.speedMps(), 0.65 * first.speedMps());
    }

    @Test
    void torqueRollRollsOnItsWayUpAndWhileItSlidesBack() {
        assertThat(entry("torque roll").whatItIs()).contains("climbs straight up, rolling", "stops and slides back");
        List<Sample> all = flown("torque roll");
        double up = 0;
        double back = 0;
        for (int i = 1; i < all.size(); i++) {
            Sample before = all.get(i - 1);
            Sample now = all.get(i);
            if (Math.min(before.nose().z(), now.nose().z()) > 0.999) {
                double rolled = Math.toDegrees(Math.acos(Math.min(before.up().dot(now.up()), 1)));
                if (now.place().z() > before.place().z()) {
                    up += rolled;
                } else {
                    back += rolled;
                }
            }
        }
        assertThat(up).isGreaterThan(400);
        assertThat(back).isGreaterThan(45);
    }
}
