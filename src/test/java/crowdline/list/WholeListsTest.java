package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How many figures of whole lists are read, by hands that were written down before the reader saw them. */
class WholeListsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    /** A text and the figures that are in it, in order; something else that is flown is {@value #OTHER}. */
    private record Sent(String text, List<String> figures) {}

    private static final Pattern WORD = Pattern.compile("[\\p{L}\\d]+");

    private static final String OTHER = "\"";

    /** "8 min" made it a figure of eight minutes, in which nothing flew. */
    @ParameterizedTest
    @ValueSource(strings = {"Piston fighter - 8 min", "4 ship", "Jet trainer solo, 9 minutes"})
    void aFirstLineThatSaysWhatFliesIsNoFigure(String heading) {
        FigureList list = READER.read(heading + "\nloop\nbarrel roll\nlow pass");

        assertThat(list.lines()).extracting(ListLine::figure).containsExactly("loop", "barrel roll", "low pass");
        assertThat(list.notes()).contains(heading);
    }

    /** What is read in another place, or besides, is counted as too much. */
    @ParameterizedTest
    @CsvSource({
        "eighth-hands.txt, 107, 15, 11",
        "ninth-hands.txt, 131, 5, 5",
        "tenth-hands.txt, 78, 6, 9",
        "eleventh-hands.txt, 275, 11, 8"
    })
    void noFewerFiguresOfAListAreReadThanBefore(String file, int figures, int missed, int tooMany) {
        assertRead(lists(file), figures, missed, tooMany);
    }

    @ParameterizedTest
    @CsvSource({
        "mailbox.txt, 219, 12, 18",
        "second-mailbox.txt, 208, 10, 17",
        "third-mailbox.txt, 131, 3, 7",
        "fourth-mailbox.txt, 117, 11, 18",
        "fifth-mailbox.txt, 393, 33, 46",
        "sixth-mailbox.txt, 316, 28, 64",
        "seventh-mailbox.txt, 197, 18, 53",
        "eighth-mailbox.txt, 173, 23, 67",
        "ninth-mailbox.txt, 166, 17, 70",
        "tenth-mailbox.txt, 179, 32, 85",
        "eleventh-mailbox.txt, 311, 10, 15",
        "twelfth-mailbox.txt, 342, 12, 22",
        "thirteenth-mailbox.txt, 248, 12, 9",
        "fourteenth-mailbox.txt, 197, 5, 3",
        "fifteenth-mailbox.txt, 326, 9, 6",
        "sixteenth-mailbox.txt, 232, 4, 2",
        "seventeenth-mailbox.txt, 230, 8, 7",
        "eighteenth-mailbox.txt, 115, 2, 1"
    })
    void noFewerFiguresOfAMailAreReadThanBefore(String file, int figures, int missed, int tooMany) {
        assertRead(mails(file), figures, missed, tooMany);
    }

    /** "After the loop it's a slow roll" lost its first words. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "mailbox.txt",
                "second-mailbox.txt",
                "third-mailbox.txt",
                "fourth-mailbox.txt",
                "fifth-mailbox.txt",
                "sixth-mailbox.txt",
                "seventh-mailbox.txt",
                "eighth-mailbox.txt",
                "ninth-mailbox.txt",
                "tenth-mailbox.txt",
                "eleventh-mailbox.txt",
                "twelfth-mailbox.txt",
                "thirteenth-mailbox.txt",
                "fourteenth-mailbox.txt",
                "fifteenth-mailbox.txt",
                "sixteenth-mailbox.txt",
                "seventeenth-mailbox.txt",
                "eighteenth-mailbox.txt",
                "nineteenth-mailbox.txt",
                "twentieth-mailbox.txt",
                "twenty-first-mailbox.txt",
                "twenty-second-mailbox.txt",
                "twenty-third-mailbox.txt",
                "twenty-fourth-mailbox.txt"
            })
    void noWordOfAMailIsLost(String file) {
        for (Sent mail : mails(file)) {
            FigureList list = READER.read(mail.text());
            Map<String, Integer> kept =
                    words(Stream.concat(list.lines().stream().map(ListLine::text), list.notes().stream())
                            .collect(Collectors.joining(" ")));

            assertThat(words(mail.text()))
                    .allSatisfy((word, times) ->
                            assertThat(kept.getOrDefault(word, 0)).as(word).isGreaterThanOrEqualTo(times));
        }
    }

    private static Map<String, Integer> words(String text) {
        Map<String, Integer> words = new HashMap<>();
        WORD.matcher(text).results().forEach(found -> words.merge(found.group(), 1, Integer::sum));
        return words;
    }

    private static void assertRead(List<Sent> lists, int figures, int missed, int tooMany) {
        int all = 0;
        int found = 0;
        int read = 0;
        for (Sent list : lists) {
            List<String> said = READER.read(list.text()).lines().stream()
                    .map(line -> line.figure() == null ? OTHER : line.figure())
                    .toList();
            all += list.figures().size();
            read += said.size();
            found += inOrder(list.figures(), said);
        }

        assertThat(all).isEqualTo(figures);
        assertThat(all - found).as("missed").isEqualTo(missed);
        assertThat(read - found).as("too many").isEqualTo(tooMany);
    }

    /** A list is the rows between two remarks, each of which says whose it is. */
    private static List<Sent> lists(String file) {
        List<List<Spelt>> lists = new ArrayList<>();
        for (String row : Spelt.written(file)) {
            if (row.startsWith("#")) {
                lists.add(new ArrayList<>());
            } else {
                lists.get(lists.size() - 1).add(Spelt.row(row));
            }
        }
        return lists.stream()
                .map(rows -> new Sent(
                        rows.stream().map(Spelt::text).collect(Collectors.joining("\n")),
                        rows.stream()
                                .flatMap(row -> figures(row.expected()).stream())
                                .toList()))
                .toList();
    }

    /** A mail ends with what is flown in it. */
    private static List<Sent> mails(String file) {
        List<Sent> mails = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (String line : Spelt.written(file)) {
            if (line.startsWith("= ")) {
                mails.add(new Sent(text.toString(), figures(line.substring(2))));
                text.setLength(0);
            } else if (!line.startsWith("# ") && !Letter.isAbout(line)) {
                text.append(line.equals(".") ? "" : line).append('\n');
            }
        }
        return mails;
    }

    private static List<String> figures(String expected) {
        return Stream.of(expected.strip().split(" ; "))
                .filter(figure -> !figure.isEmpty())
                .map(figure -> figure.startsWith(OTHER) ? OTHER : figure.replaceFirst(", .*", ""))
                .toList();
    }

    /** How many of the first stand in the second in the same order, at most. */
    private static int inOrder(List<String> first, List<String> second) {
        int[][] most = new int[first.size() + 1][second.size() + 1];
        for (int i = first.size() - 1; i >= 0; i--) {
            for (int j = second.size() - 1; j >= 0; j--) {
                most[i][j] = first.get(i).equals(second.get(j))
                        ? most[i + 1][j + 1] + 1
                        : Math.max(most[i + 1][j], most[i][j + 1]);
            }
        }
        return most[0][0];
    }
}
