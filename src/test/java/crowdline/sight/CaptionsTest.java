package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.catalogue.Catalogue;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Flown;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is felt where, by common practice, no source: heavy in a pull, light over the top of a loop, hanging when pushed. */
class CaptionsTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final FigureAlone ALONE = new FigureAlone(CATALOGUE);

    private static Flown flown(String name) {
        return ALONE.fly(CATALOGUE.find(name).orElseThrow()).flown();
    }

    private static List<String> words(String name) {
        return flown(name).captions().stream().map(Caption::words).toList();
    }

    @Test
    void pullIsToldWithHowHeavyItGetsAndNotHowHeavyItIsAsItBegins() {
        assertThat(words("loop"))
                .anyMatch(w -> w.matches("pulls up: (four|four and a half|five|five and a half|six) times as heavy"));
    }

    @Test
    void topOfAStallTurnAndASlideFloat() {
        assertThat(words("stall turn")).contains("pivots: nearly floating");
        assertThat(words("tail slide")).contains("slides backwards: nearly floating");
    }

    @Test
    void pushedItHangsInTheStraps() {
        assertThat(words("outside loop")).anyMatch(w -> w.contains("hanging in the straps"));
        assertThat(words("inverted pass")).contains("rolls upright: lifted into the straps");
    }

    /** Heavy, a roll underneath through upside down, and heavy the other way. */
    @Test
    void turnIsToldWithHowHeavyItGetsOnEitherSideOfTheRollBetween() {
        assertThat(words("Derry turn"))
                .startsWith("begins", "the turn begins: twice as heavy", "the turn ends", "rolls")
                .endsWith("the turn begins: twice as heavy", "the turn ends", "flies out")
                .anyMatch(w -> w.startsWith("upside down"));
        assertThat(words("steep turn")).anyMatch(w -> w.matches("the turn begins: .* as heavy"));
    }

    @Test
    void levelFlightIsNothingToTell() {
        assertThat(words("low pass")).containsExactly("begins", "flies out");
    }

    @Test
    void everyFigureIsToldFromItsBeginningToItsEndInOrder() {
        CATALOGUE.entries().stream()
                .filter(e -> !e.elements().isEmpty())
                .map(e -> ALONE.fly(e).flown())
                .forEach(flown -> {
                    assertThat(flown.isEmpty()).isFalse();
                    assertThat(flown.captions()).isSortedAccordingTo((a, b) -> Double.compare(a.atS(), b.atS()));
                    assertThat(flown.captions().get(0).atS()).isEqualTo(flown.fromS());
                    assertThat(flown.poses()).isSortedAccordingTo((a, b) -> Double.compare(a.tS(), b.tS()));
                });
    }
}
