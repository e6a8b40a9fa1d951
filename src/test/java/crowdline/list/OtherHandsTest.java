package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.CatalogueFile;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the reader makes of styles it was not made from. */
class OtherHandsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    static Stream<Spelt> spellings() {
        return Stream.concat(
                Spelt.rows("other-hands.txt"),
                Stream.concat(
                        Stream.concat(Spelt.rows("later-hands.txt"), Spelt.rows("last-hands.txt")),
                        Stream.concat(Spelt.rows("plain-hands.txt"), Spelt.rows("tables.txt"))));
    }

    @ParameterizedTest
    @MethodSource("spellings")
    void aSpellingIsReadAsItsRowSays(Spelt spelt) {
        assertThat(Spelt.said(READER.read(spelt.text()))).isEqualTo(spelt.expected());
    }
}
