package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A few flights of {@link FollowTrial} with fixed seeds. */
@Tag("slow")
class FollowTrialTest {
    private static Display display;

    @BeforeAll
    static void predict() throws ShowFileException {
        display = FollowTrial.display("jackanapes-solo");
    }

    private static Score followed(Scenario scenario, long seed) {
        Score score = new Score();
        Truth truth = scenario.fly(display, seed);
        List<Reading> log = scenario.radio().receive(truth, new SplittableRandom(seed + 99));
        score.count(truth, FollowTrial.follow(display, scenario, truth, log));
        return score;
    }

    @Test
    void variedFlightIsFollowedAndTheClockAloneLosesIt() {
        Scenario scenario = Scenario.plain("", 0.10, 0, Radio.good(5));
        Score score = followed(scenario, 5000);
        assertThat(score.rightShare()).isGreaterThan(0.97);
        Score clock = new Score();
        Truth truth = scenario.fly(display, 5000);
        clock.count(truth, FollowTrial.byClock(display, truth));
        assertThat(clock.rightShare()).isLessThan(score.rightShare());
    }

    /**
     * A trial small enough for every build. Each floor is a little under what these flights reach; a change of the follower
     * that costs more is to be looked at with {@code scripts/trial --against}.
     *
     * @param right per cent of the time, at least
     * @param sureAndWrong per cent of the time, at most
     * @param lookedBackS mean error of a boundary found in the log, seconds, at most
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "'10 % varied, 5 Hz', 98.6, 0.06, 0.27",
        "'10 % varied, 1 Hz', 98.1, 0.05, 0.5",
        "'15 % varied, untold wind 4 m/s', 97.5, 0.20, 0.45",
        "'10 %, one figure dropped', 96.8, 0.05, 0.52",
        "'10 %, two figures swapped', 95.1, 0.55, 0.90",
        "'10 %, an extra reposition', 88.2, 4.2, 0.83",
        "'10 %, broken off to land', 92.5, 0.8, 0.6",
        "'10 %, frozen 4 s and jumps, 3 times', 98.2, 0.05, 0.40",
        "'5 % and all 15 % slower', 99.0, 0.04, 0.36",
    })
    void smallTrialStaysAboveItsFloors(String name, double right, double sureAndWrong, double lookedBackS) {
        Scenario scenario = Scenario.all().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
        Score score = new Score();
        for (long seed = 5000; seed < 5002; seed++) {
            Truth truth = scenario.fly(display, seed);
            List<Reading> log = scenario.radio().receive(truth, new SplittableRandom(seed + 99));
            List<FollowNow> heard = new ArrayList<>();
            score.count(truth, FollowTrial.follow(display, scenario, truth, log, heard));
            score.count(truth, Boundaries.said(display.plan, heard, log));
        }
        assertThat(100 * score.rightShare()).as("right").isGreaterThan(right);
        assertThat(100 * score.sureWrongShare()).as("sure and wrong").isLessThan(sureAndWrong);
        assertThat(score.lookedBackMeanS()).as("looked back at").isLessThan(lookedBackS);
    }

    @Test
    void logAloneGivesTheFiguresInTheirOrder() {
        Truth truth = Scenario.plain("", 0.05, 0, Radio.good(5)).fly(display, 5002);
        Boundaries found = Boundaries.of(display.plan, Radio.good(5).receive(truth, new SplittableRandom(1)));
        assertThat(found.figures()).extracting(Boundaries.Span::figureIndex).contains(2, 5, 9, 17);
        assertThat(found.dropped()).hasSizeLessThan(4);
    }

    @Test
    void firstFigureAfterATakeOffIsSeenToBeginWhereItIsPlannedHoweverLongThatTook() {
        for (long seed = 5003; seed < 5006; seed++) {
            Scenario scenario = Scenario.plain("", 0.15, 0, Radio.good(5));
            Truth truth = scenario.fly(display, seed);
            double begins = truth.flown.get(1).startS();
            double said =
                    FollowTrial.follow(
                                    display, scenario, truth, Radio.good(5).receive(truth, new SplittableRandom(seed)))
                            .stream()
                            .filter(s -> s.figure() == 1)
                            .findFirst()
                            .orElseThrow()
                            .tS();
            assertThat(said).as("seed %d", seed).isBetween(begins - 2, begins + 2);
        }
    }

    /** This take-off lasts 59 s and not 80. While it was held, it was said to go on for 43 s after it. */
    @Test
    void takeOffThatWasToldMayEndMuchEarlier() {
        Scenario scenario = Scenario.plain("", 0.15, 0, new Radio(5, 0.33, 0, 0, 0, true));
        Truth truth = scenario.fly(display, 305);
        List<Reading> log = scenario.radio().receive(truth, new SplittableRandom(305 + 99));
        double begins = truth.flown.get(1).startS();
        assertThat(begins).isLessThan(60);
        assertThat(FollowTrial.follow(display, scenario, truth, log).stream()
                        .filter(s -> s.tS() > begins + 3 && s.figure() == 0))
                .isEmpty();
    }

    /** It was said to have begun three minutes before it did, and seven kilometres away. */
    @Test
    void actThatBeginsInTheAirBeginsAtItsPlace() throws ShowFileException {
        Display glider = FollowTrial.display("thistledown-glider");
        Scenario scenario = new Scenario("", 0.10, 0, Radio.good(5), Scenario.Change.NONE, 1, 180);
        Truth truth = scenario.fly(glider, 5000);
        List<Reading> log = scenario.radio().receive(truth, new SplittableRandom(5000 + 99));
        double said = FollowTrial.follow(glider, scenario, truth, log).stream()
                .filter(s -> s.figure() == 0)
                .findFirst()
                .orElseThrow()
                .tS();
        assertThat(said).isBetween(170.0, 183.0);
    }

    /** Its mirror image is not unlike it, and in some of these the pull-out before it ends 100 m lower than planned. */
    @Test
    void turnRoundIsSeldomTakenForALaterOne() {
        Scenario scenario = Scenario.plain("", 0.15, 0, new Radio(5, 0.33, 0, 0, 0, true));
        double saidS = 0;
        for (long seed = 300; seed < 306; seed++) {
            Truth truth = scenario.fly(display, seed);
            List<Reading> log = scenario.radio().receive(truth, new SplittableRandom(seed + 99));
            saidS += Score.STEP_S
                    * FollowTrial.follow(display, scenario, truth, log).stream()
                            .filter(s -> truth.figureAt(s.tS()) == 20 && s.figure() == 22)
                            .count();
        }
        assertThat(saidS).isLessThan(32);
    }

    /** What is not in the plan and flown gently is no landing. It was said to be one for 29 s and more of each of these. */
    @Test
    void extraRepositionIsSeldomTakenForTheLanding() {
        Scenario scenario = Scenario.plain("", 0.10, 0, Radio.good(5)).with(Scenario.Change.REPOSITION);
        int landing = display.size() - 1;
        for (long seed = 5000; seed < 5003; seed++) {
            Truth truth = scenario.fly(display, seed);
            double lands = truth.flown.get(truth.flown.size() - 1).startS();
            double saidS = Score.STEP_S
                    * FollowTrial.follow(
                                    display, scenario, truth, Radio.good(5).receive(truth, new SplittableRandom(seed)))
                            .stream()
                            .filter(s -> s.tS() < lands - 2 && s.figure() == landing)
                            .count();
            assertThat(saidS).as("seed %d", seed).isLessThan(40);
        }
    }

    @Test
    void orderThatWasToldIsFollowedBetter() {
        Scenario untold = Scenario.plain("", 0.10, 0, Radio.good(5)).with(Scenario.Change.SWAPPED);
        double told = 0;
        double guessed = 0;
        for (long seed = 5000; seed < 5006; seed++) {
            guessed += followed(untold, seed).rightShare() / 6;
            told += followed(untold.with(Scenario.Change.SWAPPED_TOLD), seed).rightShare() / 6;
        }
        assertThat(told).isGreaterThan(guessed + 0.005).isGreaterThan(0.95);
    }
}
