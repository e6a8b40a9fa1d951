package crowdline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class InTimeTest {
    private static int first(double tS, Double... at) {
        return InTime.firstAfter(List.of(at), Double::doubleValue, tS);
    }

    @Test
    void countsWhatIsAtAMomentOrBeforeIt() {
        Double[] at = {1.0, 2.0, 2.0, 5.0};
        assertThat(first(0.9, at)).isZero();
        assertThat(first(1, at)).isEqualTo(1);
        assertThat(first(1.5, at)).isEqualTo(1);
        assertThat(first(2, at)).isEqualTo(3);
        assertThat(first(4.9, at)).isEqualTo(3);
        assertThat(first(5, at)).isEqualTo(4);
        assertThat(first(99, at)).isEqualTo(4);
        assertThat(first(1)).isZero();
    }

    @Test
    void agreesWithLookingAtEachInTurn() {
        Double[] at = new Double[37];
        for (int i = 0; i < at.length; i++) {
            at[i] = i * 0.25;
        }
        for (double tS = -1; tS < 11; tS += 0.125) {
            int seen = 0;
            while (seen < at.length && at[seen] <= tS) {
                seen++;
            }
            assertThat(first(tS, at)).as("at %s", tS).isEqualTo(seen);
        }
    }
}
