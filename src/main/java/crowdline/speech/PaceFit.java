package crowdline.speech;

import java.util.ArrayList;
import java.util.List;

/**
 * Learns a speaker's {@link Pace} from timed remarks.
 *
 * <p>With fewer than {@value #ENOUGH} remarks one constant is learnt, how much slower or faster than
 * {@link Pace#DEFAULT} the speaker is: with three remarks a full regression goes wildly wrong. With more, the fixed
 * time and the times per letter, comma and stop are fitted, errors taken relative to the length of a remark. A pause
 * that the remarks do not tell (seen in fewer than three of them, always together with something else, or coming out
 * negative) keeps the default's value, scaled to the speaker.
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
    private static final int REMARKS_THAT_TELL = 3;
    private static final int LETTERS = 1;
    private static final int COLUMNS = 4;

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
        return timed.size() < ENOUGH ? scaled(name, timed) : regressed(name, timed);
    }

    /** How {@link #fit} treats so many remarks, in a sentence for the speaker. */
    public static String explanation(int remarks) {
        if (remarks < ENOUGH) {
            return remarks + " of " + ENOUGH + " remarks timed: the default pace is only made faster or slower; "
                    + (ENOUGH - remarks) + " more let pauses be learnt too.";
        }
        return remarks + " remarks timed: time per letter, and pauses as far as the remarks tell them, are learnt.";
    }

    private static Pace scaled(String name, List<TimedRemark> timed) {
        double factor = slowness(timed);
        int n = timed.size();
        Pace base = Pace.DEFAULT;
        Pace middle = pace(
                name,
                factor * base.fixedS(),
                factor * base.perLetterS(),
                factor * base.perCommaS(),
                factor * base.perStopS(),
                ONE_SENTENCE);
        double error = Math.max(spread(middle, timed, 1), ONE_SENTENCE) * Math.sqrt(1 + 1.0 / n);
        return withError(middle, error);
    }

    private static Pace regressed(String name, List<TimedRemark> timed) {
        double factor = slowness(timed);
        Pace base = Pace.DEFAULT;
        double[] values = {
            factor * base.fixedS(), factor * base.perLetterS(), factor * base.perCommaS(), factor * base.perStopS()
        };
        List<Integer> free = new ArrayList<>(List.of(0, LETTERS));
        for (int column = LETTERS + 1; column < COLUMNS; column++) {
            if (tells(timed, column)) {
                free.add(column);
            }
        }
        int fitted = settle(timed, values, free);
        Pace middle = pace(name, values[0], values[1], values[2], values[3], ONE_SENTENCE);
        double spread = Math.max(spread(middle, timed, fitted), ONE_PARAGRAPH);
        int n = timed.size();
        double widening = StudentT.quantile90(n - fitted) / Pace.NORMAL_90 * Math.sqrt(1 + (double) fitted / n);
        return withError(middle, spread * widening);
    }

    /** Fits the free columns, handing back to the default whatever cannot be told; returns how many were fitted. */
    private static int settle(List<TimedRemark> timed, double[] values, List<Integer> free) {
        while (true) {
            LeastSquares fit = solve(timed, values, free);
            if (!fit.separable()) {
                if (free.size() == 1) {
                    throw new IllegalArgumentException("the timed remarks tell nothing about the pace; time others");
                }
                free.remove(free.size() - 1);
                continue;
            }
            int worst = -1;
            for (int i = 0; i < free.size(); i++) {
                if (fit.coefficient(i) < 0 && (worst < 0 || fit.coefficient(i) < fit.coefficient(worst))) {
                    worst = i;
                }
            }
            if (worst >= 0 && free.get(worst) != LETTERS) {
                free.remove(worst);
                continue;
            }
            for (int i = 0; i < free.size(); i++) {
                values[free.get(i)] = fit.coefficient(i);
            }
            return free.size();
        }
    }

    /** Relative errors: each remark's equation is divided by the seconds it took. */
    private static LeastSquares solve(List<TimedRemark> timed, double[] held, List<Integer> free) {
        double[][] rows = new double[timed.size()][free.size()];
        double[] targets = new double[timed.size()];
        for (int i = 0; i < timed.size(); i++) {
            double[] counts = counts(timed.get(i).text());
            double seconds = timed.get(i).seconds();
            double target = seconds;
            for (int column = 0; column < COLUMNS; column++) {
                int at = free.indexOf(column);
                if (at >= 0) {
                    rows[i][at] = counts[column] / seconds;
                } else {
                    target -= held[column] * counts[column];
                }
            }
            targets[i] = target / seconds;
        }
        return LeastSquares.solve(rows, targets);
    }

    private static boolean tells(List<TimedRemark> timed, int column) {
        return timed.stream().filter(t -> counts(t.text())[column] > 0).count() >= REMARKS_THAT_TELL;
    }

    private static double[] counts(SpokenText text) {
        return new double[] {1, text.letters(), text.commas(), text.innerStops()};
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

    private static void requirePlausible(TimedRemark remark) {
        double plain = Pace.DEFAULT.seconds(remark.text()) / Pace.DEFAULT.perLetterS();
        double letterS = remark.seconds() / plain;
        if (letterS < FASTEST_LETTER_S || letterS > SLOWEST_LETTER_S) {
            throw new IllegalArgumentException("\"" + shortened(remark.text().written()) + "\" is timed at "
                    + remark.seconds() + " s, but nobody says it so "
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
