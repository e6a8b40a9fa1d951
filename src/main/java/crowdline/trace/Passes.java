package crowdline.trace;

import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which lines were flown to be seen: those across the middle of where the figures are flown, as fast as figures are begun.
 * All others lead from one to the next, or come and go.
 */
final class Passes {
    /** Seconds: a shorter line is a moment between two figures. */
    private static final double LEAST_S = 3;
    /** Of the speed at which figures are begun: whoever is slower comes or goes. Tuned. */
    private static final double SLOWEST = 0.75;
    /** Metres higher than figures are begun, before the first and after the last. Tuned. */
    private static final double HIGHER_M = 60;
    /** Seconds: two that are nearer follow each other. */
    private static final double APART_S = 4;

    private static final double MOMENT_S = 1;
    /** Seconds: right after the last figure a shorter line only leads away. */
    private static final double LONG_S = 8;
    /** Seconds from the first or the last figure. */
    private static final double NEAR_S = 120;
    /** Metres: what is nearer to the middle is in it, however close to each other the figures are. Tuned. */
    private static final double LEAST_WIDE_M = 300;
    /** How much wider the middle is than the middles of figures are from it. Tuned. */
    private static final double WIDER = 1.5;

    private final Path path;
    private final List<Found> figures;
    private final double xM;
    private final double yM;
    private final double wideM;
    private final double mps;
    private final double heightM;

    private Passes(Path path, List<Found> figures) {
        this.path = path;
        this.figures = figures;
        int[] middles = figures.stream()
                .mapToInt(f -> path.at((f.startS() + f.endS()) / 2))
                .toArray();
        xM = median(Arrays.stream(middles).mapToDouble(i -> path.xM[i]).toArray());
        yM = median(Arrays.stream(middles).mapToDouble(i -> path.yM[i]).toArray());
        wideM = Math.max(
                LEAST_WIDE_M,
                WIDER * median(Arrays.stream(middles).mapToDouble(this::offM).toArray()));
        int[] begins = figures.stream().mapToInt(f -> path.at(f.startS())).toArray();
        mps = median(Arrays.stream(begins).mapToDouble(i -> path.mps[i]).toArray());
        heightM = median(Arrays.stream(begins).mapToDouble(i -> path.zM[i]).toArray());
    }

    /** What was found without the lines that are none to be seen, and without ways before the first and after the last. */
    static List<Found> in(Path path, List<Found> found) {
        List<Found> figures =
                found.stream().filter(f -> f.what() == What.FIGURE).toList();
        if (figures.isEmpty()) {
            return List.of();
        }
        Passes passes = new Passes(path, figures);
        List<Found> kept = new ArrayList<>();
        for (Found one : found) {
            if (one.what() != What.LINE || passes.isPass(one)) {
                kept.add(one);
            }
        }
        int first = 0;
        int last = kept.size() - 1;
        while (isNone(kept.get(first))) {
            first++;
        }
        while (isNone(kept.get(last))) {
            last--;
        }
        return List.copyOf(kept.subList(first, last + 1));
    }

    private static boolean isNone(Found one) {
        return one.what() == What.WAY || one.what() == What.UNKNOWN;
    }

    private boolean isPass(Found line) {
        int from = path.at(line.startS());
        int to = path.at(line.endS());
        double speed = 0;
        double height = 0;
        int nearest = from;
        for (int i = from; i <= to; i++) {
            speed += path.mps[i] / (to - from + 1);
            height += path.zM[i] / (to - from + 1);
            nearest = offM(i) < offM(nearest) ? i : nearest;
        }
        return line.seconds() >= LEAST_S && speed > SLOWEST * mps && offM(nearest) < wideM && isAmong(line, height);
    }

    /** Whether it lies between figures, or is low, and near to them, and leads neither to the first nor away from the last. */
    private boolean isAmong(Found line, double height) {
        double before = figures.get(0).startS() - line.endS();
        double after = line.startS() - figures.get(figures.size() - 1).endS();
        double apart = Math.max(before, after);
        if (apart < -MOMENT_S) {
            return true;
        }
        boolean follows = apart < APART_S;
        boolean shown = !follows || (after > before && line.seconds() >= LONG_S);
        return shown && apart < NEAR_S && height < heightM + HIGHER_M;
    }

    private double offM(int i) {
        return Math.hypot(path.xM[i] - xM, path.yM[i] - yM);
    }

    /** The one in the middle. */
    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
