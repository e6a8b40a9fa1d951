package crowdline.follow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How well flights were followed, counted every tenth of a second. */
final class Score {
    static final double STEP_S = 0.1;
    private static final double NEAR_S = 6;
    private static final double LOST_S = 2;

    /** What was said, and how sure. */
    record Said(double tS, int figure, double confidence) {}

    private int flights;
    private long all;
    private long right;
    private long sure;
    private long sureWrong;
    private int boundaries;
    private int missed;
    private int falseAdvances;
    private final List<Double> errors = new ArrayList<>();
    private final List<Double> signed = new ArrayList<>();
    private final List<Double> lost = new ArrayList<>();
    private final List<Double> lookedBack = new ArrayList<>();
    final double[] worst = new double[64];

    /** Counts one flight; what was said is in steps of {@link #STEP_S}. */
    void count(Truth truth, List<Said> said) {
        flights++;
        double wrongSince = Double.NaN;
        int before = Integer.MIN_VALUE;
        for (Said s : said) {
            int is = truth.figureAt(s.tS());
            boolean ok = s.figure() == is;
            all++;
            right += ok ? 1 : 0;
            if (s.confidence() > 0.9) {
                sure++;
                sureWrong += ok ? 0 : 1;
            }
            if (!ok && is >= 0) {
                worst[is] += STEP_S;
            }
            if (ok && !Double.isNaN(wrongSince)) {
                if (s.tS() - wrongSince > LOST_S) {
                    lost.add(s.tS() - wrongSince);
                }
                wrongSince = Double.NaN;
            } else if (!ok && Double.isNaN(wrongSince)) {
                wrongSince = s.tS();
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
        boundaries++;
        double best = Double.NaN;
        double shown = 0;
        int before = Integer.MIN_VALUE;
        for (Said s : said) {
            boolean inside = s.tS() >= f.startS() && s.tS() < f.endS();
            shown += inside && s.figure() == f.figure() ? STEP_S : 0;
            if (s.figure() == f.figure() && before != f.figure()) {
                double e = s.tS() - f.startS();
                if (Math.abs(e) < NEAR_S && (Double.isNaN(best) || Math.abs(e) < Math.abs(best))) {
                    best = e;
                }
            }
            before = s.figure();
        }
        if (shown < 1) {
            missed++;
        }
        signed.add(Double.isNaN(best) ? 0 : best);
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
                "%-34s %7s %7s %8s %6s %6s %7s %7s %8s %8s",
                "",
                "right",
                "sure",
                "sure+wrg",
                "b50 s",
                "b90 s",
                "missed",
                "false/a",
                "lost/act",
                "rec50 s");
    }

    String line(String name) {
        return String.format(
                Locale.ROOT,
                "%-34s %6.2f%% %6.1f%% %7.2f%% %6.2f %6.2f %6.2f%% %7.2f %8.2f %8.1f",
                name,
                100 * rightShare(),
                100.0 * sure / all,
                100 * sureWrongShare(),
                boundaryMedianS(),
                boundaryNinetyS(),
                100.0 * missed / Math.max(boundaries, 1),
                falseAdvances / (double) flights,
                lost.size() / (double) flights,
                quantile(lost, 0.5));
    }

    String bias() {
        return String.format(Locale.ROOT, "late by %.2f", quantile(signed, 0.5));
    }

    double lookedBackMedianS() {
        return quantile(lookedBack, 0.5);
    }

    double lookedBackNinetyS() {
        return quantile(lookedBack, 0.9);
    }

    String lookedBack() {
        return String.format(Locale.ROOT, "looked back at b50 %.2f b90 %.2f", lookedBackMedianS(), lookedBackNinetyS());
    }

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
