package crowdline.timing;

import java.util.List;
import java.util.Objects;

/**
 * What passes say about one figure.
 *
 * @param predicted its time before any pass
 * @param learned its time now; the predicted duration and band if no pass timed it
 * @param runs what the passes that teach timed, in their order
 */
public record LearnedFigure(FigureTime predicted, FigureTime learned, List<TimedRun> runs) {
    public LearnedFigure {
        runs = List.copyOf(runs);
    }

    public String figureId() {
        return predicted.figureId();
    }

    /** How many passes it was learned from. */
    public int passes() {
        return (int) runs.stream().map(TimedRun::passId).distinct().count();
    }

    /** Why some runs are unlike the others, in words; empty if none is. */
    public List<String> odd() {
        return runs.stream().map(TimedRun::odd).filter(Objects::nonNull).toList();
    }
}
