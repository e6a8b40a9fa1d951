package crowdline.arrange;

import crowdline.layout.LaidOut;
import crowdline.show.figure.Asked;
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

    /** How long it takes, seconds; by the clock of the list as far as it has one. */
    public double seconds() {
        double seconds = 0;
        for (int i = figures.size() - 1; i >= 0; i--) {
            seconds += times.get(i);
            Asked asked = figures.get(i).asked();
            if (asked != null && asked.beginsS() != null) {
                return asked.beginsS() + seconds;
            }
        }
        return seconds;
    }
}
