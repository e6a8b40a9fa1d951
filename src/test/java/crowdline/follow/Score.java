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
    private long named;
    private final List<Double> errors = new ArrayList<>();
    private final List<Double> lookedBack = new ArrayList<>();
    private final Changes changes = new Changes();
    private final Changes changesLive = new Changes();
    private long allLive;
    private long rightLive;
    final double[] worst = new double[64];

    /** Counts one flight; what was said is in steps of {@link #STEP_S}. */
    void count(Truth truth, List<Said> said) {
        flights++;
        changes.count(truth, said);
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
        }
        for (Truth.Flown f : truth.flown.subList(1, truth.flown.size())) {
            if (f.figure() >= 0) {
                boundary(f, said);
            }
        }
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

    /** Counts what the screen of Live showed meanwhile. */
    void countLive(Truth truth, List<Said> shown) {
        changesLive.count(truth, shown);
        for (Said s : shown) {
            allLive++;
            rightLive += s.figure() == truth.figureAt(s.tS()) ? 1 : 0;
        }
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
                "%-36s %7s %6s %14s %15s %15s %9s %10s %13s %8s %11s %9s %8s %13s",
                "",
                "right",
                "sure",
                "sure and wrong",
                "boundaries live",
                "looked back at",
                "false/act",
                "named too",
                "recovers",
                "back/act",
                "Live: right",
                "false/act",
                "back/act",
                "recovers");
    }

    /**
     * A row under {@link #head}: shares of the time, and of errors and recoveries in seconds the median and what nine of ten
     * keep to.
     */
    String line(String name) {
        return String.format(
                Locale.ROOT,
                "%-36s %6.2f%% %5.1f%% %13.2f%% %8.2f %6.2f %8.2f %6.2f %9.2f %9.2f%% %6.1f %6.1f %8.2f %10.2f%% %9.2f %8.2f %6.1f %6.1f",
                name,
                100 * rightShare(),
                100.0 * sure / all,
                100 * sureWrongShare(),
                boundaryMedianS(),
                boundaryNinetyS(),
                lookedBackMedianS(),
                lookedBackNinetyS(),
                changes.astrayAFlight(),
                100.0 * named / all,
                changes.recoversS(0.5),
                changes.recoversS(0.9),
                changes.backAFlight(),
                100.0 * rightLive / allLive,
                changesLive.astrayAFlight(),
                changesLive.backAFlight(),
                changesLive.recoversS(0.5),
                changesLive.recoversS(0.9));
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
