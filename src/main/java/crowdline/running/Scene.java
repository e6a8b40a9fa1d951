package crowdline.running;

import crowdline.live.now.LiveNow;
import crowdline.live.now.LiveSnapshot;
import crowdline.live.state.ActDurations;
import crowdline.live.state.LiveState;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Plan;
import crowdline.steer.Tracking;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything a screen needs of the running show, until the next scene. What it shows at a moment follows from this and from
 * that moment alone.
 *
 * @param lookup the words of the show
 * @param snapshot the running show
 * @param durations how long figures last, for its clock
 * @param plan what to say when, in the session's seconds
 * @param tracking what readings say
 * @param told what the last key did, or null
 * @param toldUntilS until when that is told, the session's seconds
 */
public record Scene(
        ShowLookup lookup,
        LiveSnapshot snapshot,
        ActDurations durations,
        Plan plan,
        Tracking tracking,
        @Nullable Told told,
        double toldUntilS) {

    /** A scene in which nothing was planned, read or told yet. */
    static Scene of(ShowLookup lookup, LiveSnapshot snapshot, ActDurations durations) {
        return new Scene(lookup, snapshot, durations, Plan.NOT_YET, Tracking.NONE, null, Double.NEGATIVE_INFINITY);
    }

    /** The state of the running show. */
    public LiveState state() {
        return snapshot.state();
    }

    /**
     * What can be read off it at a moment.
     *
     * @param nowS the moment, the session's seconds
     * @param wall the same moment by the clock on the wall
     */
    public LiveNow now(double nowS, Instant wall) {
        return LiveNow.of(state(), durations.of(state()), nowS, wall);
    }

    /** What the last key did, if it is to be read at a moment. */
    public Optional<Told> told(double nowS) {
        return nowS < toldUntilS ? Optional.ofNullable(told) : Optional.empty();
    }

    /** Snapshots come from several threads; an older one changes nothing. */
    Scene with(LiveSnapshot next) {
        return next.number() < snapshot.number()
                ? this
                : new Scene(lookup, next, durations, plan, tracking, told, toldUntilS);
    }

    Scene with(Plan next) {
        return new Scene(lookup, snapshot, durations, next, tracking, told, toldUntilS);
    }

    Scene with(Tracking next) {
        return new Scene(lookup, snapshot, durations, plan, next, told, toldUntilS);
    }

    Scene with(ShowLookup words, ActDurations times) {
        return new Scene(words, snapshot, times, plan, tracking, told, toldUntilS);
    }

    Scene with(Optional<Told> next, double nowS) {
        return new Scene(
                lookup,
                snapshot,
                durations,
                plan,
                tracking,
                next.orElse(null),
                next.map(t -> nowS + t.seconds()).orElse(Double.NEGATIVE_INFINITY));
    }
}
