package crowdline.console.live.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoundRowsTest {
    @ParameterizedTest
    @CsvSource({"0, 3, 0", "2, 3, 0", "3, 3, 1", "5, 3, 3", "5, 6, 0", "4, 4, 1"})
    void theOneThatIsOpenIsAmongThoseThereIsRoomFor(int open, int lines, int first) {
        List<FindView.Row> rows = IntStream.range(0, 6)
                .mapToObj(i -> new FindView.Row(i + 1, "Figure", "loop " + i, i == open))
                .toList();

        assertThat(FoundRows.firstShown(rows, lines)).isEqualTo(first);
    }
}
