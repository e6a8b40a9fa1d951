package crowdline.practice;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;

/** The way of an aircraft that leaves a figure in its middle: always away from the crowd. Drawn, not flown. */
final class WayOut {
    private static final double STEP_S = 0.1;
    /** How fast its path bends, radians a second; tuned by looking. */
    private static final double BENDS_RAD_S = 0.42;

    private static final double ROLLS_SHARE = 0.09;
    /** It is out of sight below this height over the ground, behind what stands there, metres. */
    private static final double OUT_OF_SIGHT_M = 12;

    private static final double AWAY_S = 18;
    private static final double LEAST_MPS = 40;

    private final List<Pose> poses = new ArrayList<>();
    private Vec direction;
    private final double speedMps;

    private WayOut(Pose from, Vec velocity) {
        poses.add(from);
        speedMps = Math.max(velocity.length(), LEAST_MPS);
        direction = velocity.length() < 1 ? from.nose() : velocity.unit();
    }

    /** Climbs out, wings level. */
    static List<Pose> climbing(Pose from, Vec velocity) {
        WayOut out = new WayOut(from, velocity);
        out.fly(new Vec(Math.copySign(1, velocity.x()), 0.45, 0.3).unit(), AWAY_S, Double.NEGATIVE_INFINITY);
        return out.poses.subList(1, out.poses.size());
    }

    /**
     * Sinks away from the crowd until it is out of sight.
     *
     * @param groundM height of the ground above the datum
     */
    static List<Pose> sinking(Pose from, Vec velocity, double groundM) {
        WayOut out = new WayOut(from, velocity);
        out.fly(new Vec(Math.copySign(1, velocity.x()), 0.8, -0.4).unit(), 5 * AWAY_S, groundM + OUT_OF_SIGHT_M);
        return out.poses.subList(1, out.poses.size());
    }

    private void fly(Vec to, double seconds, double lowestM) {
        Pose at = poses.get(0);
        double endS = at.tS() + seconds;
        while (at.tS() < endS && at.place().z() > lowestM) {
            bend(to);
            Vec nose = direction;
            Vec level = Vec.UP.across(nose);
            Vec wanted = level.length() < 0.05 ? at.up() : level.unit();
            // Exactly upside down it has to be said which way round.
            Vec aside = nose.cross(at.up()).times(at.up().dot(wanted) < -0.9 ? ROLLS_SHARE : 0);
            Vec up = at.up()
                    .times(1 - ROLLS_SHARE)
                    .plus(wanted.times(ROLLS_SHARE))
                    .plus(aside)
                    .across(nose);
            at = new Pose(
                    at.tS() + STEP_S,
                    at.place().plus(direction.times(speedMps * STEP_S)),
                    nose,
                    up.length() < 1e-6 ? at.up() : up.unit(),
                    1);
            poses.add(at);
        }
    }

    private void bend(Vec to) {
        double angle = Math.acos(Math.max(-1, Math.min(1, direction.dot(to))));
        double step = Math.min(angle, BENDS_RAD_S * STEP_S);
        if (angle < 1e-6) {
            return;
        }
        Vec axis = direction.cross(to);
        // Straight the other way it turns away from the crowd.
        Vec about = axis.length() < 1e-3 ? new Vec(0, 0, direction.x() > 0 ? 1 : -1) : axis.unit();
        direction = direction.turnedAbout(about, step).unit();
    }
}
