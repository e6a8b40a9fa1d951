package crowdline.flight;

/**
 * Fourth-order Runge–Kutta with steps short enough for each leg and an end found by repeating the last step at other
 * lengths until the leg's end function is zero.
 */
final class Integrator {
    /** Told of every point reached, including the first and the last of a leg. */
    interface Watcher {
        void at(Leg leg, double tS, double legS, double[] y);
    }

    /** How a leg ended. */
    enum Outcome {
        FLOWN,
        OUT_OF_SPEED,
        NEVER_ENDS
    }

    /** What is left after a leg. */
    record Result(Outcome outcome, Moment moment) {}

    private static final int END_ITERATIONS = 60;
    private static final double END_TOLERANCE = 1e-10;

    private final double gridS;
    private final double stepFactor;
    private final Watcher watcher;

    private final double[] k1 = new double[8];
    private final double[] k2 = new double[8];
    private final double[] k3 = new double[8];
    private final double[] k4 = new double[8];
    private final double[] middle = new double[8];

    /**
     * @param gridS times that are a multiple of this are always reached exactly, seconds; 0 for none
     * @param stepFactor factor on every leg's own step
     */
    Integrator(double gridS, double stepFactor, Watcher watcher) {
        this.gridS = gridS;
        this.stepFactor = stepFactor;
        this.watcher = watcher;
    }

    /** Flies a leg to its end. */
    Result fly(Leg leg, double startS) {
        double[] y = leg.start();
        double[] next = new double[y.length];
        double t = 0;
        watcher.at(leg, startS, 0, y);
        if (leg.end(0, y) >= 0) {
            return new Result(Outcome.FLOWN, leg.after(startS, 0, y));
        }
        while (t < leg.longestS()) {
            if (leg.outOfSpeed(t, y)) {
                return new Result(Outcome.OUT_OF_SPEED, leg.after(startS + t, t, y));
            }
            double h = step(leg, startS + t);
            advance(leg, t, y, h, next);
            if (leg.end(t + h, next) >= 0) {
                h = untilEnd(leg, t, y, h, next);
                watcher.at(leg, startS + t + h, t + h, next);
                return new Result(Outcome.FLOWN, leg.after(startS + t + h, t + h, next));
            }
            t += h;
            double[] swap = y;
            y = next;
            next = swap;
            watcher.at(leg, startS + t, t, y);
        }
        return new Result(Outcome.NEVER_ENDS, leg.after(startS + t, t, y));
    }

    private double step(Leg leg, double tS) {
        double h = leg.stepS() * stepFactor;
        if (gridS > 0) {
            double toGrid = (Math.floor(tS / gridS + 1e-9) + 1) * gridS - tS;
            h = Math.min(h, toGrid);
        }
        return h;
    }

    /** Regula falsi (Illinois) on the length of the step; leaves the end point in {@code next}. */
    private double untilEnd(Leg leg, double t, double[] y, double h, double[] next) {
        double low = 0;
        double fLow = leg.end(t, y);
        double high = h;
        double fHigh = leg.end(t + h, next);
        for (int i = 0; i < END_ITERATIONS && high - low > 1e-14; i++) {
            double at = low + (high - low) * fLow / (fLow - fHigh);
            advance(leg, t, y, at, next);
            double f = leg.end(t + at, next);
            if (Math.abs(f) <= END_TOLERANCE) {
                return at;
            }
            if (f < 0) {
                low = at;
                fLow = f;
                fHigh /= 2;
            } else {
                high = at;
                fHigh = f;
                fLow /= 2;
            }
        }
        advance(leg, t, y, high, next);
        return high;
    }

    private void advance(Leg leg, double t, double[] y, double h, double[] next) {
        int n = y.length;
        leg.rates(t, y, k1);
        for (int i = 0; i < n; i++) {
            middle[i] = y[i] + h / 2 * k1[i];
        }
        leg.rates(t + h / 2, middle, k2);
        for (int i = 0; i < n; i++) {
            middle[i] = y[i] + h / 2 * k2[i];
        }
        leg.rates(t + h / 2, middle, k3);
        for (int i = 0; i < n; i++) {
            middle[i] = y[i] + h * k3[i];
        }
        leg.rates(t + h, middle, k4);
        for (int i = 0; i < n; i++) {
            next[i] = y[i] + h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
        }
    }
}
