package crowdline.live;

import crowdline.live.Debrief.FigureRun;
import crowdline.live.Debrief.Run;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns an act flown live into a pass to learn from. */
public final class LivePass {
    private LivePass() {}

    /**
     * The figures of a run whose both ends were marked by hand or aircraft; what the clock marked is only the prediction
     * again. The time the clock was held is taken out. Empty if nothing is left or the act is in the air.
     *
     * @param id of the pass
     * @param begunAt when the run began
     */
    public static Optional<Pass> of(Run run, String id, Instant begunAt) {
        List<Pass.TimedFigure> figures = new ArrayList<>();
        double heldS = 0;
        for (FigureRun figure : run.figures()) {
            Double startS = figure.startS();
            Double flownS = figure.flownS();
            if (figure.measured() && startS != null && flownS != null && flownS > 0) {
                figures.add(new Pass.TimedFigure(figure.figureId(), startS - heldS, startS - heldS + flownS));
            }
            heldS += figure.heldS();
        }
        return figures.isEmpty() || run.sessionEndS() == null
                ? Optional.empty()
                : Optional.of(
                        new Pass(id, run.actId(), run.variant(), Pass.How.LIVE, begunAt, "run live", figures, true));
    }
}
