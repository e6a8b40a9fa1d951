package crowdline.steer;

import crowdline.follow.FollowNow;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Course;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * When what the follower says moves the show. What is shown is left once enough speaks against it ({@link Balance}): at once for
 * the figure that is due, soon for one further on, and for one before it only when more speaks for that than has spoken
 * for the one shown; while that is in doubt, neither is shown. When the readings go bad the clock stands in, and it hands back
 * when they are good again. Only what somebody has put under the aircraft's lead is moved, and {@link ActBegin} begins an act. Not
 * thread-safe.
 */
final class AircraftSteps {
    /** What must speak for the next figure, as {@link Balance} counts. Tuned: 0.15 is seen later and is wrong less often. */
    private static final double NEXT = 0.02;
    /** The same for one further on, and for any to come back to from off the plan. Tuned: 1 to 4 works. */
    private static final double AHEAD = 1;
    /**
     * The same for one before the one shown, beside what has spoken for that. Tuned: 10 shows more, and steps back half as often
     * again where that was not flown.
     */
    private static final double BACK = 20;
    /**
     * Share of that after which neither is shown, but off the plan: what is shown is less likely by then than not. Judgement.
     */
    private static final double IN_DOUBT = 0.4;
    /** The same for something that is not in the plan. Tuned: 2 to 6 works. */
    private static final double STRAYED = 3;

    private static final double USABLE = 0.5;
    /**
     * Without a reading for longer, seconds, the aircraft neither begins nor moves the act. Tuned. Not the limit of the
     * follower, which doubts itself a little later, nor that of the receiver, which goes by its own rhythm as well.
     */
    static final double SILENT_S = 2;

    /** Seconds of bad readings before the clock stands in. Tuned: a figure's top is often hidden from the receiver for less. */
    private static final double LOST_S = 3;
    /** Good for so long, the aircraft leads again, seconds. Tuned. */
    private static final double FOUND_S = 2;

    /** A step that was told is not told again while it is on its way to the show, seconds. */
    private static final double ON_ITS_WAY_S = 1;

    private final Balance balance = new Balance();
    private int told = Balance.NOTHING;
    private double toldS = Double.NEGATIVE_INFINITY;
    /** What must speak for a figure before the one shown last, now that it is off the plan. */
    private double backFromOff = BACK;

    private final SinceWhen readsBadly = new SinceWhen();
    private final SinceWhen readsWell = new SinceWhen();
    private double leadToldS = Double.NEGATIVE_INFINITY;

    /**
     * What happens to the show now, if anything.
     *
     * @param now what the follower makes of the moment; null where the act cannot be followed at all
     */
    Optional<FlightEvent> next(LiveState state, @Nullable FollowNow now, double nowS) {
        boolean bad = now == null || isBad(state.course(), now);
        readsBadly.is(bad, nowS);
        readsWell.is(!bad, nowS);
        Course course = state.course();
        if (state.incidentOpen() || !course.inTheAir() || course.source() != Source.AIRCRAFT) {
            return Optional.empty();
        }
        boolean lost = readsBadly.atLeast(LOST_S, nowS);
        boolean found = readsWell.atLeast(FOUND_S, nowS);
        if (course.clockStandsIn() ? found : lost) {
            if (nowS - leadToldS < ON_ITS_WAY_S) {
                return Optional.empty();
            }
            leadToldS = nowS;
            return Optional.of(
                    found ? new FlightEvent.AircraftFound(nowS) : new FlightEvent.AircraftLost(nowS, seenS(now, nowS)));
        }
        return now == null || course.clockStandsIn() ? Optional.empty() : step(state, now, nowS);
    }

    /** In the air, to believe that the act has not begun, or that it is over before its last figure, is not to know. */
    private static boolean isBad(Course course, FollowNow now) {
        return switch (now.state()) {
                    case UNSURE -> true;
                    case ON_PLAN -> now.confidence() < USABLE;
                    case BEFORE -> course.inTheAir();
                    case AFTER -> course.inTheAir() && course.nextIndex().isPresent();
                    case OFF_PLAN -> false;
                }
                || now.silentS() > SILENT_S;
    }

    /** When the aircraft was last seen well; 0 if it never was. */
    private double seenS(@Nullable FollowNow now, double nowS) {
        return now == null || Double.isInfinite(now.silentS())
                ? 0
                : Math.max(0, Math.min(readsBadly.sinceS(), nowS - now.silentS()));
    }

    private Optional<FlightEvent> step(LiveState state, FollowNow now, double nowS) {
        Course course = state.course();
        boolean flying = state.phase() instanceof Phase.Flying;
        int shown = flying ? course.position() : Balance.OFF;
        balance.sees(shown, now, nowS);
        if (flying && nowS - toldS >= ON_ITS_WAY_S) {
            backFromOff = BACK;
        }
        int said = moves(course, flying);
        // Behind the last figure nothing is due that could be left: what is flown there is how it ends.
        boolean ends = said == Balance.OFF && course.nextIndex().isEmpty();
        if (said == Balance.NOTHING
                || said == shown
                || ends
                || now.silentS() > SILENT_S
                || state.phase() instanceof Phase.Held
                || (said == told && nowS - toldS < ON_ITS_WAY_S)) {
            return Optional.empty();
        }
        told = said;
        toldS = nowS;
        // What has spoken for a figure before the one shown counts on when neither is shown.
        backFromOff = said == balance.said() ? BACK : needed(course, balance.said(), flying) - balance.against();
        double sinceS = Math.max(0, balance.saidSinceS());
        return Optional.of(
                said == Balance.OFF
                        ? new FlightEvent.AircraftStrayed(sinceS)
                        : new FlightEvent.AircraftSeen(sinceS, said));
    }

    /** What is to be shown, if enough speaks for it; {@link Balance#NOTHING} else. */
    private int moves(Course course, boolean flying) {
        int said = balance.said();
        if (said == Balance.NOTHING) {
            return said;
        }
        double needed = needed(course, said, flying);
        if (balance.against() >= needed) {
            return said;
        }
        boolean inDoubt = flying && isBehind(course, said) && balance.against() >= IN_DOUBT * needed;
        return inDoubt ? Balance.OFF : Balance.NOTHING;
    }

    private static boolean isBehind(Course course, int said) {
        return said >= 0 && course.placeOf(said) < course.placeOf(course.position());
    }

    /** How much must speak against what is shown for this to be shown. */
    private double needed(Course course, int said, boolean flying) {
        if (said == Balance.OFF) {
            return STRAYED;
        }
        boolean due = course.nextIndex().orElse(-1) == said;
        boolean inDoubt = !flying && backFromOff < BACK;
        if (flying ? due : inDoubt && (due || said == course.position())) {
            return NEXT;
        }
        return !isBehind(course, said) ? AHEAD : flying ? BACK + balance.backing() : backFromOff;
    }
}
