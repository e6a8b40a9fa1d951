package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Reading;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LookBackTest {
    private final Display display;
    private final Map<Long, Truth> flights = new HashMap<>();

    LookBackTest() throws ShowFileException {
        display = FollowTrial.display("jackanapes-solo");
    }

    /** Flown once for all that is asked of it. */
    private Truth flight(long seed) {
        return flights.computeIfAbsent(
                seed, s -> Scenario.plain("", 0.10, 0, Radio.good(5)).fly(display, s));
    }

    private static List<Reading> received(Truth truth, long seed) {
        return Radio.good(5).receive(truth, new SplittableRandom(seed));
    }

    /** What was said is half a second early, then half a second late; the bend of the pull-up stays where it is. */
    @Test
    void bendSaysWhenALoopBeganWhateverWasSaid() {
        LookBack back = new LookBack(display.plan);
        for (long seed = 5000; seed < 5005; seed++) {
            Truth truth = flight(seed);
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
        Truth truth = flight(5000);
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

    /** Flown as planned but for size, way round, place and time; the figure begins at 110 s. */
    private static List<Reading> flown(Vec beforeMps, Vec afterMps, double mirror, double hertz) {
        return IntStream.rangeClosed((int) (-6 * hertz), (int) (6 * hertz))
                .mapToObj(i -> {
                    Vec place = (i < 0 ? beforeMps : afterMps).times(0.9 * i / hertz);
                    return new Reading(
                            110 + i / hertz, 70 + mirror * place.x(), place.y() - 40, place.z() + 25, null, null);
                })
                .toList();
    }

    /** A change of speed, of course and of climb; only a pull is begun 0.2 s before the path has it. */
    @Test
    void changeOfVelocityOnAnyAxisSaysWhenItCame() {
        Vec before = new Vec(60, 0, 0);
        for (Vec after : List.of(new Vec(90, 0, 0), new Vec(60, 30, 0), new Vec(60, 0, -30))) {
            LookBack back = new LookBack(Small.kink(before, after));
            double began = 110 - (after.z() == 0 ? 0 : 0.2);
            for (double mirror : new double[] {-1, 1}) {
                for (double wrong : new double[] {-0.7, 0, 0.7}) {
                    assertThat(back.begin(0, 1, 110 + wrong, flown(before, after, mirror, 5)))
                            .as("%s, %s, said %s s late", after, mirror, wrong)
                            .isCloseTo(began, within(0.101));
                }
            }
        }
    }

    /** Within 2 s of what was said there are four readings, within 4 s eight; with one fewer nothing is compared. */
    @Test
    void whereReadingsAreFewItLooksTwiceAsFarAndNeedsEight() {
        Vec before = new Vec(60, 0, 0);
        Vec after = new Vec(60, 30, 0);
        LookBack back = new LookBack(Small.kink(before, after));
        List<Reading> log = flown(before, after, 1, 1);
        assertThat(back.begin(0, 1, 110.4, log)).isCloseTo(110, within(0.11));
        assertThat(back.begin(0, 1, 110.4, log.subList(0, 10))).isEqualTo(110.4);
    }

    /** The bend came 2.5 s after it was said; further than a second and a half from that it is not looked for. */
    @Test
    void searchGoesNoFurtherThanASecondAndAHalf() {
        Vec before = new Vec(60, 0, 0);
        Vec after = new Vec(60, 30, 0);
        double began = new LookBack(Small.kink(before, after)).begin(0, 1, 107.9, flown(before, after, 1, 10));
        assertThat(began).isBetween(107.9, 107.9 + 1.5 + 1e-9);
    }

    /** Planned level, then a climb: whichever way the bend goes, one half its size says as well when it came. */
    @Test
    void smallerBendThanPlannedIsFoundToo() {
        Vec before = new Vec(60, 0, 0);
        LookBack back = new LookBack(Small.kink(before, new Vec(60, 30, 0)));
        assertThat(back.begin(0, 1, 110.5, flown(before, new Vec(60, 18, 0), 1, 5)))
                .isCloseTo(110, within(0.11));
    }

    @Test
    void placeAroundTheJoinIsMeasuredFromIt() {
        Bins bins = Small.plan(50, 40).bins;
        Join planned = new Join(bins, 0, 1);
        assertThat(planned.alongM(0)).isZero();
        assertThat(planned.alongM(1)).isCloseTo(60, within(1e-9));
        assertThat(planned.alongM(-1)).isCloseTo(-60, within(1e-9));
        Join lastThenFirst = new Join(bins, 1, 0);
        assertThat(lastThenFirst.alongM(-1)).isCloseTo(-60, within(1e-9));
        assertThat(lastThenFirst.alongM(1)).isCloseTo(60, within(1e-9));
    }

    /**
     * Half of what the follower says live is off by more than a quarter of a second. Over many flights nine of ten are within
     * 0.6 s; a few have a looser floor.
     */
    @Tag("slow")
    @Test
    void boundariesOfALogAreMostlyWithinTwoTenthsOfASecond() {
        Score score = new Score();
        for (long seed = 5000; seed < 5005; seed++) {
            Truth truth = flight(seed);
            score.count(truth, Boundaries.of(display.plan, received(truth, seed)));
        }
        assertThat(score.lookedBackMedianS()).isLessThan(0.2);
        assertThat(score.lookedBackNinetyS()).isLessThan(0.7);
    }

    /** As many loggers write; what was said is a second late at worst, and half a second on average. */
    @Tag("slow")
    @Test
    void logOfOneReadingASecondIsLookedBackAtTwiceAsFar() {
        Score score = new Score();
        for (long seed = 5000; seed < 5005; seed++) {
            Truth truth = flight(seed);
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
        double[] later = Join.withoutItsLine(new double[] {100, 101, 102, 103, 104}, new double[] {50, 51, 54, 59, 66});
        assertThat(later).as("whenever and wherever it was").containsExactly(bent, within(1e-9));
        assertThat(Join.withoutItsLine(new double[] {7}, new double[] {3})).containsExactly(0);
    }
}
