package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialDifferenceTest {
    private static TrialFlight flight(long seed, double right) {
        return new TrialFlight("act", "10 % varied, 5 Hz", seed, right, 0.1 / 3, 0.3, 0.2);
    }

    /** The flights differ by twenty from each other, and by one or two from what they were. */
    @Test
    void flightsAreComparedWithThemselves() {
        List<TrialFlight> before = List.of(flight(1, 70), flight(2, 80), flight(3, 90), flight(4, 60));
        List<TrialFlight> now = List.of(flight(3, 91), flight(1, 72), flight(2, 81), flight(9, 10));
        assertThat(new TrialDifference(before, now).table())
                .containsPattern("10 % varied, 5 Hz +3 +\\+1\\.33 ± 0\\.33 +\\+0\\.00 ± 0\\.00");
    }

    /** Of 1, 2 and 6 the standard deviation is the root of 7. */
    @Test
    void standardErrorIsThatOfTheMean() {
        assertThat(TrialDifference.standardError(new double[] {1, 2, 6})).isCloseTo(Math.sqrt(7.0 / 3), within(1e-12));
        assertThat(TrialDifference.standardError(new double[] {5})).isZero();
    }

    @Test
    void flightsAreReadAsTheyWereWritten(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("flights");
        List<TrialFlight> flights = List.of(flight(1, 100.0 / 7), flight(2, 98.5));
        TrialFlight.write(file, flights);
        assertThat(TrialFlight.read(file)).isEqualTo(flights);
    }
}
