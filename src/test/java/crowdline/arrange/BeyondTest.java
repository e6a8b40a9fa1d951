package crowdline.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.ListReader;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists of every figure, asked for as no aircraft can fly it: each keeps its line, and sentences say what cannot be. */
class BeyondTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();

    private static ShowArranging.Made made(String list, String kind) {
        ShowArranging.Making making =
                id -> KindsFile.shipped().named(kind).airframe(id, "The aircraft", Sliders.TYPICAL);
        return new ShowArranging(CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(CATALOGUE).read(list),
                        making,
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null));
    }

    private static Arranged arranged(String list, String kind) {
        return made(list, kind).arranged();
    }

    @Tag("slow")
    @ParameterizedTest
    @CsvSource({
        "strong aerobatic monoplane, ' x 20'",
        "fast jet, ' at 1900 kt'",
        "aerobatic glider, ' at 59000 ft'",
        "old trainer, ' at 2 kt'"
    })
    void everyFigureAskedForBeyondWhatCanBeKeepsItsLine(String kind, String beyond) {
        List<String> names =
                CATALOGUE.entries().stream().map(CatalogueEntry::name).toList();
        Arranged made = arranged(names.stream().map(n -> n + beyond).collect(Collectors.joining("\n")), kind);

        assertThat(made.figures().stream().filter(f -> !f.transit()).map(Figure::figure))
                .containsExactlyInAnyOrderElementsOf(names);
    }

    @Test
    void moreOfAFigureThanOneCanHoldIsSaid() {
        assertThat(arranged("Cuban eight x 9", "strong aerobatic monoplane").findings())
                .extracting(f -> f.message())
                .contains(
                        "Cuban eight is asked for 9 times and drawn 6 times, as often as one figure can hold; write the rest"
                                + " as figures of their own");
        assertThat(arranged("Cuban eight x 3", "strong aerobatic monoplane").findings())
                .extracting(f -> f.message())
                .noneMatch(message -> message.contains("asked for"));
    }

    @Test
    void speedNoAircraftOfTheKindHasIsLeftOpen() {
        Arranged made = arranged("low pass at 1900 kt", "strong aerobatic monoplane");
        assertThat(made.findings())
                .extracting(f -> f.message())
                .anyMatch(
                        message -> message.startsWith("low pass is given 1,900 kt, and nothing is flown faster than"));
        assertThat(made.figures()).anyMatch(f -> f.figure().equals("low pass") && f.elements() != null);
    }

    @Test
    void heightThatIsNotHadIsSaid() {
        assertThat(arranged("take-off\nloop\nroll at 12000 ft", "old trainer").findings())
                .extracting(f -> f.message())
                .anyMatch(message -> message.matches(
                        "roll is given 12,000 ft, and begins at \\d,\\d{3} ft after about \\d+ minutes of"
                                + " climbing; given about 1,\\d00 ft it climbs for one"));
    }

    @Test
    void lowDownAFewFeetMoreAreSaidToo() {
        assertThat(arranged("loop at 900 ft\nImmelmann\nslow roll at 300 ft\nlow pass at 250 ft", "large biplane")
                        .findings())
                .extracting(f -> f.message())
                .anyMatch(message -> message.startsWith("slow roll begins at 3")
                        && message.contains("as near as it gets to the 300 ft it was given"));
    }
}
