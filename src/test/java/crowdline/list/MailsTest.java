package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.storage.show.CatalogueFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole e-mails, with what people write around a list. Under three dashes each says what is to be read in it. */
class MailsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "short-answer",
                "numbered",
                "all-prose",
                "helicopter",
                "two-versions",
                "spreadsheet",
                "parachutists",
                "one-line"
            })
    void aMailIsReadAsItsListAndItsNotes(String name) throws IOException {
        String file = "mails/" + name + ".txt";
        List<String> parts;
        try (var in = Objects.requireNonNull(MailsTest.class.getResourceAsStream(file), file)) {
            parts = List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("(?m)^---\\n"));
        }
        FigureList list = READER.read(parts.get(0));
        List<String> read = Stream.concat(
                        list.lines().stream().map(Spelt::said),
                        list.notes().stream().map(note -> "list note \"" + note + '"'))
                .toList();

        assertThat(read).containsExactlyElementsOf(parts.get(1).lines().toList());
    }
}
