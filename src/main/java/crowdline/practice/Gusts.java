package crowdline.practice;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Pose;
import java.util.SplittableRandom;

/** Rough air as it is seen: the wings rock and the path is uneven. Drawn, not flown; how strong it is was tuned by looking. */
final class Gusts {
    private static final int WAVES = 4;
    private static final double SHORTEST_S = 1.1;
    private static final double LONGEST_S = 4.5;
    private static final double ROCKS_RAD = Math.toRadians(3.5);
    private static final double BUMPS_M = 1.2;

    private final double[][] waves = new double[WAVES][4];

    Gusts(SplittableRandom random) {
        for (double[] wave : waves) {
            wave[0] = 2 * Math.PI / random.nextDouble(SHORTEST_S, LONGEST_S);
            wave[1] = random.nextDouble(2 * Math.PI);
            wave[2] = random.nextDouble(2 * Math.PI);
            wave[3] = random.nextDouble(0.4, 1);
        }
    }

    /** The pose in rough air; what stands or rolls on the ground is left alone. */
    Pose in(Pose pose, double groundM) {
        double free = Math.max(0, Math.min(1, (pose.place().z() - groundM) / 20));
        double rock = 0;
        double bump = 0;
        for (double[] wave : waves) {
            rock += wave[3] * Math.sin(wave[0] * pose.tS() + wave[1]);
            bump += wave[3] * Math.sin(wave[0] * pose.tS() + wave[2]);
        }
        Vec up = pose.up().turnedAbout(pose.nose(), free * ROCKS_RAD * rock);
        return new Pose(pose.tS(), pose.place().plus(new Vec(0, 0, free * BUMPS_M * bump)), pose.nose(), up, pose.g());
    }
}
