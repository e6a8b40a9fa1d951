package crowdline.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How well flights were followed, counted every tenth of a second. */
final class Score {
    static final double STEP_S = 0.1;
    private static final double NEAR_S = 6;

    /** What was said, and how sure. */
    record Said(double tS, int figure, double confidence, int or) {
        Said(double tS, int figure, double confidence) {
            this(tS, figure, confidence, figure);
        }
    }

    private int flights;
    private long all;
    private long right;
    private long sure;
    private long sureWrong;
    private int falseAdvances;
    private long named;
    private final List<Double> errors = new ArrayList<>();
    private final List<Double> lookedBack = new ArrayList<>();
    final double[] worst = new double[64];

    /** Counts one flight; what was said is in steps of {@link #STEP_S}. */
    void count(Truth truth, List<Said> said) {
        flights++;
        int before = Integer.MIN_VALUE;
        for (Said s : said) {
            int is = truth.figureAt(s.tS());
            boolean ok = s.figure() == is;
            all++;
            right += ok ? 1 : 0;
            named += !ok && s.or() == is ? 1 : 0;
            if (s.confidence() > 0.9) {
                sure++;
                sureWrong += ok ? 0 : 1;
            }
            if (!ok && is >= 0) {
                worst[is] += STEP_S;
            }
            if (s.figure() >= 0 && s.figure() != before && !flownNear(truth, s)) {
                falseAdvances++;
            }
            before = s.figure();
        }
        for (Truth.Flown f : truth.flown.subList(1, truth.flown.size())) {
            if (f.figure() >= 0) {
                boundary(f, said);
            }
        }
    }

    private static boolean flownNear(Truth truth, Said s) {
        return truth.flown.stream()
                .anyMatch(f -> f.figure() == s.figure() && s.tS() > f.startS() - 1 && s.tS() < f.endS() + 1);
    }

    private void boundary(Truth.Flown f, List<Said> said) {
        double best = Double.NaN;
        int before = Integer.MIN_VALUE;
        for (Said s : said) {
            if (s.figure() == f.figure() && before != f.figure()) {
                double e = s.tS() - f.startS();
                if (Math.abs(e) < NEAR_S && (Double.isNaN(best) || Math.abs(e) < Math.abs(best))) {
                    best = e;
                }
            }
            before = s.figure();
        }
        errors.add(Double.isNaN(best) ? NEAR_S : Math.abs(best));
    }

    /** Counts how far off the beginnings are that were found in the log afterwards. */
    void count(Truth truth, Boundaries found) {
        for (Truth.Flown f : truth.flown.subList(1, truth.flown.size())) {
            if (f.figure() >= 0) {
                lookedBack.add(found.figures().stream()
                        .filter(span -> span.figureIndex() == f.figure())
                        .mapToDouble(span -> Math.abs(span.startS() - f.startS()))
                        .reduce(NEAR_S, Math::min));
            }
        }
    }

    private static double quantile(List<Double> values, double q) {
        double[] sorted = values.stream().mapToDouble(d -> d).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[(int) Math.min(sorted.length - 1, q * sorted.length)];
    }

    double rightShare() {
        return right / (double) all;
    }

    double sureWrongShare() {
        return sureWrong / (double) all;
    }

    double boundaryMedianS() {
        return quantile(errors, 0.5);
    }

    double boundaryNinetyS() {
        return quantile(errors, 0.9);
    }

    static String head() {
        return String.format(
                Locale.ROOT,
                "%-36s %7s %6s %14s %15s %15s %9s %10s",
                "",
                "right",
                "sure",
                "sure and wrong",
                "boundaries live",
                "looked back at",
                "false/act",
                "named too");
    }

    /** A row under {@link #head}: shares of the time, and of errors in seconds the median and what nine of ten keep to. */
    String line(String name) {
        return String.format(
                Locale.ROOT,
                "%-36s %6.2f%% %5.1f%% %13.2f%% %8.2f %6.2f %8.2f %6.2f %9.2f %9.2f%%",
                name,
                100 * rightShare(),
                100.0 * sure / all,
                100 * sureWrongShare(),
                boundaryMedianS(),
                boundaryNinetyS(),
                lookedBackMedianS(),
                lookedBackNinetyS(),
                falseAdvances / (double) flights,
                100.0 * named / all);
    }

    double boundaryMeanS() {
        return mean(errors);
    }

    double lookedBackMeanS() {
        return mean(lookedBack);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(0);
    }

    double lookedBackMedianS() {
        return quantile(lookedBack, 0.5);
    }

    double lookedBackNinetyS() {
        return quantile(lookedBack, 0.9);
    }

    /** The figures that were most often taken for another, with seconds a flight. */
    String worstFigures() {
        StringBuilder b = new StringBuilder();
        Integer[] order = new Integer[worst.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (x, y) -> Double.compare(worst[y], worst[x]));
        for (int i = 0; i < 6; i++) {
            b.append(String.format(Locale.ROOT, " %d:%.1fs", order[i], worst[order[i]] / flights));
        }
        return b.toString();
    }
}
