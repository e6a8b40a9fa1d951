package crowdline.loaded;

import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import crowdline.follow.Follower;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Follows a whole log. */
public final class LogFollowing {
    private LogFollowing() {}

    /**
     * What the follower said at every reading.
     *
     * @param startS when the first figure begins, on the scale of the readings, if somebody knows
     */
    public static List<FollowNow> follow(FollowPlan plan, List<Reading> readings, @Nullable Double startS) {
        Follower follower = startS == null ? Follower.heardLate(plan) : new Follower(plan);
        double beginsS = startS == null ? Double.POSITIVE_INFINITY : startS;
        boolean started = false;
        List<FollowNow> said = new ArrayList<>();
        for (Reading reading : readings) {
            if (!started && reading.tS() >= beginsS) {
                said.add(follower.start(beginsS));
                started = true;
            }
            said.add(follower.reading(reading));
        }
        return said;
    }
}
