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
 * When what the follower says moves the show. A next figure is believed soon, any other only after a while; when the
 * readings go bad the clock stands in, and it hands back when they are good again. Only what somebody has put under the
 * aircraft's lead is moved, and {@link ActBegin} begins an act. Not thread-safe.
 */
final class AircraftSteps {
    private static final double LIKELY = 0.8;
    /** How long the next figure must be likely, seconds. Tuned: a flicker of the filter is shorter. */
    private static final double NEXT_S = 0.3;
    /** The same for any other figure of which it is sure; being wrong here throws the commentator off. Tuned. */
    private static final double OTHER_S = 1.5;
    /**
     * The same for one further on of which it is not sure. After a figure that was missed it is seldom sure for minutes, and the
     * screen would stand still. Tuned: 2 to 8 works.
     */
    private static final double AHEAD_S = 4;
    /** The same for one before the one shown. Tuned: 8 steps back three times as often where it was not flown. */
    private static final double BACK_S = 15;

    /** How long it must be likely that it is off the plan, seconds. Tuned: 8 works too, and says it later. */
    private static final double STRAYED_S = 4;
    /** Off the plan, how long the figure must be likely that is due then, seconds. */
    private static final double BACK_ON_PLAN_S = 1;

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

    private int told = -1;
    private double toldS = Double.NEGATIVE_INFINITY;
    private int likely = -1;
    private double likelySinceS;
    private final SinceWhen strays = new SinceWhen();
    private double strayedToldS = Double.NEGATIVE_INFINITY;
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
        int figure = now.state() == FollowNow.State.ON_PLAN ? now.figureIndex() : -1;
        if (figure != likely) {
            likely = figure;
            likelySinceS = nowS;
        }
        boolean flying = state.phase() instanceof Phase.Flying;
        // Behind the last figure nothing is due that could be left: what is flown there is how it ends.
        boolean isLast = state.course().nextIndex().isEmpty();
        strays.is(!isLast && now.state() == FollowNow.State.OFF_PLAN && now.confidence() >= LIKELY, nowS);
        if (flying && strays.atLeast(STRAYED_S, nowS) && nowS - strayedToldS > ON_ITS_WAY_S) {
            strayedToldS = nowS;
            return Optional.of(new FlightEvent.AircraftStrayed(Math.max(0, strays.sinceS())));
        }
        if (figure < 0 || (flying && figure == state.course().position()) || state.phase() instanceof Phase.Held) {
            return Optional.empty();
        }
        boolean onItsWay = figure == told && nowS - toldS < ON_ITS_WAY_S;
        if (onItsWay || now.confidence() < LIKELY || nowS - likelySinceS < waitS(state.course(), now, flying)) {
            return Optional.empty();
        }
        told = figure;
        toldS = nowS;
        return Optional.of(new FlightEvent.AircraftSeen(likelySinceS, figure));
    }

    /** How long the figure said must have been likely to be stepped to. */
    private static double waitS(Course course, FollowNow now, boolean flying) {
        int figure = now.figureIndex();
        if (flying && course.nextIndex().orElse(-1) == figure) {
            return NEXT_S;
        }
        if (!flying && course.nextIndexAfter(course.position()).orElse(-1) == figure) {
            return BACK_ON_PLAN_S;
        }
        if (now.isSure() || (!flying && figure == course.position())) {
            return OTHER_S;
        }
        return course.placeOf(figure) > course.placeOf(course.position()) ? AHEAD_S : BACK_S;
    }
}
