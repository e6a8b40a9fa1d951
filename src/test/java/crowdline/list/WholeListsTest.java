package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many figures of whole lists are read, line after line, by hands that were written down before the reader saw them. */
class WholeListsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    /** What is read in another place, or besides, is counted as too much. */
    @ParameterizedTest
    @CsvSource({"eighth-hands.txt, 107, 18, 16", "ninth-hands.txt, 130, 5, 7", "tenth-hands.txt, 76, 9, 12"})
    void noFewerFiguresAreReadThanBefore(String file, int figures, int missed, int tooMany) {
        int all = 0;
        int found = 0;
        int read = 0;
        for (List<Spelt> list : lists(file)) {
            List<String> expected = list.stream()
                    .flatMap(row -> Stream.of(row.expected().split(" ; ")))
                    .map(WholeListsTest::named)
                    .toList();
            String text = String.join("\n", list.stream().map(Spelt::text).toList());
            List<String> said = READER.read(text).lines().stream()
                    .map(line -> named(Spelt.said(line)))
                    .toList();
            all += expected.size();
            read += said.size();
            found += inOrder(expected, said);
        }

        assertThat(all).isEqualTo(figures);
        assertThat(all - found).as("missed").isEqualTo(missed);
        assertThat(read - found).as("too many").isEqualTo(tooMany);
    }

    /** A list is the rows between two remarks, each of which says whose it is. */
    private static List<List<Spelt>> lists(String file) {
        List<List<Spelt>> lists = new ArrayList<>();
        for (String row : Spelt.written(file)) {
            if (row.startsWith("#")) {
                lists.add(new ArrayList<>());
            } else {
                lists.get(lists.size() - 1).add(Spelt.row(row));
            }
        }
        return lists;
    }

    private static String named(String said) {
        return said.replaceFirst(", .*", "");
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
