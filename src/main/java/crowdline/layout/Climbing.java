package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.measure.Units;

/**
 * How an aircraft climbs and how fast it flies level, at one height.
 *
 * @param bestMps speed at which it gains height soonest, no faster than its displays roll
 * @param rateMps how fast it climbs then, m/s; below 0 it sinks
 * @param mostLevelMps greatest speed it holds level
 * @param sinks whether it cannot hold any
 */
record Climbing(double bestMps, double rateMps, double mostLevelMps, boolean sinks) {
    private static final int STEPS = 24;

    static Climbing of(FigureTrial trial, double heightM) {
        double stall = trial.stallMps(heightM);
        double most = 0.95 * Units.mpsFromKt(trial.airframe().neverExceedKt());
        double quick = Units.mpsFromKt(trial.usual().rollKt());
        double best = 1.3 * stall;
        double bestRate = Double.NEGATIVE_INFINITY;
        double level = 0;
        for (int i = 0; i <= STEPS; i++) {
            double v = 1.25 * stall + (most - 1.25 * stall) * i / STEPS;
            double climb = trial.climbs(v, heightM);
            if (climb * v > bestRate && v <= quick) {
                bestRate = climb * v;
                best = v;
            }
            if (climb >= 0) {
                level = v;
            }
        }
        return new Climbing(best, bestRate, level, level == 0);
    }
}
