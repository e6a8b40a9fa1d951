package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is told of each figure, in hands that were written down before the reader saw them; the notes are free. */
class FreshHandsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());
    private static final String OFFERED = "?";

    static Stream<Spelt> spellings() {
        return Stream.of(
                        "many-hands.txt",
                        "further-hands.txt",
                        "third-hands.txt",
                        "fourth-hands.txt",
                        "fifth-hands.txt",
                        "sixth-hands.txt",
                        "seventh-hands.txt")
                .flatMap(Spelt::rows);
    }

    @ParameterizedTest
    @MethodSource("spellings")
    void eachFigureIsWhatItsRowSays(Spelt spelt) {
        List<String> expected = List.of(spelt.expected().split(" ; "));
        List<ListLine> lines = READER.read(spelt.text()).lines();

        assertThat(IntStream.range(0, lines.size())
                        .mapToObj(i -> told(lines.get(i), i < expected.size() ? expected.get(i) : ""))
                        .collect(Collectors.joining(" ; ")))
                .isEqualTo(String.join(" ; ", expected));
    }

    /** A line in the words of the table; the figure that the row asks for, if it is offered and the line is not sure. */
    private static String told(ListLine line, String expected) {
        String told = Spelt.said(line).replaceAll(", note \".*?\"(?=, unsure|$)|, unsure.*", "");
        String name = expected.replaceFirst(", .*", "");
        String figure = name.replace(OFFERED, "");
        boolean isOffered =
                !line.sure() && (figure.equals(line.figure()) || line.choices().contains(figure));
        return name.endsWith(OFFERED) && isOffered
                ? name + (told.contains(", ") ? told.substring(told.indexOf(", ")) : "")
                : told;
    }
}
