package crowdline.speech.pace;

import crowdline.measure.EightInTen;
import crowdline.speech.say.SpokenText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Learns a speaker's {@link Pace} from timed remarks.
 *
 * <p>With fewer than {@value #ENOUGH} remarks one constant is learnt, how much slower or faster than
 * {@link Pace#DEFAULT} the speaker is: with three remarks a full regression goes wildly wrong. With more, the fixed
 * time and the times per letter, comma and stop are fitted, errors taken relative to the length of a remark, with the
 * pauses drawn gently towards the default's, scaled to the speaker, so that what the remarks do not tell stays usual.
 */
public final class PaceFit {

    /** From this many timed remarks on, every term is fitted. */
    public static final int ENOUGH = 10;

    /** A person's own variation on single sentences (Altpeter and others 2015, doi 10.1007/s00417-015-3065-4). */
    private static final double ONE_SENTENCE = 0.111;

    /** The same person's variation on whole paragraphs; no fit to single remarks is believed to be better. */
    private static final double ONE_PARAGRAPH = 0.031;

    /** Seconds for one letter outside these are a slip of the stopwatch: people need about 0.07. Tuned. */
    private static final double FASTEST_LETTER_S = 0.02;

    private static final double SLOWEST_LETTER_S = 0.5;
    private static final int LETTERS = 1;
    private static final int COLUMNS = 4;

    /** How far one remark lies from its fit; weighs timings against {@link #PAUSE_DOUBT_S}. Tuned on two synthesisers. */
    private static final double ONE_REMARK = 0.07;

    /** How far a speaker's pauses lie from the usual ones: fixed, (letter: nothing assumed), comma, stop. Tuned. */
    private static final List<Double> PAUSE_DOUBT_S = List.of(0.2, Double.POSITIVE_INFINITY, 0.1, 0.3);

    /** How many of the four terms are about free, held back by the usual pauses. Tuned: bands then hold 80 %. */
    private static final int REALLY_FREE = 3;

    private PaceFit() {}

    /**
     * The pace of the speaker of these remarks.
     *
     * @param name who spoke; not blank
     * @param timed at least one
     * @throws IllegalArgumentException if there is none, a timing is impossible, or longer remarks did not take longer
     */
    public static Pace fit(String name, List<TimedRemark> timed) {
        if (timed.isEmpty()) {
            throw new IllegalArgumentException(
                    "no timed remark for " + name + "; time at least one, better " + ENOUGH + ", of different lengths");
        }
        timed.forEach(PaceFit::requirePlausible);
        return fit(name, timed, timed.size() >= ENOUGH);
    }

    /** @param everyTerm whether every term is fitted, or one constant */
    static Pace fit(String name, List<TimedRemark> timed, boolean everyTerm) {
        return everyTerm ? regressed(name, timed) : scaled(name, timed);
    }

    /** How {@link #fit} treats this number of remarks, in a sentence for the speaker. */
    public static String explanation(int remarks) {
        if (remarks < ENOUGH) {
            return remarks + " of " + ENOUGH + " remarks timed: the default pace is only sped up or slowed down; "
                    + (ENOUGH - remarks) + " more and pauses are learned too.";
        }
        return remarks + " remarks timed: the time per letter is learned, and the pauses where the remarks show them.";
    }

    private static Pace scaled(String name, List<TimedRemark> timed) {
        int n = timed.size();
        double[] usual = usual(slowness(timed));
        Pace middle = pace(name, usual[0], usual[1], usual[2], usual[3], ONE_SENTENCE);
        double error = Math.max(spread(middle, timed, 1), ONE_SENTENCE) * Math.sqrt(1 + 1.0 / n);
        return withError(middle, error);
    }

    private static Pace regressed(String name, List<TimedRemark> timed) {
        double[] usual = usual(slowness(timed));
        double[] values = new double[COLUMNS];
        List<Integer> free = new ArrayList<>(List.of(0, LETTERS, 2, 3));
        int worst = LETTERS;
        while (worst >= 0) {
            double[] fitted = solve(timed, usual, free);
            worst = -1;
            Arrays.fill(values, 0);
            for (int i = 0; i < free.size(); i++) {
                values[free.get(i)] = fitted[i];
                worst = fitted[i] < 0 && free.get(i) != LETTERS ? i : worst;
            }
            if (worst >= 0) {
                free.remove(worst);
            }
        }
        Pace middle = pace(name, values[0], values[1], values[2], values[3], ONE_SENTENCE);
        double spread = Math.max(spread(middle, timed, REALLY_FREE), ONE_PARAGRAPH);
        int n = timed.size();
        double quantile = TDistribution.of(n - REALLY_FREE).inverseCumulativeProbability(0.9);
        double widening = quantile / EightInTen.HALF_WIDTH * Math.sqrt(1 + (double) REALLY_FREE / n);
        return withError(middle, spread * widening);
    }

    /**
     * Relative errors: each remark's equation is divided by the seconds it took. One more equation for each pause says
     * that it is about the usual one, as loosely as {@link #PAUSE_DOUBT_S}.
     */
    private static double[] solve(List<TimedRemark> timed, double[] usual, List<Integer> free) {
        int n = timed.size();
        double[][] rows = new double[n + COLUMNS][free.size()];
        double[] targets = new double[n + COLUMNS];
        for (int i = 0; i < n; i++) {
            double[] counts = counts(timed.get(i).text());
            double seconds = timed.get(i).seconds();
            for (int at = 0; at < free.size(); at++) {
                rows[i][at] = counts[free.get(at)] / seconds;
            }
            targets[i] = 1;
        }
        for (int at = 0; at < free.size(); at++) {
            int column = free.get(at);
            if (column != LETTERS) {
                double weight = ONE_REMARK / PAUSE_DOUBT_S.get(column);
                rows[n + column][at] = weight;
                targets[n + column] = weight * usual[column];
            }
        }
        return LeastSquares.solve(rows, targets);
    }

    private static double[] usual(double factor) {
        Pace base = Pace.DEFAULT;
        return new double[] {
            factor * base.fixedS(), factor * base.perLetterS(), factor * base.perCommaS(), factor * base.perStopS()
        };
    }

    private static double[] counts(SpokenText text) {
        return new double[] {1, text.soundedLetters(), text.commas(), text.innerStops()};
    }

    /** Geometric mean of the times against the default's. */
    private static double slowness(List<TimedRemark> timed) {
        double sum = 0;
        for (TimedRemark remark : timed) {
            sum += Math.log(remark.seconds() / Pace.DEFAULT.seconds(remark.text()));
        }
        return Math.exp(sum / timed.size());
    }

    private static double spread(Pace pace, List<TimedRemark> timed, int fitted) {
        double squares = 0;
        for (TimedRemark remark : timed) {
            double error = Math.log(remark.seconds() / pace.seconds(remark.text()));
            squares += error * error;
        }
        return Math.sqrt(squares / Math.max(1, timed.size() - fitted));
    }

    private static Pace withError(Pace pace, double error) {
        return new Pace(
                pace.name(), pace.fixedS(), pace.perLetterS(), pace.perCommaS(), pace.perStopS(), Math.min(1, error));
    }

    private static Pace pace(String name, double fixed, double letter, double comma, double stop, double error) {
        if (!(letter > 0)) {
            throw new IllegalArgumentException("longer remarks did not take longer for " + name
                    + "; check the timings, or time remarks of more different lengths");
        }
        return new Pace(name, fixed, letter, comma, stop, error);
    }

    /**
     * Refuses a slip of the stopwatch.
     *
     * @throws IllegalArgumentException if nobody speaks so fast or so slowly
     */
    public static void requirePlausible(TimedRemark remark) {
        double plain = Pace.DEFAULT.seconds(remark.text()) / Pace.DEFAULT.perLetterS();
        double letterS = remark.seconds() / plain;
        if (letterS < FASTEST_LETTER_S || letterS > SLOWEST_LETTER_S) {
            throw new IllegalArgumentException("\"" + shortened(remark.text().written()) + "\" is timed at "
                    + remark.seconds() + " s, but nobody says it that "
                    + (letterS < FASTEST_LETTER_S ? "fast" : "slowly") + " (about "
                    + Math.round(10 * Pace.DEFAULT.seconds(remark.text())) / 10.0
                    + " s is usual); time it again or leave it out");
        }
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= 40
                ? text
                : text.substring(0, text.offsetByCodePoints(0, 39)) + "…";
    }
}
