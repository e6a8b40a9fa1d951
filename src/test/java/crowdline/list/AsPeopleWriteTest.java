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
        "nineteenth-mailbox.txt, 172, 165, 1, 131, 126, 25, 25, 0",
        "twentieth-mailbox.txt, 165, 155, 8, 92, 86, 23, 22, 0",
        "twenty-first-mailbox.txt, 171, 153, 17, 101, 96, 25, 25, 0",
        "twenty-second-mailbox.txt, 182, 173, 9, 120, 110, 33, 31, 0",
        "twenty-third-mailbox.txt, 163, 154, 12, 120, 117, 30, 30, 1",
        "twenty-fourth-mailbox.txt, 166, 158, 10, 126, 120, 31, 31, 0"
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
