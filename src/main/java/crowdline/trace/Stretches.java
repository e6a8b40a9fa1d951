package crowdline.trace;

import java.util.ArrayList;
import java.util.List;

/** Cuts a path where the aircraft flies level and straight. */
final class Stretches {
    /** Seconds: what bends for less is noise. */
    static final double LEAST_S = 1.5;
    /** Degrees: a line climbs or sinks by less. */
    private static final double LEVEL_DEG = 12;
    /** Degrees a second: a line bends less. */
    private static final double STRAIGHT_DEG_PER_S = 5;
    /** Seconds: a shorter line is a moment within a figure. */
    private static final double LEAST_LINE_S = 0.8;

    private Stretches() {}

    static boolean isLine(Path path, int i) {
        return Math.abs(path.climbDeg(i)) < LEVEL_DEG && path.bendDegPerS(i) < STRAIGHT_DEG_PER_S;
    }

    /** Points from and to of everything that is no line, in order. */
    static List<int[]> of(Path path) {
        List<int[]> found = new ArrayList<>();
        for (int i = 0; i < path.size; i++) {
            if (isLine(path, i)) {
                continue;
            }
            int[] last = found.isEmpty() ? null : found.get(found.size() - 1);
            if (last != null && (i - last[1]) * Path.STEP_S <= LEAST_LINE_S) {
                last[1] = i;
            } else {
                found.add(new int[] {i, i});
            }
        }
        found.removeIf(s -> (s[1] - s[0]) * Path.STEP_S < LEAST_S);
        return found;
    }
}
