package crowdline.show.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    /** Worked by hand from the definition: one for each letter inserted, dropped, changed, or pair swapped. */
    @ParameterizedTest
    @CsvSource({
        "loop,loop,0",
        "lop,loop,1",
        "lopo,loop,1",
        "kitten,sitting,3",
        "'',abc,3",
        "heigth,height,1",
        "ca,abc,3"
    })
    void distanceCountsLettersAndSwaps(String a, String b, int distance) {
        assertThat(Nearest.distance(a, b)).isEqualTo(distance);
        assertThat(Nearest.distance(b, a)).isEqualTo(distance);
    }

    @Test
    void nearestNameIsFoundAndAFarOneIsNot() {
        List<String> names = List.of("loop", "spin", "stall turn", "heightFt");
        assertThat(Nearest.to("Lop", names)).contains("loop");
        assertThat(Nearest.to("heigthFt", names)).contains("heightFt");
        assertThat(Nearest.to("stal trun", names)).contains("stall turn");
        assertThat(Nearest.to("xyz", names)).isEmpty();
        assertThat(Nearest.to("", names)).isEmpty();
    }

    @Test
    void hintIsReadyToFollowASentence() {
        assertThat(Nearest.hint("lop", List.of("loop"))).isEqualTo("; did you mean \"loop\"?");
        assertThat(Nearest.hint("zzz", List.of("loop"))).isEmpty();
    }
}
