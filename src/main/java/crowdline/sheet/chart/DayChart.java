package crowdline.sheet.chart;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a chart of a day, or of an act, shows: how late it was, how much of the time was talk, bars as planned and as flown, when each
 * duty was told, and what else there was on the time line. Hours are hours of the day, 24 and more after
 * midnight.
 *
 * @param bars what was planned and what was flown
 * @param duties each time a duty was told, or is owed
 * @param line announcements, notes and the like
 * @param talk how much of the time was talk
 * @param late how late it was
 * @param beside another day, or null
 */
public record DayChart(
        Bars bars,
        Dots duties,
        Dots line,
        List<Share> talk,
        Curves late,
        @Nullable Beside beside) {

    /**
     * Rows with stretches of time.
     *
     * @param name of them all
     * @param rows how each is called
     * @param planned when each was to be flown
     * @param flown when each was
     * @param spoken when somebody spoke in what was flown
     */
    public record Bars(String name, List<String> rows, List<Span> planned, List<Span> flown, List<Span> spoken) {
        public Bars {
            rows = List.copyOf(rows);
            planned = List.copyOf(planned);
            flown = List.copyOf(flown);
            spoken = List.copyOf(spoken);
        }
    }

    /** Rows with moments. */
    public record Dots(String name, List<String> rows, List<Dot> dots) {
        public Dots {
            rows = List.copyOf(rows);
            dots = List.copyOf(dots);
        }
    }

    /**
     * Curves.
     *
     * @param name what they tell, with its unit
     */
    public record Curves(String name, List<Curve> curves) {
        public Curves {
            curves = List.copyOf(curves);
        }
    }

    /** The same of another day, at its own hours, in the rows of this one. */
    public record Beside(List<Span> flown, List<Share> talk, List<Curve> late) {
        public Beside {
            flown = List.copyOf(flown);
            talk = List.copyOf(talk);
            late = List.copyOf(late);
        }
    }

    /** A stretch of the day in a row, counted from 0. */
    public record Span(int row, double fromH, double toH) {}

    /** What a moment looks like. */
    public enum Shape {
        /** It was said, or happened. */
        DISC,
        /** It was only shown. */
        RING,
        /** It is owed. */
        CROSS
    }

    /** A moment in a row. */
    public record Dot(int row, double atH, Shape shape) {}

    /** A share of a stretch of the day, 0 to 100. */
    public record Share(double fromH, double toH, double percent) {}

    /** A value at a moment; how late, negative for early. */
    public record Point(double atH, double late) {}

    /** A curve with its name. */
    public record Curve(String name, List<Point> points) {
        public Curve {
            points = List.copyOf(points);
        }
    }

    public DayChart {
        talk = List.copyOf(talk);
    }

    /** How tall it is to be, in lines of its letters. */
    public double lines() {
        double lines = 3 + 1.7 * Math.max(2, bars.rows().size()) + 13;
        for (Dots each : List.of(duties, line)) {
            lines += each.rows().isEmpty()
                    ? 0
                    : 1 + 1.6 * Math.max(1, each.rows().size());
        }
        return lines;
    }
}
