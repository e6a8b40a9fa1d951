package crowdline.console.walk;

import crowdline.timing.Pass;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Times a pass walked on the ground: one press as each figure begins, one as the last ends. Time is a parameter. */
final class PassTimer {
    /** Two presses closer than this are one, so that a bounce does not make a figure; tuned. */
    private static final double LEAST_S = 0.2;

    private final List<String> figureIds;
    private final List<Double> marksS = new ArrayList<>();

    PassTimer(List<String> figureIds) {
        this.figureIds = List.copyOf(figureIds);
    }

    /**
     * A figure begins, or the last one ends.
     *
     * @return true if it was the last
     */
    boolean mark(double nowS) {
        if (!marksS.isEmpty() && nowS - marksS.get(marksS.size() - 1) < LEAST_S) {
            return false;
        }
        marksS.add(nowS);
        return marksS.size() > figureIds.size();
    }

    /** Takes the last press back. */
    void back() {
        if (!marksS.isEmpty()) {
            marksS.remove(marksS.size() - 1);
        }
    }

    /** The figure being walked, −1 before the first. */
    int index() {
        return Math.min(marksS.size(), figureIds.size()) - 1;
    }

    /** How long the figure has been walked; 0 before the first. */
    double inFigureS(double nowS) {
        return marksS.isEmpty() ? 0 : Math.max(0, nowS - marksS.get(marksS.size() - 1));
    }

    double sinceStartS(double nowS) {
        return marksS.isEmpty() ? 0 : Math.max(0, nowS - marksS.get(0));
    }

    /** The pass of what has both its ends; empty if nothing has. */
    Optional<Pass> pass(String id, String actId, String variant, Instant begunAt) {
        List<Pass.TimedFigure> figures = new ArrayList<>();
        for (int i = 0; i + 1 < marksS.size() && i < figureIds.size(); i++) {
            double zeroS = marksS.get(0);
            figures.add(new Pass.TimedFigure(figureIds.get(i), marksS.get(i) - zeroS, marksS.get(i + 1) - zeroS));
        }
        return figures.isEmpty()
                ? Optional.empty()
                : Optional.of(Pass.of(id, actId, variant, Pass.How.WALKED, begunAt, figures));
    }
}
