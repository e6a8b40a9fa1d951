package crowdline.trace;

import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.List;

/** What lies between two figures: lines, and ways where it turns, climbs or dives. */
final class Between {
    /** Seconds: a line is not over that bends for less and goes on as it was. */
    private static final double CROOKED_S = 5;
    /** Seconds: a shorter way is none. */
    private static final double WAY_S = 2;
    /** Degrees: a line turns less on the whole. */
    private static final double LINE_TURNS_DEG = 40;
    /** Seconds: a shorter line is not worth a remark. */
    private static final double LINE_S = 2.5;

    private Between() {}

    /** From a point to another, in order. */
    static List<Found> in(Path path, int from, int to) {
        List<int[]> lines = new ArrayList<>();
        for (int i = from; i <= to; i++) {
            if (!Straight.isLine(path, i)) {
                continue;
            }
            int[] last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
            if (last != null && (i - last[1]) * Path.STEP_S <= CROOKED_S && isStraight(path, last[0], i)) {
                last[1] = i;
            } else {
                lines.add(new int[] {i, i});
            }
        }
        lines.removeIf(l -> (l[1] - l[0]) * Path.STEP_S < LINE_S);
        List<Found> found = new ArrayList<>();
        int at = from;
        for (int[] line : lines) {
            way(found, path, at, line[0]);
            found.add(new Found(What.LINE, path.tS(line[0]), path.tS(line[1]), List.of()));
            at = line[1];
        }
        way(found, path, at, to);
        return found;
    }

    private static boolean isStraight(Path path, int from, int to) {
        double dot = path.tx[from] * path.tx[to] + path.ty[from] * path.ty[to] + path.tz[from] * path.tz[to];
        return dot > Math.cos(Math.toRadians(LINE_TURNS_DEG));
    }

    private static void way(List<Found> found, Path path, int from, int to) {
        if ((to - from) * Path.STEP_S > WAY_S) {
            found.add(new Found(What.WAY, path.tS(from), path.tS(to), List.of()));
        }
    }
}
