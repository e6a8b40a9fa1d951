package crowdline.trace;

import crowdline.trace.Found.What;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Which Derry turns were flown to be seen: those along the line that the figures are flown along, in the middle of it. Ways turn
 * to one side and back as well, wherever they must.
 */
final class Swings {
    private static final String SWING = "Derry turn";
    /** Cosine of the angle to the line. Tuned, with the next. */
    private static final double ALONG = 0.98;
    /** How much further from the middle it may be than half of the figures. */
    private static final double FURTHER = 2.2;
    /** Metres: what is nearer to the middle is in it. */
    private static final double LEAST_WIDE_M = 300;
    /** Fewer tell of no line. */
    private static final int LEAST_FIGURES = 2;

    private final Path path;
    private final double xM;
    private final double yM;
    private final double wideM;
    private final double lineRad;

    private Swings(Path path, List<Found> figures) {
        this.path = path;
        xM = median(figures, f -> path.xM[middle(f)]);
        yM = median(figures, f -> path.yM[middle(f)]);
        wideM = Math.max(LEAST_WIDE_M, median(figures, this::offM));
        // There and back are the same line.
        lineRad = Math.atan2(
                        figures.stream()
                                .mapToDouble(f -> Math.sin(2 * headingRad(f.startS())))
                                .sum(),
                        figures.stream()
                                .mapToDouble(f -> Math.cos(2 * headingRad(f.startS())))
                                .sum())
                / 2;
    }

    /** The same, with ways for those that lead. */
    static List<Found> in(Path path, List<Found> found) {
        List<Found> others = found.stream()
                .filter(f -> f.what() == What.FIGURE && !isSwing(f))
                .toList();
        if (others.size() < LEAST_FIGURES) {
            return found;
        }
        Swings swings = new Swings(path, others);
        return found.stream()
                .map(f -> isSwing(f) && !swings.isShown(f) ? new Found(What.WAY, f.startS(), f.endS(), List.of()) : f)
                .toList();
    }

    private static boolean isSwing(Found one) {
        return one.what() == What.FIGURE && one.guesses().get(0).name().equals(SWING);
    }

    private boolean isShown(Found swing) {
        return isAlong(swing.startS()) && isAlong(swing.endS()) && offM(swing) < FURTHER * wideM;
    }

    private boolean isAlong(double tS) {
        return Math.abs(Math.cos(headingRad(tS) - lineRad)) > ALONG;
    }

    private double headingRad(double tS) {
        int i = path.at(tS);
        return Math.atan2(path.ty[i], path.tx[i]);
    }

    private double offM(Found one) {
        return Math.hypot(path.xM[middle(one)] - xM, path.yM[middle(one)] - yM);
    }

    private int middle(Found one) {
        return path.at((one.startS() + one.endS()) / 2);
    }

    private static double median(List<Found> figures, ToDoubleFunction<Found> value) {
        return Passes.median(figures.stream().mapToDouble(value).toArray());
    }
}
