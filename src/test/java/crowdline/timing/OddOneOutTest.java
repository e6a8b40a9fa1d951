package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class OddOneOutTest {
    /**
     * The example of B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers (1993), as repeated with its scores
     * 1.574, 0.6745, 0.225, 0.225, 0.6745, 1.574, 0.6745, 0.6745, 25.856 and 26.306 in public notebooks. Here the values
     * are logarithms.
     */
    private static final List<Double> PUBLISHED = List.of(2.1, 2.6, 2.4, 2.5, 2.3, 2.1, 2.3, 2.6, 8.2, 8.3);

    private final OddOneOut published =
            new OddOneOut(PUBLISHED.stream().map(Math::exp).toList(), 1e-9);

    @Test
    void agreesWithThePublishedScores() {
        List<Double> scores = List.of(
                1.57383333, 0.6745, 0.22483333, 0.22483333, 0.6745, 1.57383333, 0.6745, 0.6745, 25.85583333, 26.3055);
        for (int i = 0; i < scores.size(); i++) {
            assertThat(Math.abs(published.score(Math.exp(PUBLISHED.get(i)))))
                    .as("value %d", i + 1)
                    .isCloseTo(scores.get(i), within(1e-8));
        }
    }

    @Test
    void findsTheTwoThatThePublishedExampleFinds() {
        assertThat(PUBLISHED.stream().filter(x -> published.isOdd(Math.exp(x))).toList())
                .containsExactly(8.2, 8.3);
    }

    @Test
    void twoDurationsCannotTellWhichIsOdd() {
        OddOneOut rule = new OddOneOut(List.of(12.0, 30.0), 0.05);
        assertThat(rule.isOdd(30)).isFalse();
        assertThat(rule.isOdd(12)).isFalse();
    }

    @Test
    void ofThreeTheMiddleOneIsTheMiddle() {
        OddOneOut rule = new OddOneOut(List.of(30.0, 10.0, 12.0), 0.05);

        assertThat(rule.score(12)).isZero();
        assertThat(rule.score(11)).isNegative();
    }

    @Test
    void closeAgreementMakesNoOrdinaryDurationOdd() {
        OddOneOut rule = new OddOneOut(List.of(12.0, 12.0, 12.0, 13.5), 0.05);
        assertThat(rule.isOdd(13.5)).isFalse();
        assertThat(rule.isOdd(15)).isTrue();
    }

    @Test
    void ordinaryPassesAreSeldomOdd() {
        // A normal value is beyond 3.5 standard deviations once in 2,149 times; five durations know their own spread
        // less well, and may be called odd more often, but not often.
        assertThat(2 * NormalDistribution.of(0, 1).survivalProbability(3.5)).isCloseTo(1 / 2149.0, within(1e-6));
        Random random = new Random(5);
        int odd = 0;
        for (int i = 0; i < 10_000; i++) {
            List<Double> runs = Stream.generate(() -> 12 * Math.exp(0.05 * random.nextGaussian()))
                    .limit(5)
                    .toList();
            OddOneOut rule = new OddOneOut(runs, 0.05);
            odd += (int) runs.stream().filter(rule::isOdd).count();
        }
        assertThat(odd / 50_000.0).isLessThan(0.002);
    }
}
