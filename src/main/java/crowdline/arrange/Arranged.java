package crowdline.arrange;

import crowdline.layout.LaidOut;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The figures of an act with what is flown between them.
 *
 * @param entry where the aircraft is when the first begins; null if nothing is flown, only timed
 * @param figures in the order flown, transits among them
 * @param times how long each takes, seconds
 * @param findings what could not be had, each a sentence
 */
public record Arranged(
        @Nullable Placing entry, List<Figure> figures, List<Double> times, List<LaidOut.Finding> findings) {
    public Arranged {
        figures = List.copyOf(figures);
        times = List.copyOf(times);
        findings = List.copyOf(findings);
    }

    /** How long it takes, seconds. */
    public double seconds() {
        return times.stream().mapToDouble(Double::doubleValue).sum();
    }
}
