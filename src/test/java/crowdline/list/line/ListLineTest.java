package crowdline.list.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ListLineTest {
    private static ListLine line(@Nullable String figure, @Nullable Double count, boolean sure, List<String> choices) {
        return new ListLine(
                "loop", figure, "loop", count, null, null, null, null, null, null, null, null, null, sure, choices);
    }

    @Test
    void whatIsNoFigureIsNeverSure() {
        assertThat(line(null, null, false, List.of("loop")).sure()).isFalse();
        assertThatThrownBy(() -> line(null, null, true, List.of())).hasMessageContaining("is no figure");
    }

    @Test
    void threeChoicesAreTheMost() {
        assertThat(line("loop", null, false, List.of("a", "b", "c")).choices()).hasSize(3);
        assertThatThrownBy(() -> line("loop", null, false, List.of("a", "b", "c", "d")))
                .hasMessageContaining("number of choices");
    }

    @Test
    void numbersOutOfRangeAreRefused() {
        assertThatThrownBy(() -> line("loop", 0.0, true, List.of())).hasMessageContaining("count");
        assertThatThrownBy(() -> line("loop", 101.0, true, List.of())).hasMessageContaining("count");
        assertThatThrownBy(() -> line("loop", Double.NaN, true, List.of())).hasMessageContaining("count");
    }
}
