package crowdline.sheet.chart;

import java.util.List;

/**
 * What a chart of a day shows, from top to bottom: the acts as planned and as flown, when each duty was told, how much of the
 * time was talk, and how late it was in each act. Hours are hours of the day, 24 and more after midnight.
 *
 * @param acts how they are called, in the order they were to be flown
 * @param planned when each was to be flown
 * @param flown when each was
 * @param duties how they are called
 * @param told each time one was said or shown
 * @param talk how much of the time was talk
 * @param late how late it was, a curve for each act flown
 */
public record DayChart(
        List<String> acts,
        List<Span> planned,
        List<Span> flown,
        List<String> duties,
        List<Dot> told,
        List<Share> talk,
        List<Curve> late) {

    /** A stretch of the day in a row, counted from 0. */
    public record Span(int row, double fromH, double toH) {}

    /** A moment in a row. */
    public record Dot(int row, double atH, boolean said) {}

    /** A share of a stretch of the day, 0 to 100. */
    public record Share(double fromH, double toH, double percent) {}

    /** A value at a moment; minutes late, negative for early. */
    public record Point(double atH, double minutes) {}

    /** A curve with its name. */
    public record Curve(String name, List<Point> points) {
        public Curve {
            points = List.copyOf(points);
        }
    }

    public DayChart {
        acts = List.copyOf(acts);
        planned = List.copyOf(planned);
        flown = List.copyOf(flown);
        duties = List.copyOf(duties);
        told = List.copyOf(told);
        talk = List.copyOf(talk);
        late = List.copyOf(late);
    }
}
