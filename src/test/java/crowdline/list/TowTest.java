package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a glider's act begins: on a rope, and with letting it go. */
class TowTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Off tow at 4000 ft | tow release",
                "I release over the middle at 1100 metres | tow release",
                "Tow to 1200 m | tow",
                "Aero-tow | tow",
                "Glider releases (smoke on) | tow release",
                "Release the rope | tow release",
                "Aerotow release, 900 m | tow release",
                "Brakes release and go | take-off",
                "Take off on tow | take-off"
            })
    void eachWayToSayIt(String line, String figure) {
        assertThat(READER.read(line + "\nloop\nstall turn").lines())
                .extracting(ListLine::figure)
                .containsExactly(figure, "loop", "stall turn");
    }

    @Test
    void theHeightOfTheReleaseIsItsOwn() {
        ListLine release =
                READER.read("Release at 3,500 ft\nloop\nspin").lines().get(0);

        assertThat(release.heightFt()).isEqualTo(3500);
    }

    @Test
    void itLetsGoAsHighAsItWasTowed() {
        var lines = READER.read("Tow to 3000 ft\nRelease\nloop").lines();
        var other = READER.read("Tow to 3000 ft\nRelease at 2900 ft\nloop").lines();

        assertThat(lines).extracting(ListLine::heightFt).containsExactly(3000.0, 3000.0, null);
        assertThat(other).extracting(ListLine::heightFt).containsExactly(3000.0, 2900.0, null);
    }

    @Test
    void namedAgainItIsOnlySpokenOf() {
        var list = READER.read("Release at 1200 m.\nLoop.\nStall turn.\nMusic from the release, please.");

        assertThat(list.lines()).extracting(ListLine::figure).containsExactly("tow release", "loop", "stall turn");
        assertThat(list.notes()).anyMatch(note -> note.contains("from the release"));
    }
}
