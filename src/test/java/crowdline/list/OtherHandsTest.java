package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** Styles of which the reader does not understand all yet: what it reads as its row says stays so in number. */
    @ParameterizedTest
    @CsvSource({"phone-hands.txt, 138, 162", "club-hands.txt, 89, 98"})
    void noFewerRowsAreReadAsTheySayThanBefore(String file, int wholly, int figures) {
        List<Spelt> rows = Spelt.rows(file).toList();
        List<Spelt> wrong = rows.stream()
                .filter(row -> !Spelt.said(READER.read(row.text())).equals(row.expected()))
                .toList();
        List<Spelt> wrongFigures = wrong.stream()
                .filter(row -> !figures(Spelt.said(READER.read(row.text()))).equals(figures(row.expected())))
                .toList();

        assertThat(rows.size() - wrong.size()).as("wrong: %s", wrong).isEqualTo(wholly);
        assertThat(rows.size() - wrongFigures.size())
                .as("wrong figures: %s", wrongFigures)
                .isEqualTo(figures);
    }

    private static List<String> figures(String said) {
        return Stream.of(said.split(" ; "))
                .map(line -> line.replaceFirst(", .*", ""))
                .toList();
    }
}
