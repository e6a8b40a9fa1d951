package crowdline.steer;

import crowdline.follow.FollowNow;
import crowdline.live.event.FlightEvent;
import crowdline.live.state.Course;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import java.util.Optional;

/**
 * When what the follower says begins the act that waits: the aircraft was seen to wait, and then to fly the first figure for
 * some seconds. An aircraft that comes in from elsewhere, or is seen only once the act goes on, begins nothing. Not for
 * several threads.
 */
final class ActBegin {
    /** It was seen before the act for so long, seconds, or what it flies may have begun any time ago. Tuned. */
    private static final double SEEN_WAITING_S = 5;
    /**
     * The first figure must be sure for so long, seconds. Tuned on trial flights: one that comes straight in is believed to
     * have begun 2 to 6 s before it does, and a run down the runway that is given up is over.
     */
    private static final double FLOWN_S = 4;
    /** A follower that makes nothing of the wait for so long begins anew, seconds. Tuned. */
    private static final double MUDDLED_S = 10;

    /** A start that was told is not told again while it is on its way to the show, seconds. */
    private static final double ON_ITS_WAY_S = 1;
    /** From one figure to the next it says neither for so long at most, seconds. Judgement. */
    private static final double IN_ITS_WAKE_S = 2;

    private final boolean onGround;
    private final SinceWhen waits = new SinceWhen();
    private final SinceWhen flies = new SinceWhen();
    private final SinceWhen sure = new SinceWhen();
    private double sensibleS = Double.NaN;
    private double toldS = Double.NEGATIVE_INFINITY;
    private double flownS = Double.NEGATIVE_INFINITY;
    private boolean ready;

    /** @param onGround true if the act begins with a take-off: then it began when that became likely, else it begins now */
    ActBegin(boolean onGround) {
        this.onGround = onGround;
    }

    /** The start of the act, if it has begun now. */
    Optional<FlightEvent> next(LiveState state, FollowNow now, double nowS) {
        Course course = state.course();
        boolean first = course.nextIndex().orElse(-1) == 0;
        boolean silent = now.silentS() > AircraftSteps.SILENT_S;
        if (!(state.phase() instanceof Phase.Waiting)
                || state.incidentOpen()
                || !course.aircraftMayBegin()
                || !first
                || silent) {
            forget(nowS);
            return Optional.empty();
        }
        boolean flown = isFlown(now, nowS);
        waits.is(now.state() == FollowNow.State.BEFORE && now.confidence() >= FollowNow.SURE, nowS);
        flies.is(flown, nowS);
        sure.is(flown && now.confidence() >= FollowNow.SURE, nowS);
        ready |= waits.atLeast(SEEN_WAITING_S, nowS);
        if (Double.isNaN(sensibleS) || now.state() == FollowNow.State.BEFORE || (ready && flown)) {
            sensibleS = nowS;
        }
        if (!ready || !sure.atLeast(FLOWN_S, nowS) || nowS - toldS < ON_ITS_WAY_S) {
            return Optional.empty();
        }
        toldS = nowS;
        return Optional.of(
                new FlightEvent.AircraftBegan(nowS, onGround || now.figureIndex() > 0 ? flies.sinceS() : nowS));
    }

    /** The first figure, or the second in its wake: some last for less than it takes to be sure of them. */
    private boolean isFlown(FollowNow now, double nowS) {
        boolean planned = now.state() == FollowNow.State.ON_PLAN;
        boolean flown =
                planned && (now.figureIndex() == 0 || (now.figureIndex() == 1 && nowS - flownS < IN_ITS_WAKE_S));
        flownS = flown ? nowS : flownS;
        return flown || (now.figureIndex() <= 1 && nowS - flownS < IN_ITS_WAKE_S);
    }

    /** True if the aircraft was seen to wait for its act and is still watched. */
    boolean isReady() {
        return ready;
    }

    /** True if the follower has lost the thread of the wait, and must begin anew. */
    boolean isMuddled(double nowS) {
        return nowS - sensibleS >= MUDDLED_S;
    }

    private void forget(double nowS) {
        ready = false;
        waits.is(false, nowS);
        flies.is(false, nowS);
        sure.is(false, nowS);
        flownS = Double.NEGATIVE_INFINITY;
        sensibleS = Double.NaN;
    }
}
