package crowdline.follow;

import crowdline.measure.Units;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/** How hard the aircraft was flown of late, from its velocity now and then. */
final class RecentEffort {
    /** Seconds looked back over. Tuned: 8 works; more notices a landing later, less is met in figures. */
    static final double OVER_S = 6;
    /** Seconds over which a bend is taken. */
    private static final double BEND_S = Bins.CHORD_S + 0.05;
    /** Seconds: over a shorter time noise would be one. */
    private static final double SHORTEST_S = 0.5;
    /** Seconds: after a longer gap it begins anew. */
    private static final double LONGEST_GAP_S = 3;

    private final Deque<Velocity> velocities = new ArrayDeque<>();
    private final Deque<Moment> moments = new ArrayDeque<>();

    private record Velocity(double tS, double alongMps, double awayMps, double upMps) {
        double mps() {
            return Math.sqrt(alongMps * alongMps + awayMps * awayMps + upMps * upMps);
        }
    }

    private record Moment(double tS, double mps, double bentG, double climbMps, double awayM) {}

    /** Forgets what was before. */
    void clear() {
        velocities.clear();
        moments.clear();
    }

    /**
     * Takes the velocity at a time, in the order of time.
     *
     * @param awayM away from the crowd
     * @return how hard it was flown over the last seconds; null until it has been watched for long enough
     */
    @Nullable
    Effort add(double tS, double alongMps, double awayMps, double upMps, double awayM) {
        if (!velocities.isEmpty() && tS - velocities.getLast().tS > LONGEST_GAP_S) {
            clear();
        }
        Velocity now = new Velocity(tS, alongMps, awayMps, upMps);
        velocities.addLast(now);
        while (velocities.size() > 2 && tS - velocities.getFirst().tS > BEND_S) {
            velocities.removeFirst();
        }
        Velocity from = velocities.getFirst();
        if (tS - from.tS < SHORTEST_S) {
            return null;
        }
        moments.addLast(new Moment(tS, now.mps(), bentG(from, now), Math.abs(upMps), awayM));
        while (tS - moments.getFirst().tS > OVER_S) {
            moments.removeFirst();
        }
        return tS - moments.getFirst().tS < OVER_S - BEND_S ? null : effort();
    }

    private Effort effort() {
        double mps = 0;
        double bentG = 0;
        double climbMps = 0;
        double awayM = 0;
        for (Moment m : moments) {
            mps = Math.max(mps, m.mps);
            bentG = Math.max(bentG, m.bentG);
            climbMps = Math.max(climbMps, m.climbMps);
            awayM += m.awayM / moments.size();
        }
        return new Effort(mps, bentG, climbMps, awayM);
    }

    /** The change of velocity across the path. */
    private static double bentG(Velocity from, Velocity to) {
        double x = to.alongMps - from.alongMps;
        double y = to.awayMps - from.awayMps;
        double z = to.upMps - from.upMps;
        double meanX = to.alongMps + from.alongMps;
        double meanY = to.awayMps + from.awayMps;
        double meanZ = to.upMps + from.upMps;
        double mean = Math.sqrt(meanX * meanX + meanY * meanY + meanZ * meanZ);
        double along = mean > 0 ? (x * meanX + y * meanY + z * meanZ) / mean : 0;
        return Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along)) / (to.tS - from.tS) / Units.G_MPS2;
    }
}
