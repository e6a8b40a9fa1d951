package crowdline.console.debrief;

import crowdline.console.paint.Mark;
import java.util.List;

/**
 * What the Debrief place shows.
 *
 * @param title of the show
 * @param thanks duties and thanks marked, in a sentence
 * @param runs the acts flown, in the order flown
 * @param incidents when the incident page was open
 * @param changes what to change; then duties, announcements and notes
 * @param empty what to do if nothing has been flown, else empty
 * @param charts of the day, then of each act flown; none if nothing has been flown
 */
public record DebriefView(
        String title,
        Mark thanks,
        List<RunView> runs,
        List<String> incidents,
        List<Line> changes,
        String empty,
        Charts charts) {

    /**
     * An act as it was flown.
     *
     * @param when such as "full, 14:31:02 to 14:35:40"
     * @param total such as "4:38 flown, 4:20 planned: 18 s longer"
     * @param said how many remarks were marked
     */
    public record RunView(
            String title, String when, String total, List<FigureRow> figures, String said, List<Line> remarks) {
        public RunView {
            figures = List.copyOf(figures);
            remarks = List.copyOf(remarks);
        }
    }

    /** A figure, planned and flown; a value nobody knows is a dash. */
    public record FigureRow(
            String name, String planned, String began, String late, String plannedS, String flownS, String differs) {}

    /**
     * A line with a state.
     *
     * @param aside a few words at its right, or empty
     */
    public record Line(Mark mark, String text, String aside) {}

    public DebriefView {
        runs = List.copyOf(runs);
        incidents = List.copyOf(incidents);
        changes = List.copyOf(changes);
    }
}
