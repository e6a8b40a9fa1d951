package crowdline.follow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How soon a changed order is noticed, and how often a figure is named that is not flown. A change is whatever is flown that the
 * plan does not have after what was flown before it: the figure after one that was dropped, one flown again, each of three
 * where two were swapped, something unknown and what follows it, a landing too soon.
 */
final class Changes {
    /** What is said is right again if it stays so for this long, seconds. */
    static final double STAYS_S = 2;
    /** Seconds around a figure in which it is no fault to name it. */
    private static final double NEAR_S = 1;

    private final List<Double> recoversS = new ArrayList<>();
    private int astray;
    private int back;
    private int flights;

    /** Counts one flight; what was said is in steps of {@link Score#STEP_S}. */
    void count(Truth truth, List<Score.Said> said) {
        flights++;
        for (int i = 1; i < truth.flown.size(); i++) {
            Truth.Flown flown = truth.flown.get(i);
            if (flown.figure() != truth.flown.get(i - 1).figure() + 1) {
                recoversS.add(recoversS(truth, said, flown.startS()));
            }
        }
        int last = Truth.BEFORE;
        for (Score.Said s : said) {
            if (s.figure() < 0) {
                continue;
            }
            boolean flown = s.figure() == last || isNear(truth, s);
            astray += flown ? 0 : 1;
            back += !flown && s.figure() < last ? 1 : 0;
            last = s.figure();
        }
    }

    /**
     * Seconds from a change until what is said is what is flown, and stays so but for a second around boundaries; to the end
     * of the flight if it never is.
     */
    static double recoversS(Truth truth, List<Score.Said> said, double changeS) {
        double rightS = Double.NaN;
        for (Score.Said s : said) {
            if (s.tS() < changeS) {
                continue;
            }
            if (!isNear(truth, s)) {
                rightS = Double.NaN;
            } else if (Double.isNaN(rightS) && s.figure() == truth.figureAt(s.tS())) {
                rightS = s.tS();
            }
            if (s.tS() - rightS >= STAYS_S) {
                return rightS - changeS;
            }
        }
        return truth.endS() - changeS;
    }

    /** Whether what was said is flown within a second of that moment. */
    static boolean isNear(Truth truth, Score.Said s) {
        return s.figure() == truth.figureAt(s.tS())
                || truth.flown.stream()
                        .anyMatch(f ->
                                f.figure() == s.figure() && s.tS() > f.startS() - NEAR_S && s.tS() < f.endS() + NEAR_S);
    }

    /** Seconds within which such a share of the changes was noticed; not a number where there were none. */
    double recoversS(double share) {
        List<Double> sorted = new ArrayList<>(recoversS);
        Collections.sort(sorted);
        return sorted.isEmpty() ? Double.NaN : sorted.get((int) Math.min(sorted.size() - 1.0, share * sorted.size()));
    }

    /** How often in a flight a figure came to be named that was not flown within a second of then. */
    double astrayAFlight() {
        return astray / (double) flights;
    }

    /** How often of these it was an earlier one than the last that was named. */
    double backAFlight() {
        return back / (double) flights;
    }
}
