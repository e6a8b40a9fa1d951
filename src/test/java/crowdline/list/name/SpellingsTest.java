package crowdline.list.name;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.ListReader;
import crowdline.list.Spelt;
import crowdline.storage.show.CatalogueFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How people write what is flown, row by row. */
class SpellingsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    static Stream<Spelt> spellings() {
        return Spelt.rows("spellings.txt");
    }

    @Test
    void thereAreEnoughSpellings() {
        assertThat(spellings()).hasSizeGreaterThan(250);
    }

    @ParameterizedTest
    @MethodSource("spellings")
    void aSpellingIsReadAsItsRowSays(Spelt spelt) {
        assertThat(Spelt.said(READER.read(spelt.text()))).isEqualTo(spelt.expected());
    }
}
