package crowdline.sight.sketch;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;

/** The way of something that can lie in the air as it likes: where it is and which way it points at some times, and smoothly between. */
final class Guided {
    private static final double STEP_S = 0.1;

    private final List<double[]> keys = new ArrayList<>();

    /**
     * There at a time, later than the one before.
     *
     * @param x metres to the right
     * @param y metres away from the crowd
     * @param z metres up
     * @param headingDeg which way the nose points from above: 0 to the right, 90 away from the crowd; beyond 360 it has turned
     *     round
     * @param pitchDeg how far the nose is up
     * @param bankDeg how far it leans to its right
     */
    Guided at(double tS, double x, double y, double z, double headingDeg, double pitchDeg, double bankDeg) {
        keys.add(new double[] {tS, x, y, z, headingDeg, pitchDeg, bankDeg});
        return this;
    }

    List<Pose> poses() {
        List<Pose> poses = new ArrayList<>();
        double fromS = keys.get(0)[0];
        double toS = keys.get(keys.size() - 1)[0];
        int steps = (int) Math.round((toS - fromS) / STEP_S);
        for (int i = 0; i <= steps; i++) {
            poses.add(pose(fromS + (toS - fromS) * i / steps));
        }
        return List.copyOf(poses);
    }

    private Pose pose(double tS) {
        int after = 1;
        while (after < keys.size() - 1 && keys.get(after)[0] < tS) {
            after++;
        }
        double[] a = keys.get(after - 1);
        double[] b = keys.get(after);
        double share = (tS - a[0]) / (b[0] - a[0]);
        double[] now = new double[a.length];
        for (int k = 1; k < now.length; k++) {
            now[k] = between(after, k, share, b[0] - a[0]);
        }
        double heading = Math.toRadians(now[4]);
        double pitch = Math.toRadians(now[5]);
        Vec nose = new Vec(Math.cos(pitch) * Math.cos(heading), Math.cos(pitch) * Math.sin(heading), Math.sin(pitch));
        Vec level =
                new Vec(-Math.sin(pitch) * Math.cos(heading), -Math.sin(pitch) * Math.sin(heading), Math.cos(pitch));
        return new Pose(tS, new Vec(now[1], now[2], now[3]), nose, level.turnedAbout(nose, Math.toRadians(now[6])), 1);
    }

    /** A cubic between two keys; it passes through each as steeply as from the one before to the one after. */
    private double between(int after, int k, double share, double seconds) {
        double a = keys.get(after - 1)[k];
        double b = keys.get(after)[k];
        double steepA = steep(after - 1, k) * seconds;
        double steepB = steep(after, k) * seconds;
        double s2 = share * share;
        double s3 = s2 * share;
        return (2 * s3 - 3 * s2 + 1) * a + (s3 - 2 * s2 + share) * steepA + (3 * s2 - 2 * s3) * b + (s3 - s2) * steepB;
    }

    /** At its first and its last it begins or ends as it goes on. */
    private double steep(int key, int k) {
        double[] before = keys.get(Math.max(0, key - 1));
        double[] next = keys.get(Math.min(keys.size() - 1, key + 1));
        return (next[k] - before[k]) / (next[0] - before[0]);
    }
}
