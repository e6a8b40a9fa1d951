package crowdline.sight.sketch;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;

/** The way of an aircraft that flies at one speed and is steered by hand: so far up, so far round, so long. */
final class Steered {
    private static final double STEP_S = 0.1;

    private final List<Pose> poses = new ArrayList<>();
    private final double speedMps;
    private double tS;
    private Vec place;
    private Vec nose;
    private Vec up;

    /** Begins wings level at a place, to the right as the crowd sees it. */
    Steered(Vec place, double speedMps) {
        this(place, new Vec(1, 0, 0), Vec.UP, speedMps);
    }

    private Steered(Vec place, Vec nose, Vec up, double speedMps) {
        this.place = place;
        this.nose = nose;
        this.up = up;
        this.speedMps = speedMps;
        poses.add(new Pose(0, place, nose, up, 1));
    }

    /** Straight on. */
    Steered on(double seconds) {
        return go(seconds, 0, 0);
    }

    /** Towards the pilot's head; below 0 the other way. */
    Steered pull(double degrees, double seconds) {
        return go(seconds, degrees, 0);
    }

    /** To the right about the nose; below 0 to the left. */
    Steered roll(double degrees, double seconds) {
        return go(seconds, 0, degrees);
    }

    private Steered go(double seconds, double pullDeg, double rollDeg) {
        int steps = Math.max(1, (int) Math.round(seconds / STEP_S));
        double pullRad = Math.toRadians(pullDeg) / steps;
        double rollRad = Math.toRadians(rollDeg) / steps;
        for (int i = 0; i < steps; i++) {
            Vec right = nose.cross(up);
            nose = nose.turnedAbout(right, pullRad).unit();
            up = up.turnedAbout(right, pullRad)
                    .turnedAbout(nose, rollRad)
                    .across(nose)
                    .unit();
            place = place.plus(nose.times(speedMps * seconds / steps));
            tS += seconds / steps;
            poses.add(new Pose(tS, place, nose, up, 1));
        }
        return this;
    }

    List<Pose> poses() {
        return List.copyOf(poses);
    }
}
