package crowdline.trace;

import java.util.Arrays;

/** Where a path is level and straight. */
final class Straight {
    /** Seconds: what bends for less is noise. */
    static final double LEAST_S = 1.5;
    /** Degrees: a line climbs or sinks by less. */
    private static final double LEVEL_DEG = 12;
    /** Across the way: a line bends less hard, as in a turn of 27 degrees of bank. Noise makes no more, however fast it flies. */
    private static final double STRAIGHT_MPS2 = 5;

    /** Seconds. */
    private static final double MOMENT_S = 0.7;

    private Straight() {}

    /** Which points of a path are on a line; what bends for a moment is noise. */
    static boolean[] lines(Path path) {
        boolean[] lines = new boolean[path.size];
        int last = -1;
        for (int i = 0; i < path.size; i++) {
            if (isLine(path, i)) {
                lines[i] = true;
                if (last >= 0 && i - last > 1 && (i - last - 1) * Path.STEP_S <= MOMENT_S) {
                    Arrays.fill(lines, last, i, true);
                }
                last = i;
            }
        }
        return lines;
    }

    /** Whether a point of a path is on a line. */
    static boolean isLine(Path path, int i) {
        return Math.abs(path.climbDeg(i)) < LEVEL_DEG && path.bendMps2(i) < STRAIGHT_MPS2;
    }
}
