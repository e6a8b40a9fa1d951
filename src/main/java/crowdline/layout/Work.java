package crowdline.layout;

import crowdline.flight.FigureTrial;

/**
 * How much is flown to lay out one act, counted in steps of the integration: nearly the same time each, and the same
 * number on every machine. What is left to find once a share of that is used up is found with fewer tries.
 */
final class Work {
    /** For each figure of an act, steps; 20 figures take about a tenth of a second then. */
    private static final long FOR_A_FIGURE = 2_700;
    /** An act of fewer figures has as much as one of so many. */
    private static final int LEAST_FIGURES = 20;

    /** From this share on figures are drawn with fewer tries. */
    private static final double HURRIES = 0.6;

    private final FigureTrial trial;
    private final long began;
    private long most = FOR_A_FIGURE * LEAST_FIGURES;

    Work(FigureTrial trial) {
        this.trial = trial;
        // What was kept of another act would make this one cheaper, and so another.
        trial.forget();
        began = trial.steps();
    }

    /** What work is done for, in its order. */
    enum Part {
        MEASURING(0.4),
        FLYING(0.7),
        SAYING(1.1);

        private final double share;

        Part(double share) {
            this.share = share;
        }
    }

    /** Lets it be as much as an act of so many figures takes. */
    void isFor(int figures) {
        most = FOR_A_FIGURE * Math.max(figures, LEAST_FIGURES);
        trial.hurriesFrom(began + (long) (HURRIES * most));
    }

    /** Whether there is any left for this. */
    boolean isLeft(Part part) {
        return trial.steps() - began < part.share * most;
    }
}
