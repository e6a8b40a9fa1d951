package crowdline.speech.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.say.SpokenText;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaceFitTest {

    /** Letters, commas and stops fitted to 30 remarks by a synthesiser, final silence taken off the fixed time. */
    private static final Pace PUBLISHED = new Pace("published", 0.049, 0.0694, 0.254, 0.422, 0.04);

    private static SpokenText text(int letters, int commas, int stops) {
        int first = Math.max(1, letters - 2 * commas - 2 * stops);
        String plain = "w".repeat(first) + ", ww".repeat(commas) + ". Ww".repeat(stops);
        return new SpokenText(plain, plain);
    }

    private static List<TimedRemark> spokenBy(Pace pace, int remarks, double relativeError, long seed) {
        Random random = new Random(seed);
        List<TimedRemark> timed = new ArrayList<>();
        for (int i = 0; i < remarks; i++) {
            SpokenText text = text(10 + random.nextInt(70), random.nextInt(4), random.nextInt(3));
            double seconds = pace.time(text).seconds() * Math.exp(relativeError * random.nextGaussian());
            timed.add(new TimedRemark(seconds, text));
        }
        return timed;
    }

    private static double meanError(Pace pace, List<TimedRemark> said) {
        return said.stream()
                .mapToDouble(t -> Math.abs(pace.time(t.text()).seconds() / t.seconds() - 1))
                .average()
                .orElseThrow();
    }

    @Test
    void manyExactTimingsGiveTheSpeakersConstants() {
        Pace fitted = PaceFit.fit("voice", spokenBy(PUBLISHED, 3_000, 0, 1));
        assertThat(fitted.name()).isEqualTo("voice");
        assertThat(fitted.perLetterS()).isCloseTo(0.0694, Percentage.withPercentage(0.5));
        assertThat(fitted.perCommaS()).isCloseTo(0.254, Percentage.withPercentage(2));
        assertThat(fitted.perStopS()).isCloseTo(0.422, Percentage.withPercentage(2));
        assertThat(fitted.fixedS()).isCloseTo(0.049, within(0.01));
    }

    @Test
    void tenExactTimingsPredictOtherRemarks() {
        Pace fitted = PaceFit.fit("voice", spokenBy(PUBLISHED, 10, 0, 2));
        assertThat(meanError(fitted, spokenBy(PUBLISHED, 200, 0, 3))).isLessThan(0.03);
    }

    @Test
    void threeTimingsOnlyScaleTheDefault() {
        Pace slow = new Pace("slow", 0.15 * 1.3, 0.0731 * 1.3, 0.25 * 1.3, 0.69 * 1.3, 0);
        Pace fitted = PaceFit.fit("slow", spokenBy(slow, 3, 0, 4));
        assertThat(fitted.perLetterS() / Pace.DEFAULT.perLetterS()).isCloseTo(1.3, within(1e-9));
        assertThat(fitted.perStopS() / Pace.DEFAULT.perStopS()).isCloseTo(1.3, within(1e-9));
        assertThat(fitted.relativeError()).isCloseTo(0.111 * Math.sqrt(4.0 / 3), within(1e-9));
    }

    @Test
    void noisyTimingsNeverGiveANegativePause() {
        for (long seed = 0; seed < 300; seed++) {
            Pace fitted = PaceFit.fit("noisy", spokenBy(Pace.DEFAULT, 10, 0.15, seed));
            assertThat(meanError(fitted, spokenBy(Pace.DEFAULT, 50, 0, seed + 1)))
                    .isLessThan(0.25);
        }
    }

    @Test
    void moreTimingsMakeABetterPace() {
        double few = 0;
        double many = 0;
        for (long seed = 0; seed < 200; seed++) {
            List<TimedRemark> timed = spokenBy(PUBLISHED, 40, 0.08, seed);
            List<TimedRemark> others = spokenBy(PUBLISHED, 50, 0, seed + 1000);
            few += meanError(PaceFit.fit("v", timed.subList(0, 10)), others);
            many += meanError(PaceFit.fit("v", timed), others);
        }
        assertThat(many).isLessThan(few);
    }

    @Test
    void eightyPercentOfNewRemarksLieInTheBand() {
        int inside = 0;
        int all = 0;
        for (long seed = 0; seed < 400; seed++) {
            Pace fitted = PaceFit.fit("v", spokenBy(PUBLISHED, 12, 0.08, seed));
            for (TimedRemark said : spokenBy(PUBLISHED, 20, 0.08, seed + 5000)) {
                SpokenTime time = fitted.time(said.text());
                inside += said.seconds() >= time.lowS() && said.seconds() <= time.highS() ? 1 : 0;
                all++;
            }
        }
        assertThat((double) inside / all).isBetween(0.76, 0.86);
    }

    @Test
    void remarksOfOneLengthStillGiveAPace() {
        List<TimedRemark> same = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            same.add(new TimedRemark(4.0, text(50, 0, 0)));
        }
        assertThat(PaceFit.fit("same", same).time(text(50, 0, 0)).seconds()).isCloseTo(4.0, within(0.05));
    }

    @Test
    void remarksThatDidNotGrowWithTheirLengthAreRefused() {
        List<TimedRemark> odd = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            odd.add(new TimedRemark(6.0 - 0.4 * i, text(15 + 3 * i, 0, 0)));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PaceFit.fit("odd", odd))
                .withMessageContaining("longer remarks did not take longer for odd");
    }

    @Test
    void slipsOfTheStopwatchAreNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PaceFit.fit("x", List.of(new TimedRemark(60, text(40, 0, 0)))))
                .withMessageContaining("60.0 s")
                .withMessageContaining("that slowly")
                .withMessageContaining("time it again or leave it out");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PaceFit.fit("x", List.of(new TimedRemark(0.1, text(40, 0, 0)))))
                .withMessageContaining("that fast");
    }

    @Test
    void noRemarksAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PaceFit.fit("x", List.of()))
                .withMessageContaining("time at least one");
    }

    @Test
    void impossibleTimingsAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new TimedRemark(0, text(10, 0, 0)));
        assertThatIllegalArgumentException().isThrownBy(() -> new TimedRemark(Double.NaN, text(10, 0, 0)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TimedRemark(3, new SpokenText("...", "...")))
                .withMessageContaining("no words");
    }

    @Test
    void explanationSaysWhichModelIsUsed() {
        assertThat(PaceFit.explanation(3))
                .contains("only sped up or slowed down")
                .contains("7 more");
        assertThat(PaceFit.explanation(10)).contains("time per letter");
    }

    /** Any table of Student's t has the 0.90 quantiles; of a fit without error the band is as wide as doubt alone. */
    @ParameterizedTest
    @CsvSource({"10, 1.415", "23, 1.325", "103, 1.290"})
    void bandIsAsMuchWiderAsFewRemarksLeaveInDoubt(int remarks, double tableOfThreeFewer) {
        Pace fitted = PaceFit.fit("usual", spokenBy(Pace.DEFAULT, remarks, 0, 7));

        double widened = 0.031 * tableOfThreeFewer / 1.2816 * Math.sqrt(1 + 3.0 / remarks);
        assertThat(fitted.relativeError()).isCloseTo(widened, Percentage.withPercentage(0.05));
    }

    /** Nobody needs less than 0.02 s or more than half a second for a letter, pauses counted as letters. */
    @Test
    void slipsBeginJustBeyondTheFastestAndTheSlowest() {
        SpokenText text = text(40, 0, 0);
        double plain = Pace.DEFAULT.seconds(text) / 0.0731;
        for (double letterS : new double[] {0.0201, 0.4999}) {
            PaceFit.requirePlausible(new TimedRemark(letterS * plain, text));
        }
        for (double letterS : new double[] {0.0199, 0.5001}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> PaceFit.requirePlausible(new TimedRemark(letterS * plain, text)))
                    .withMessageContaining(letterS < 0.1 ? "that fast" : "that slowly");
        }
    }

    @Test
    void slipIsNamedByTheBeginningOfWhatWasSaidAndWhatIsUsual() {
        SpokenText forty = text(40, 0, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PaceFit.requirePlausible(new TimedRemark(60, forty)))
                .withMessageStartingWith("\"" + "w".repeat(40) + "\" is timed at 60.0 s")
                .withMessageContaining("(about %.1f s is usual)", Math.round(10 * Pace.DEFAULT.seconds(forty)) / 10.0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PaceFit.requirePlausible(new TimedRemark(60, text(41, 0, 0))))
                .withMessageStartingWith("\"" + "w".repeat(39) + "\u2026\" is timed");
    }

    @Test
    void oneTimingGivesItsOwnTimeAndTwiceTheDoubtOfAMean() {
        SpokenText text = text(40, 1, 1);
        Pace fitted = PaceFit.fit("one", List.of(new TimedRemark(6, text)));
        assertThat(fitted.time(text).seconds()).isCloseTo(6, within(1e-9));
        assertThat(fitted.relativeError()).isCloseTo(0.111 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void fewTimingsThatDisagreeWidenTheBandByTheirSpread() {
        SpokenText text = text(40, 0, 0);
        double usual = Pace.DEFAULT.seconds(text);
        Pace fitted = PaceFit.fit(
                "uneven",
                List.of(new TimedRemark(usual * Math.exp(0.3), text), new TimedRemark(usual * Math.exp(-0.3), text)));

        assertThat(fitted.time(text).seconds()).isCloseTo(usual, within(1e-9));
        assertThat(fitted.relativeError())
                .as("two errors of 0.3 with one constant fitted, and the mean of two")
                .isCloseTo(0.3 * Math.sqrt(2) * Math.sqrt(1.5), within(1e-9));
    }

    @Test
    void explanationCountsWhatIsMissing() {
        assertThat(PaceFit.explanation(9))
                .isEqualTo(
                        "9 of 10 remarks timed: the default pace is only sped up or slowed down; 1 more and pauses are"
                                + " learned too.");
    }
}
