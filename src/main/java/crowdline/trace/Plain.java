package crowdline.trace;

import crowdline.trace.Found.What;
import org.jspecify.annotations.Nullable;

/** What it costs to take a piece of a path for no figure: for a line, a way, or nothing known. */
final class Plain {
    /** What no figure fits, a second. Tuned, as all costs here. */
    private static final double UNKNOWN_PER_S = 0.35;
    /** A way more. */
    private static final double WAY = 0.7;
    /** A level turn, a second. */
    static final double WAY_PER_S = 0.05;
    /** A slow climb or a shallow dive, a second. */
    private static final double SLOPE_PER_S = 0.2;
    /** A line more. */
    private static final double LINE = 0.05;
    /** A line that bends, a second. */
    private static final double BENT_PER_S = 0.15;
    /** Degrees. */
    private static final double LEVEL_DEG = 15;
    /** Degrees: what is steeper belongs to a figure. */
    private static final double SLOPE_DEG = 32;
    /** Degrees: whoever turns further flies a full turn to show it. */
    private static final double WAY_TURNS_DEG = 280;
    /** Degrees: what turns less is a line, flown a little crooked. */
    private static final double LINE_TURNS_DEG = 40;
    /** Of a way, at most so much is steep. */
    private static final double STEEP_SHARE = 0.3;

    private final double scale;
    /** Seconds up to each point: level, on a slope, steep, bent; and degrees turned. */
    private final double[] levelS;

    private final double[] slopeS;
    private final double[] steepS;
    private final double[] bentS;
    private final double[] turnedDeg;
    /** Seconds that a line has lasted at each point. */
    private final double[] lineS;

    /** @param scale of a second, for an aircraft whose figures take more or less time than a light one's */
    Plain(Path path, double scale) {
        this.scale = scale;
        levelS = new double[path.size];
        slopeS = new double[path.size];
        steepS = new double[path.size];
        bentS = new double[path.size];
        turnedDeg = new double[path.size];
        lineS = new double[path.size];
        boolean[] lines = Straight.lines(path);
        for (int k = 0; k < path.size; k++) {
            double climb = Math.abs(path.climbDeg(k));
            boolean line = lines[k];
            if (k > 0) {
                levelS[k] = levelS[k - 1] + (climb < LEVEL_DEG ? Path.STEP_S : 0);
                slopeS[k] = slopeS[k - 1] + (climb >= LEVEL_DEG && climb < SLOPE_DEG ? Path.STEP_S : 0);
                steepS[k] = steepS[k - 1] + (climb >= SLOPE_DEG ? Path.STEP_S : 0);
                bentS[k] = bentS[k - 1] + (line ? 0 : Path.STEP_S);
                turnedDeg[k] = turnedDeg[k - 1] + path.turnDegPerS(k) * Path.STEP_S;
                lineS[k] = line ? lineS[k - 1] + Path.STEP_S : 0;
            }
        }
    }

    /** What a piece is, null for a line or a way, and what it costs. */
    record Cost(double cost, @Nullable What what) {}

    Cost of(int from, int to) {
        double level = levelS[to] - levelS[from];
        double slope = slopeS[to] - slopeS[from];
        double steep = steepS[to] - steepS[from];
        boolean flat = slope + steep < Path.STEP_S / 2;
        if (flat && swing(from, to) < LINE_TURNS_DEG) {
            return new Cost(scale * (LINE + BENT_PER_S * (bentS[to] - bentS[from])), null);
        }
        boolean round = flat && Math.abs(turnedDeg[to] - turnedDeg[from]) > WAY_TURNS_DEG;
        double cost = WAY
                + scale * ((round ? UNKNOWN_PER_S : WAY_PER_S) * level + SLOPE_PER_S * slope + UNKNOWN_PER_S * steep);
        return new Cost(cost, round || steep >= STEEP_SHARE * (level + slope) ? What.UNKNOWN : null);
    }

    /** What so much of a piece costs that is part of a way already: its lines nothing, as lines between ways. */
    double asWay(int from, int to, double mostS) {
        return scale * WAY_PER_S * Math.min(mostS, bentS[to] - bentS[from]);
    }

    /** How far the headings lie apart, degrees; not to the end where it is more than a line's. */
    private double swing(int from, int to) {
        double most = 0;
        double least = 0;
        for (int k = from + 1; k <= to && most - least < LINE_TURNS_DEG; k++) {
            double turned = turnedDeg[k] - turnedDeg[from];
            most = Math.max(most, turned);
            least = Math.min(least, turned);
        }
        return most - least;
    }

    /** Whether there is a longer line in a piece. */
    boolean hasLine(int from, int to, double longerS) {
        for (int k = from; k <= to; k++) {
            if (Math.min(lineS[k], (k - from) * Path.STEP_S) > longerS) {
                return true;
            }
        }
        return false;
    }
}
