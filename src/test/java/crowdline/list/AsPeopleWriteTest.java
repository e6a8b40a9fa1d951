package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much of whole letters is read: figures, what is said of them, and who flies, when and how long; by hands that were
 * written down, with what is true of them, before the reader saw them.
 */
class AsPeopleWriteTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    @ParameterizedTest
    @CsvSource({
        "nineteenth-mailbox.txt, 172, 162, 12, 128, 121, 25, 25, 0",
        "twentieth-mailbox.txt, 165, 151, 12, 88, 80, 23, 20, 0",
        "twenty-first-mailbox.txt, 171, 148, 20, 98, 90, 25, 24, 0",
        "twenty-second-mailbox.txt, 182, 171, 24, 119, 106, 33, 28, 0"
    })
    void noLessOfALetterIsReadThanBefore(
            String file,
            int figures,
            int found,
            int tooMany,
            int fields,
            int fieldsRight,
            int about,
            int aboutRight,
            int madeUp) {
        assertThat(Letter.read(Letter.of(file), READER))
                .isEqualTo(new Letter.Score(figures, found, tooMany, fields, fieldsRight, about, aboutRight, madeUp));
    }
}
