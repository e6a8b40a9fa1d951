package crowdline.glossary.drill;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;

/**
 * What a flight looks like, to tell how like another it is: its poses at equal steps of time, its path from its middle and
 * to one size.
 */
final class Likeness {
    private static final int POSES = 60;
    /** Nearer than this, on average, two flights look the same; tuned by looking. */
    private static final double SAME = 0.03;

    private final List<Vec> places = new ArrayList<>();
    private final List<Pose> poses = new ArrayList<>();

    Likeness(Flown flown) {
        if (flown.isEmpty()) {
            return;
        }
        Flown.Reach reach = flown.reach();
        Vec middle = reach.least().plus(reach.most()).times(0.5);
        double size = Math.max(1, reach.size().length());
        for (int i = 0; i < POSES; i++) {
            Pose pose = flown.at(flown.fromS() + (flown.toS() - flown.fromS()) * i / (POSES - 1));
            poses.add(pose);
            places.add(pose.place().minus(middle).times(1 / size));
        }
    }

    /** How far two lie apart: 0 for the same; about 1 for a path as far away as it is large, or upside down throughout. */
    double to(Likeness other) {
        if (poses.isEmpty() || other.poses.isEmpty()) {
            return poses.isEmpty() == other.poses.isEmpty() ? 0 : 1;
        }
        double sum = 0;
        for (int i = 0; i < POSES; i++) {
            sum += places.get(i).minus(other.places.get(i)).length()
                    + poses.get(i).up().minus(other.poses.get(i).up()).length() / 2;
        }
        return sum / POSES;
    }

    boolean looksTheSame(Likeness other) {
        return isTheSame(to(other));
    }

    /** Whether two that lie so far apart look the same. */
    static boolean isTheSame(double apart) {
        return apart < SAME;
    }
}
