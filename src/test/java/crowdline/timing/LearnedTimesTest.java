package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;

class LearnedTimesTest {
    private static final Instant THEN = Instant.parse("2030-06-01T12:00:00Z");

    /** The 80 % band of a logarithmic spread of 0.1 about 12 s, by the normal quantiles of another library. */
    private static final LogNormalDistribution LOOP_BEFORE = LogNormalDistribution.of(Math.log(12), 0.1);

    private static final ActTimes PREDICTED = new ActTimes(
            "dawn",
            "full",
            List.of(
                    new FigureTime(
                            "loop",
                            0,
                            12,
                            LOOP_BEFORE.inverseCumulativeProbability(0.1),
                            LOOP_BEFORE.inverseCumulativeProbability(0.9)),
                    new FigureTime("roll", 14, 6, 5, 7)));

    @Test
    void withoutPassesItIsThePrediction() {
        LearnedTimes learned = LearnedTimes.of(PREDICTED, List.of());
        assertThat(learned.times()).isEqualTo(PREDICTED);
        assertThat(learned.passes()).isZero();
    }

    /** However many figures a pass times, and whichever: one that times the same figure twice is one pass. */
    @Test
    void passesThatTeachAreCountedOnceEach() {
        Pass whole = Pass.of(
                "a",
                "dawn",
                "full",
                Pass.How.BY_LOG,
                Instant.EPOCH,
                List.of(new Pass.TimedFigure("loop", 0, 12), new Pass.TimedFigure("roll", 14, 20)));
        Pass twice = Pass.of(
                "b",
                "dawn",
                "full",
                Pass.How.BY_LOG,
                Instant.EPOCH,
                List.of(new Pass.TimedFigure("roll", 0, 6), new Pass.TimedFigure("roll", 14, 20)));
        Pass another = Pass.of(
                "c", "dusk", "full", Pass.How.BY_LOG, Instant.EPOCH, List.of(new Pass.TimedFigure("loop", 0, 12)));
        LearnedTimes learned = LearnedTimes.of(PREDICTED, List.of(whole, twice, another));
        assertThat(learned.passes()).isEqualTo(2);
        assertThat(learned.figures()).extracting(LearnedFigure::figureId).containsExactly("loop", "roll");
        assertThat(learned.figures()).extracting(LearnedFigure::passes).containsExactly(1, 2);
        assertThat(learned.figures().get(1).runs()).hasSize(3);
    }

    @Test
    void momentsKeepTheirShareOfTheLearnedDuration() {
        FigureMoments seen = new FigureMoments(List.of(
                new Moment(MomentName.first(MomentKind.BEGINS), 0, false),
                new Moment(MomentName.first(MomentKind.OVER_THE_TOP), 6, true),
                new Moment(MomentName.first(MomentKind.FLIES_OUT), 12, false)));
        ActTimes predicted = PREDICTED.with(id -> id.equals("loop") ? seen : FigureMoments.timed(1));
        FigureTime loop = LearnedTimes.of(predicted, loops(Pass.How.BY_LOG, 0, 13.1, 13.6, 12.9))
                .times()
                .figures()
                .get(0);
        assertThat(loop.durationS()).isBetween(12.5, 13.5);
        assertThat(loop.moments().moments().get(1).afterS()).isCloseTo(loop.durationS() / 2, within(1e-9));
        assertThat(loop.moments().moments().get(2).afterS()).isCloseTo(loop.durationS(), within(1e-9));
        assertThat(loop.startingAt(40).moments()).isEqualTo(loop.moments());
    }

    @Test
    void threePassesFromALogGiveTheBandOfTheHandbook() {
        // K. P. Murphy, Conjugate Bayesian analysis of the Gaussian distribution (2007), section 3, equations 85 to 89
        // and 99, all passes at once: kappa0 = 1, 2 alpha0 = 4, 2 beta0 = 4 * 0.1².
        List<Double> seconds = List.of(13.1, 13.6, 12.9);
        double n = seconds.size();
        double mean = seconds.stream().mapToDouble(Math::log).average().orElseThrow();
        double squares = seconds.stream()
                .mapToDouble(s -> Math.pow(Math.log(s) - mean, 2))
                .sum();
        double kappa = 1 + n;
        double mu = (Math.log(12) + n * mean) / kappa;
        double alpha = (4 + n) / 2;
        double beta = 4 * 0.01 / 2 + squares / 2 + n * Math.pow(mean - Math.log(12), 2) / (2 * kappa);
        double half = TDistribution.of(2 * alpha).inverseCumulativeProbability(0.9)
                * Math.sqrt(beta * (kappa + 1) / (alpha * kappa));

        LearnedFigure loop = LearnedTimes.of(PREDICTED, loops(Pass.How.BY_LOG, 0, 13.1, 13.6, 12.9))
                .figures()
                .get(0);

        assertThat(loop.learned().durationS()).isCloseTo(Math.exp(mu), within(1e-9));
        assertThat(loop.learned().lowS()).isCloseTo(Math.exp(mu - half), within(1e-9));
        assertThat(loop.learned().highS()).isCloseTo(Math.exp(mu + half), within(1e-9));
        assertThat(loop.passes()).isEqualTo(3);
        assertThat(loop.predicted()).isEqualTo(PREDICTED.figures().get(0));
    }

    @Test
    void walkingTeachesNothing() {
        LearnedTimes learned = LearnedTimes.of(PREDICTED, loops(Pass.How.WALKED, 0.25, 20, 20, 20));
        assertThat(learned.times()).isEqualTo(PREDICTED);
        assertThat(learned.passes()).isZero();
    }

    @Test
    void passThatDoesNotCountTeachesNothingAndKeepsItsNumber() {
        List<Pass> passes = loops(Pass.How.BY_LOG, 0, 12.0, 12.5, 12.2, 19.2);
        passes.set(0, passes.get(0).counting(false));
        LearnedFigure loop = LearnedTimes.of(PREDICTED, passes).figures().get(0);
        assertThat(loop.runs()).extracting(TimedRun::passNumber).containsExactly(2, 3, 4);
        assertThat(loop.odd()).containsExactly("pass 4: 19.2 s, others 12.2–12.5 s");
    }

    @Test
    void oddPassIsNamedWithItsReasonAndStillCounts() {
        LearnedFigure loop = LearnedTimes.of(PREDICTED, loops(Pass.How.BY_HAND, 0.25, 12.4, 12.0, 19.2, 13.0))
                .figures()
                .get(0);
        assertThat(loop.odd()).containsExactly("pass 3: 19.2 s, others 12.0–13.0 s");
        assertThat(loop.passes()).isEqualTo(4);
    }

    @Test
    void handAndLiveTeachAlikeAndLessThanALog() {
        double hand = loopAfter(Pass.How.BY_HAND);
        double live = loopAfter(Pass.How.LIVE);
        double log = loopAfter(Pass.How.BY_LOG);
        assertThat(hand).isEqualTo(live).isGreaterThan(12);
        LearnedFigure exact = LearnedTimes.of(PREDICTED, loops(Pass.How.BY_LOG, 0, 15))
                .figures()
                .get(0);
        assertThat(log).isGreaterThan(12).isLessThan(exact.learned().durationS());
    }

    @Test
    void laterFiguresMoveWithTheLearnedOnesAndKeepTheirGap() {
        ActTimes times = LearnedTimes.of(PREDICTED, loops(Pass.How.BY_LOG, 0, 15, 15, 15))
                .times();
        FigureTime loop = times.figures().get(0);
        FigureTime roll = times.figures().get(1);
        assertThat(roll.startS()).isCloseTo(loop.endS() + 2, within(1e-9));
        assertThat(roll.durationS()).isEqualTo(6);
    }

    @Test
    void otherActsVariantsAndFiguresTeachNothing() {
        Pass pass = loops(Pass.How.BY_LOG, 0, 20).get(0);
        List<Pass> others = List.of(
                new Pass("x", "dusk", "full", pass.how(), THEN, "", pass.figures(), true, 0),
                new Pass("y", "dawn", "flat", pass.how(), THEN, "", pass.figures(), true, 0),
                new Pass("z", "dawn", "full", pass.how(), THEN, "", List.of(timed("spin", 0, 9)), true, 0));
        assertThat(LearnedTimes.of(PREDICTED, others).times()).isEqualTo(PREDICTED);
    }

    private static double loopAfter(Pass.How how) {
        Pass pass = Pass.of("p", "dawn", "full", how, THEN, List.of(timed("loop", 0, 15)));
        return LearnedTimes.of(PREDICTED, List.of(pass))
                .times()
                .figures()
                .get(0)
                .durationS();
    }

    private static Pass.TimedFigure timed(String id, double startS, double endS) {
        return new Pass.TimedFigure(id, startS, endS);
    }

    private static List<Pass> loops(Pass.How how, double markErrorS, double... seconds) {
        List<Pass> passes = new ArrayList<>();
        for (double s : seconds) {
            passes.add(new Pass(
                    "p" + passes.size(),
                    "dawn",
                    "full",
                    how,
                    THEN,
                    "",
                    List.of(timed("loop", 3, 3 + s)),
                    true,
                    markErrorS));
        }
        return passes;
    }

    /** The loop has 12 s and 2 s before the roll: by keys it is seen to last until the roll begins. */
    @Test
    void whatLiesBetweenTwoFiguresIsNotLearnedAsPartOfTheFirst() {
        Pass byHand = Pass.of(
                "a",
                "dawn",
                "full",
                Pass.How.LIVE,
                Instant.EPOCH,
                List.of(new Pass.TimedFigure("loop", 0, 14), new Pass.TimedFigure("roll", 14, 20)));
        LearnedTimes learned = LearnedTimes.of(PREDICTED, List.of(byHand));

        assertThat(learned.figures().get(0).runs().get(0).durationS()).isEqualTo(12);
        assertThat(learned.times().figures().get(1).startS())
                .as("the roll is expected when it was flown")
                .isCloseTo(14, within(0.2));
        assertThat(learned.figures().get(1).runs().get(0).durationS())
                .as("nothing lies behind the last")
                .isEqualTo(6);
    }

    @Test
    void aFigureThatWasEndedForItselfIsLearnedAsItWas() {
        Pass table = Pass.of(
                "a",
                "dawn",
                "full",
                Pass.How.BY_HAND,
                Instant.EPOCH,
                List.of(new Pass.TimedFigure("loop", 0, 13), new Pass.TimedFigure("roll", 15, 21)));
        assertThat(LearnedTimes.of(PREDICTED, List.of(table))
                        .figures()
                        .get(0)
                        .runs()
                        .get(0)
                        .durationS())
                .isEqualTo(13);
    }
}
