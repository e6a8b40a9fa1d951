package crowdline.arrange;

import crowdline.list.line.ListLine;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a pilot takes apart is flown in one: "pull to vertical, half roll, push out" is a vertical roll up. Apart, the aircraft would
 * come down from the vertical, turn back and roll level.
 */
final class VerticalLines {
    private static final String UP = "pull to vertical";
    private static final String ROLLED = "vertical roll up";
    private static final String OUT = "push-over";

    private VerticalLines() {}

    /** Joins them in place. */
    static void together(List<ListLine> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (ROLLED.equals(lines.get(i).figure()) && isPlain(after(lines, i, 1), OUT)) {
                join(lines, i, ROLLED, lines.get(i).count());
            }
            if (!isPlain(lines.get(i), UP)) {
                continue;
            }
            Double rolls = rolls(after(lines, i, 1));
            boolean goesOut = isPlain(after(lines, i, rolls == null ? 1 : 2), OUT);
            // A full roll may be the next figure; a half one leads to nothing in level flight.
            if (rolls != null && rolls % 1 == 0 && !goesOut) {
                continue;
            }
            if (rolls != null) {
                join(lines, i, ROLLED, rolls);
            }
            if (goesOut) {
                join(lines, i, rolls == null ? UP : ROLLED, rolls);
            }
        }
    }

    private static @Nullable ListLine after(List<ListLine> lines, int i, int steps) {
        return i + steps < lines.size() ? lines.get(i + steps) : null;
    }

    private static boolean isPlain(@Nullable ListLine line, String figure) {
        return line != null && figure.equals(line.figure()) && line.count() == null;
    }

    /** How often it rolls, if it is what is rolled on a line upwards; else null. */
    private static @Nullable Double rolls(@Nullable ListLine line) {
        String figure = line == null ? null : line.figure();
        double each = "half roll".equals(figure) ? 0.5 : "aileron roll".equals(figure) ? 1 : 0;
        Double count = line == null ? null : line.count();
        return each == 0 ? null : Double.valueOf(each * (count == null ? 1 : count));
    }

    private static void join(List<ListLine> lines, int i, String figure, @Nullable Double count) {
        ListLine both = AskedFigures.together(lines.get(i), lines.remove(i + 1));
        lines.set(i, both.takenFor(figure, count, both.sure()));
    }
}
