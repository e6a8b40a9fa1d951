package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * How the last stretch before a beginning is flown: speed that the engine alone does not give is dived for, and what is
 * slower than it turns well is slowed down to.
 */
final class Leading {
    /** Slope of a dive for speed, as a tangent. */
    static final double DIVE = 0.2;
    /** Height for speed, with what drag takes. */
    static final double DIVE_LOSS = 1.3;
    /** Speed for height, less what drag takes. */
    static final double ZOOM_LOSS = 0.8;
    /** It turns well from so many stalling speeds on. */
    private static final double TURNS_STALLS = 1.6;
    /** Speeds to climb at, from the best one to the one that is wanted in the end. */
    private static final double[] CLIMBS_AT = {0, 0.5, 1};
    /** Of the greatest level speed, what is reached in good time. */
    static final double GOOD_TIME = 0.92;

    private final FigureTrial trial;
    private final Climbing climbing;
    private final Straight straight;
    private final Estimating estimating;
    private final double leastM;

    /** @param leastM nothing is come round for lower, metres above the datum */
    Leading(FigureTrial trial, Climbing climbing, Straight straight, Estimating estimating, double leastM) {
        this.leastM = leastM;
        this.trial = trial;
        this.climbing = climbing;
        this.straight = straight;
        this.estimating = estimating;
    }

    /** How the last stretch is flown: from where, how high and how fast it begins. */
    record Lead(Entry from, boolean separate) {}

    Lead lead(Entry to, FlightState at) {
        if (climbing.sinks()) {
            Entry from = estimating.dive(at, to).from();
            return new Lead(from, !from.equals(to));
        }
        double comes = comesMps(to, at);
        if (comes < to.slowestMps()) {
            double high = diveM(to, comes);
            double from = to.alongM() - to.way() * (high / DIVE + 2 * comes);
            return new Lead(
                    Entry.anyhow(from, to.awayM(), to.heightM() + high, comes, to.toRight())
                            .within(0.9, 1.25),
                    true);
        }
        if (comes > to.fastestMps()) {
            double heightM = to.heightM() - zoomM(to, at, comes);
            FlightState slowing = FlightState.along(new Vec(0, to.awayM(), heightM), comes, to.toRight());
            double from = to.alongM() - to.way() * (straight.heightM(slowing, to) + 2 * comes);
            return new Lead(
                    Entry.anyhow(from, to.awayM(), heightM, comes, to.toRight()).within(0, 1.3), true);
        }
        return new Lead(
                new Entry(to.alongM(), to.awayM(), to.heightM(), comes, to.slowestMps(), to.fastestMps(), to.toRight()),
                false);
    }

    /** How fast it comes round: so that height and speed are soonest had, and no slower than it turns well. */
    private double comesMps(Entry to, FlightState at) {
        double level = GOOD_TIME * climbing.mostLevelMps();
        double turns = Math.min(TURNS_STALLS * trial.stallMps(to.heightM()), level);
        double direct = Math.max(Math.min(to.mps(), level), Math.min(turns, at.speedMps()));
        if (to.heightM() - at.place().z() <= 30) {
            return direct;
        }
        double slow = Math.min(climbing.bestMps(), level);
        double best = slow;
        double soonest = Double.POSITIVE_INFINITY;
        List<Double> speeds = new ArrayList<>();
        for (double share : CLIMBS_AT) {
            speeds.add(slow + share * (direct - slow));
        }
        speeds.add(at.speedMps());
        for (double mps : speeds) {
            double seconds = climbS(to, at, mps) + turnS(at, mps);
            if (seconds < soonest) {
                soonest = seconds;
                best = mps;
            }
        }
        return best;
    }

    /** About how long it takes to have the height and the speed of a beginning, climbing at a speed, seconds. */
    private double climbS(Entry to, FlightState at, double mps) {
        double high = mps < to.slowestMps() ? diveM(to, mps) : 0;
        double up = to.heightM() + high - at.place().z();
        double energyM = up + (mps * mps - at.speedMps() * at.speedMps()) / (2 * Units.G_MPS2);
        double rate = Math.max(trial.climbs(mps, to.heightM()), Straight.LEAST_CLIMB) * mps;
        return Math.max(energyM, 0) / rate + high / DIVE / mps;
    }

    /** About how long it takes to turn round at a speed, seconds. */
    private double turnS(FlightState at, double mps) {
        return Estimating.TURN_RADII * straight.radiusM(mps, at.place().z()) / mps;
    }

    /** How much lower it comes round than a slow beginning is high, metres: the speed there is too much takes it up. */
    private double zoomM(Entry to, FlightState at, double mps) {
        double takesUpM = ZOOM_LOSS * (mps * mps - to.mps() * to.mps()) / (2 * Units.G_MPS2);
        double from =
                at.place().z() > to.heightM() ? leastM : Math.max(at.place().z(), leastM);
        double room = to.heightM() - from;
        return Math.max(Math.min(takesUpM, room), 0);
    }

    /** How much higher a dive begins that gives the speed of a beginning, metres. */
    private static double diveM(Entry to, double mps) {
        double speed = (to.slowestMps() + Math.min(to.mps(), to.fastestMps())) / 2;
        return DIVE_LOSS * (speed * speed - mps * mps) / (2 * Units.G_MPS2);
    }
}
