package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorthsTest {
    private static List<Item> floating(int count) {
        Random random = new Random(count);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Candidate fact = Acts.candidate("fact" + i, RemarkKind.FACT, null, 3);
            items.add(new Item(fact, -1, i, List.of(), random.nextInt(1_000_000)));
        }
        return items;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 8, 9, 16, 63, Search.MOST_FLOATING})
    void areTheSumOfEach(int count) {
        List<Item> items = floating(count);
        Worths worths = new Worths(items);
        long all = count == Long.SIZE ? -1 : (1L << count) - 1;
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            long set = i == 0 ? all : random.nextLong() & all;
            long sum = items.stream()
                    .filter(item -> (set >>> item.bit() & 1) != 0)
                    .mapToLong(Item::greatestValue)
                    .sum();
            assertThat(worths.of(set)).as("of %x", set).isEqualTo(sum);
        }
    }

    @Test
    void nothingIsWorthNothing() {
        assertThat(new Worths(List.of()).of(0)).isZero();
        assertThat(new Worths(floating(12)).of(0)).isZero();
    }
}
