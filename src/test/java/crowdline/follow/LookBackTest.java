package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Reading;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LookBackTest {
    private static Display display;

    @BeforeAll
    static void predict() throws ShowFileException {
        display = FollowTrial.display("jackanapes-solo");
    }

    private static List<Reading> received(Truth truth, long seed) {
        return Radio.good(5).receive(truth, new SplittableRandom(seed));
    }

    /** What was said is half a second early, then half a second late; the bend of the pull-up stays where it is. */
    @Test
    void bendSaysWhenALoopBeganWhateverWasSaid() {
        LookBack back = new LookBack(display.plan);
        for (long seed = 5000; seed < 5005; seed++) {
            Truth truth = Scenario.plain("", 0.10, 0, Radio.good(5)).fly(display, seed);
            double began = truth.flown.get(2).startS();
            for (double wrong : new double[] {-0.5, 0, 0.5}) {
                assertThat(back.begin(1, 2, began + wrong, received(truth, seed)) - began)
                        .as("seed %d, said %s s late", seed, wrong)
                        .isBetween(-0.35, 0.35);
            }
        }
    }

    @Test
    void withoutReadingsOrAPredictedPathItStaysWithWhatWasSaid() {
        LookBack back = new LookBack(display.plan);
        Truth truth = Scenario.plain("", 0.10, 0, Radio.good(5)).fly(display, 5000);
        double began = truth.flown.get(2).startS();
        assertThat(back.begin(1, 2, began, List.of())).isEqualTo(began);
        assertThat(back.begin(0, 1, truth.flown.get(1).startS(), received(truth, 1)))
                .as("a take-off is only timed")
                .isEqualTo(truth.flown.get(1).startS());
    }

    /** A pull is begun a little before the path shows it; where there is no pull there is nothing to correct. */
    @Test
    void whereNothingBendsItStaysWithWhatWasSaid() {
        FollowPlan plan = Small.plan(50, 40);
        List<Reading> straight = IntStream.range(0, 60)
                .mapToObj(i -> new Reading(i * 0.2, 12.0 * i, 0, 300, 60.0, 0.0))
                .toList();
        assertThat(new LookBack(plan).begin(0, 0, 6, straight)).isCloseTo(6, within(0.1));
    }

    /**
     * Half of what the follower says live is off by more than a quarter of a second. Over many flights nine of ten are within
     * 0.6 s; a few have a looser floor.
     */
    @Test
    void boundariesOfALogAreMostlyWithinTwoTenthsOfASecond() {
        Score score = new Score();
        for (long seed = 5000; seed < 5005; seed++) {
            Truth truth = Scenario.plain("", 0.10, 0, Radio.good(5)).fly(display, seed);
            score.count(truth, Boundaries.of(display.plan, received(truth, seed)));
        }
        assertThat(score.lookedBackMedianS()).isLessThan(0.2);
        assertThat(score.lookedBackNinetyS()).isLessThan(0.7);
    }

    /** As many loggers write; what was said is a second late at worst, and half a second on average. */
    @Test
    void logOfOneReadingASecondIsLookedBackAtTwiceAsFar() {
        Score score = new Score();
        for (long seed = 5000; seed < 5005; seed++) {
            Truth truth = Scenario.plain("", 0.10, 0, Radio.good(1)).fly(display, seed);
            List<Reading> log = Radio.good(1).receive(truth, new SplittableRandom(seed));
            score.count(truth, Boundaries.of(display.plan, log));
        }
        assertThat(score.lookedBackMedianS()).isLessThan(0.3);
    }

    @Test
    void whatIsLeftWithoutItsLineIsTheBend() {
        double[] t = {0, 1, 2, 3, 4};
        assertThat(Join.withoutItsLine(t, new double[] {5, 7, 9, 11, 13})).containsOnly(0);
        double[] bent = Join.withoutItsLine(t, new double[] {0, 1, 4, 9, 16});
        assertThat(bent).containsExactly(new double[] {2, -1, -2, -1, 2}, within(1e-12));
    }
}
