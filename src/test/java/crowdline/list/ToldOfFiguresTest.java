package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much of what whole mails say of their figures is read: how often, where, which way, how high, how fast, how long. */
class ToldOfFiguresTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static final Set<String> DETAILS = Set.of("count", "place", "side", "flies", "height", "entry", "seconds");

    /** A figure and what is said of it. */
    private record Figure(String name, Set<String> told) {
        static Figure of(String said) {
            List<String> parts = List.of(said.split(", "));
            return new Figure(
                    parts.get(0).startsWith("\"") ? "\"" : parts.get(0),
                    parts.stream()
                            .skip(1)
                            .filter(part -> DETAILS.contains(part.replaceFirst(" .*", "")))
                            .filter(part -> !part.equals("count 1"))
                            .collect(Collectors.toUnmodifiableSet()));
        }
    }

    /** Of the figures that are read in their place. */
    @ParameterizedTest
    @CsvSource({
        "twelfth-mailbox.txt, 161, 2, 2",
        "thirteenth-mailbox.txt, 112, 5, 4",
        "fourteenth-mailbox.txt, 88, 5, 7"
    })
    void noLessOfWhatIsSaidOfFiguresIsReadThanBefore(String file, int told, int missed, int invented) {
        int all = 0;
        int right = 0;
        int said = 0;
        StringBuilder text = new StringBuilder();
        for (String line : Spelt.written(file)) {
            if (line.startsWith("= ")) {
                List<Figure> expected = Stream.of(line.substring(2).split(" ; "))
                        .map(Figure::of)
                        .toList();
                List<Figure> read = READER.read(text.toString()).lines().stream()
                        .map(figure -> Figure.of(Spelt.said(figure)))
                        .toList();
                for (Figure[] pair : inOrder(expected, read)) {
                    all += pair[0].told().size();
                    said += pair[1].told().size();
                    right += (int) pair[0].told().stream()
                            .filter(pair[1].told()::contains)
                            .count();
                }
                text.setLength(0);
            } else if (!line.startsWith("# ")) {
                text.append(line.equals(".") ? "" : line).append('\n');
            }
        }

        assertThat(List.of(all, all - right, said - right))
                .as("told, missed, invented")
                .containsExactly(told, missed, invented);
    }

    /** The figures of both that stand in the same order, as many as there are. */
    private static List<Figure[]> inOrder(List<Figure> first, List<Figure> second) {
        int[][] most = new int[first.size() + 1][second.size() + 1];
        for (int i = first.size() - 1; i >= 0; i--) {
            for (int j = second.size() - 1; j >= 0; j--) {
                most[i][j] = first.get(i).name().equals(second.get(j).name())
                        ? most[i + 1][j + 1] + 1
                        : Math.max(most[i + 1][j], most[i][j + 1]);
            }
        }
        List<Figure[]> pairs = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < first.size() && j < second.size()) {
            if (first.get(i).name().equals(second.get(j).name()) && most[i][j] == most[i + 1][j + 1] + 1) {
                pairs.add(new Figure[] {first.get(i++), second.get(j++)});
            } else if (most[i + 1][j] >= most[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
        return pairs;
    }
}
