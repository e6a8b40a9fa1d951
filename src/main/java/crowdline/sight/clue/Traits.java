package crowdline.sight.clue;

import crowdline.flight.body.Vec;
import crowdline.show.figure.MomentKind;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What somebody at the fence could say of a figure who has never heard its name, measured along its flight.
 *
 * @param riseM highest above where it began, metres
 * @param dropM lowest below where it began, metres
 * @param netM where it ended above where it began, metres
 * @param loopedDeg through how much the nose went round up and over, or down and under, degrees; pulled and pushed added up
 * @param archDeg the most of that in one go, with no straight line in it, degrees
 * @param pushedDeg how much of loopedDeg away from the pilot's head, degrees
 * @param roundDeg through how much it went round on the level, degrees, one way and the other added up
 * @param rolledDeg through how much it rolled about its nose, degrees, one way and the other added up
 * @param upS how long it pointed straight up, seconds
 * @param downS how long it pointed straight down, seconds
 * @param slopeS how long it flew up or down a slope, seconds
 * @param upsideDownS how long it was level, or nearly so, on its back, seconds
 * @param onItsSideS how long it was level on its side, seconds
 * @param rollingS how long it was rolling, seconds
 * @param stops how often it stopped within its rolling, for a moment and no longer
 * @param back true if it left the way it had come from
 * @param seen what there was to see in it
 */
record Traits(
        double riseM,
        double dropM,
        double netM,
        double loopedDeg,
        double archDeg,
        double pushedDeg,
        double roundDeg,
        double rolledDeg,
        double upS,
        double downS,
        double slopeS,
        double upsideDownS,
        double onItsSideS,
        double rollingS,
        int stops,
        boolean back,
        Set<MomentKind> seen) {

    /** Steeper than this looks straight up or down: sine of 75 degrees. */
    private static final double STRAIGHT = 0.966;
    /** Between these sines of the path, 25 and 65 degrees, it is a slope. */
    private static final double SLOPE_FROM = 0.42;

    private static final double SLOPE_TO = 0.91;
    /** Slower than this nobody sees it roll, degrees a second. */
    private static final double ROLLS_DEG_PER_S = 20;
    /** Stopped for longer than this it has rolled twice, and not in steps; seconds. */
    private static final double A_MOMENT_S = 1.6;

    /** Leaning over further than this it goes round and not over: sine of 37 degrees. */
    private static final double LEANS_OVER = 0.6;
    /** Slower than this its way is straight, degrees a second; for longer than this it is a line, seconds. */
    private static final double STRAIGHT_DEG_PER_S = 5;

    private static final double LINE_S = 0.7;

    Traits {
        seen = Set.copyOf(seen);
    }

    static Traits of(Flown flown) {
        List<Pose> poses = flown.poses();
        Pose first = poses.get(0);
        Pose last = poses.get(poses.size() - 1);
        Flown.Reach reach = flown.reach();
        double looped = 0;
        double arch = 0;
        double archNow = 0;
        double straightS = 0;
        double pushed = 0;
        double round = 0;
        double rolled = 0;
        double up = 0;
        double down = 0;
        double slope = 0;
        double upsideDown = 0;
        double onItsSide = 0;
        double rolling = 0;
        int stops = 0;
        double stoppedAtS = Double.NaN;
        for (int i = 1; i < poses.size(); i++) {
            Pose a = poses.get(i - 1);
            Pose b = poses.get(i);
            double s = b.tS() - a.tS();
            // How the nose moves, towards the pilot's head and sideways, and what is left of the turn of the head is
            // roll.
            Vec turned = b.nose().minus(a.nose());
            double pitch = Math.toDegrees(turned.dot(a.up()));
            double yaw = Math.toDegrees(turned.dot(a.right()));
            boolean level = Math.abs(a.nose().z()) < SLOPE_FROM;
            double heading = Math.toDegrees(Math.atan2(
                    a.nose().x() * b.nose().y() - a.nose().y() * b.nose().x(),
                    a.nose().x() * b.nose().x() + a.nose().y() * b.nose().y()));
            if (level && Math.abs(a.up().z()) < 0.94 && Math.abs(heading) < 20) {
                round += Math.abs(heading);
            } else if (Math.abs(yaw) < 4 * s * 10 && Math.abs(a.right().z()) < LEANS_OVER) {
                looped += Math.abs(pitch);
                pushed += Math.max(-pitch, 0);
                archNow += Math.abs(pitch);
                arch = Math.max(arch, archNow);
            }
            straightS = Math.abs(pitch) < STRAIGHT_DEG_PER_S * s ? straightS + s : 0;
            archNow = straightS > LINE_S ? 0 : archNow;
            Vec carried = a.up().plus(b.nose().times(-a.up().dot(b.nose())));
            if (carried.length() > 1e-6) {
                Vec head = carried.unit();
                double roll = Math.toDegrees(Math.atan2(
                        Math.abs(head.cross(b.up()).dot(b.nose())), Math.max(-1, Math.min(1, head.dot(b.up())))));
                rolled += roll;
                boolean rolls = roll > ROLLS_DEG_PER_S * s;
                if (rolls) {
                    stops += a.tS() - stoppedAtS > 0.15 && a.tS() - stoppedAtS < A_MOMENT_S ? 1 : 0;
                    stoppedAtS = Double.NaN;
                    rolling += s;
                } else if (Double.isNaN(stoppedAtS) && rolling > 0) {
                    stoppedAtS = a.tS();
                }
            }
            up += a.nose().z() > STRAIGHT ? s : 0;
            down += a.nose().z() < -STRAIGHT ? s : 0;
            slope += Math.abs(a.nose().z()) > SLOPE_FROM && Math.abs(a.nose().z()) < SLOPE_TO ? s : 0;
            upsideDown += level && a.up().z() < -0.8 ? s : 0;
            onItsSide += level && Math.abs(a.up().z()) < 0.35 ? s : 0;
        }
        return new Traits(
                reach.most().z() - first.place().z(),
                first.place().z() - reach.least().z(),
                last.place().z() - first.place().z(),
                looped,
                arch,
                pushed,
                round,
                rolled,
                up,
                down,
                slope,
                upsideDown,
                onItsSide,
                rolling,
                stops,
                last.nose().x() * first.nose().x() < 0,
                flown.captions().stream().map(Caption::kind).collect(Collectors.toSet()));
    }

    boolean has(MomentKind kind) {
        return seen.contains(kind);
    }
}
