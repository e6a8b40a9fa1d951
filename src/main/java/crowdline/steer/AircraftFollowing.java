package crowdline.steer;

import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import crowdline.follow.Follower;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Course;
import crowdline.live.state.Flown;
import crowdline.live.state.LiveState;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import crowdline.telemetry.Reading;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Follows the aircraft of the act being flown: what the hand does goes to the follower, what the follower finds goes to
 * the show. Times are those of the session. Not thread-safe.
 */
public final class AircraftFollowing {
    /** The aircraft is drawn where it was read to be for so long, seconds; then it is where the plan has it. */
    private static final double SHOWN_S = 3;
    /** Before an act no plan says where it is, and where it waits it is likely to stay, seconds. Tuned. */
    private static final double SHOWN_BEFORE_S = 30;
    /** The arrow follows readings at least so far apart, seconds. */
    private static final double ARROW_S = 0.3;
    /** The trail behind the aircraft is so long, seconds. Tuned: it shows a turn, and is gone before the next figure. */
    public static final double TRAIL_S = 6;
    /** Less than this is noise and turns no arrow, metres. Tuned: four times what two readings of a still receiver differ. */
    private static final double NOISE_M = 12;
    /** What stays within the noise for so long stands, seconds. Tuned: nothing that has begun to take off does. */
    private static final double STANDS_S = 4;
    /** Nor does a way that took longer than this, seconds. Tuned: the slowest glider makes it in less. */
    private static final double TURN_S = 1.5;

    /** What is believed of a position is worth something for so long, seconds. Tuned: a gap of some readings. */
    private static final double BELIEVED_S = 5;
    /** Before the act a follower that has heard nothing for so long knows nothing, seconds. Tuned. */
    private static final double FORGOTTEN_S = 10;

    private final Function<LiveState, Optional<FollowPlan>> plans;
    private AircraftSteps steps = new AircraftSteps();
    private ActBegin begin = new ActBegin(false);
    private StartCorrection start = new StartCorrection();
    private @Nullable Follower follower;
    private @Nullable FollowPlan plan;
    private @Nullable Flight followed;
    private @Nullable Flown lastFlown;
    private int lastCount;
    private List<Integer> lastOrder = List.of();
    private @Nullable FollowNow now;
    private Tracking.@Nullable Within within;
    private @Nullable Reading last;
    private final Deque<Reading> trail = new ArrayDeque<>();
    private boolean inTheAir;
    private double pathRad;
    private double headingRad;

    /** A flight of a variant; each has a follower of its own. */
    private record Flight(
            @Nullable String actId,
            @Nullable String variant,
            @Nullable Double startedAtS) {}

    /** @param plans what is known of the act that a state has chosen, if anything */
    public AircraftFollowing(Function<LiveState, Optional<FollowPlan>> plans) {
        this.plans = plans;
    }

    /** A reading came in, in the session's time. */
    public Optional<FlightEvent> reading(LiveState state, Reading reading) {
        see(reading);
        Follower following = follower(state);
        if (following == null) {
            return Optional.empty();
        }
        FollowNow found = following.reading(reading);
        // Space came early: it is at the very beginning for as long as it stands.
        return next(state, standsYet(state.course()) ? following.hand(reading.tS(), 0) : found, reading.tS());
    }

    /** True if the act is begun by hand with a take-off, and the aircraft still stands. */
    private boolean standsYet(Course course) {
        FollowPlan known = plan;
        Reading here = last;
        Reading before = trail.peekFirst();
        return known != null
                && known.startsOnGround()
                && course.flown().size() == 1
                && course.flown().get(0).mark() == Source.HAND
                && course.position() == 0
                && here != null
                && before != null
                && here.tS() - before.tS() >= STANDS_S
                && trail.stream()
                        .allMatch(r -> Math.hypot(r.alongM() - here.alongM(), r.awayM() - here.awayM()) < NOISE_M);
    }

    /** Time goes on. */
    public Optional<FlightEvent> tick(LiveState state, double nowS) {
        boolean waits = !state.course().inTheAir();
        if (last == null && (waits || state.course().source() != Source.AIRCRAFT)) {
            // Nobody asks where an aircraft is that was never heard; what the hand did till then is taken from the
            // screen.
            return Optional.empty();
        }
        Follower following = follower(state);
        if (following == null) {
            return steps.next(state, null, nowS);
        }
        FollowNow found = following.tick(nowS);
        if (waits && found.silentS() > FORGOTTEN_S) {
            // Time alone would begin the act for the follower.
            followAnew();
        }
        return next(state, found, nowS);
    }

    private Optional<FlightEvent> next(LiveState state, FollowNow found, double nowS) {
        now = found;
        see(found);
        Optional<FlightEvent> began = begin.next(state, found, nowS);
        if (began.isPresent()) {
            return began;
        }
        FollowPlan known = plan;
        Optional<FlightEvent> right = known == null ? Optional.empty() : start.next(known, state, found, nowS);
        if (right.isPresent()) {
            return right;
        }
        if (begin.isMuddled(nowS)) {
            followAnew();
        }
        return steps.next(state, found, nowS);
    }

    private void followAnew() {
        FollowPlan known = plan;
        follower = known == null ? null : new Follower(known);
        begin = new ActBegin(known != null && known.startsOnGround());
        lastOrder = List.of();
    }

    /** What the screen says of it. */
    public Tracking tracking(double nowS) {
        Reading reading = last;
        if (reading == null) {
            return Tracking.NONE;
        }
        double ageS = Math.max(0, nowS - reading.tS());
        FollowNow found = now;
        return new Tracking(
                found == null ? null : Double.valueOf(sureness(found)),
                ageS,
                found == null ? null : other(found),
                ageS <= (inTheAir ? SHOWN_S : SHOWN_BEFORE_S) ? craft(reading, ageS) : null,
                begin.isReady(),
                within,
                found == null ? List.of() : guesses(found));
    }

    /** Only while positions come: what was believed of the figure before says nothing of this one. */
    private static List<Tracking.Guess> guesses(FollowNow found) {
        return found.silentS() > BELIEVED_S
                        || found.state() == FollowNow.State.BEFORE
                        || found.state() == FollowNow.State.AFTER
                ? List.of()
                : found.alternatives().stream()
                        .map(c -> new Tracking.Guess(c.figureIndex(), c.chance()))
                        .toList();
    }

    /**
     * Only where it is sure: a moment that is said at the wrong place is worse than one that is not said. What was known
     * stands a little longer, so that a moment of doubt takes nothing back from the screen.
     */
    private void see(FollowNow found) {
        if (found.state() == FollowNow.State.ON_PLAN && found.isSure()) {
            within = new Tracking.Within(found.figureIndex(), found.phase(), found.tS());
        }
    }

    /** How sure it is of a figure: to be sure that none of the plan is flown is not to be sure of the one on the screen. */
    private static double sureness(FollowNow found) {
        boolean figure = found.state() == FollowNow.State.ON_PLAN || found.state() == FollowNow.State.UNSURE;
        return figure ? found.confidence() : 0;
    }

    private @Nullable String other(FollowNow found) {
        FollowPlan known = plan;
        return known == null
                ? null
                : found.or().map(c -> known.name(c.figureIndex())).orElse(null);
    }

    private Craft craft(Reading reading, double ageS) {
        List<Spot> behind = trail.stream()
                .filter(r -> reading.tS() - r.tS() <= TRAIL_S)
                .map(AircraftFollowing::spot)
                .toList();
        return Craft.read(spot(reading), pathRad, headingRad, behind, ageS);
    }

    private static Spot spot(Reading reading) {
        return new Spot(reading.alongM(), reading.awayM(), reading.heightM());
    }

    private void see(Reading reading) {
        Reading before = last;
        if (before != null && reading.tS() - before.tS() < ARROW_S) {
            return;
        }
        last = reading;
        if (before == null || reading.tS() - before.tS() > SHOWN_S) {
            // After a gap the straight line to the last place is not where it flew.
            trail.clear();
            return;
        }
        trail.addLast(before);
        while (reading.tS() - trail.getFirst().tS() > TRAIL_S) {
            trail.removeFirst();
        }
        pathRad = turned(reading, Reading::heightM, pathRad);
        headingRad = turned(reading, Reading::awayM, headingRad);
    }

    /** Which way it came from the last place far enough behind; as before if there is none. */
    private double turned(Reading reading, ToDoubleFunction<Reading> across, double elseRad) {
        for (Iterator<Reading> back = trail.descendingIterator(); back.hasNext(); ) {
            Reading from = back.next();
            double alongM = reading.alongM() - from.alongM();
            double acrossM = across.applyAsDouble(reading) - across.applyAsDouble(from);
            if (reading.tS() - from.tS()
                    > Math.max(TURN_S, reading.tS() - trail.getLast().tS())) {
                return elseRad;
            }
            if (Math.hypot(alongM, acrossM) >= NOISE_M) {
                return Math.atan2(acrossM, alongM);
            }
        }
        return elseRad;
    }

    private @Nullable Follower follower(LiveState state) {
        Course course = state.course();
        Flight flight = new Flight(course.actId(), course.variant(), course.actStartedAtS());
        inTheAir = course.inTheAir();
        if (course.begunByAircraft() && new Flight(course.actId(), course.variant(), null).equals(followed)) {
            // The follower that saw it begin goes on.
            followed = flight;
            lastFlown = course.flown().get(0);
            lastCount = course.flown().size();
        }
        if (isPutRight(course, flight)) {
            followed = flight;
        }
        if (!flight.equals(followed)) {
            followed = flight;
            plan = plans.apply(state).orElse(null);
            followAnew();
            steps = new AircraftSteps();
            start = new StartCorrection();
            lastFlown = null;
            lastCount = 0;
            now = null;
            within = null;
        }
        Follower following = follower;
        if (following != null) {
            teach(following, course);
        }
        return following;
    }

    /** True if it is the flight that is followed, with the start that the aircraft told put right. */
    private boolean isPutRight(Course course, Flight flight) {
        Flight before = followed;
        return before != null
                && before.startedAtS() != null
                && flight.startedAtS() != null
                && new Flight(before.actId(), before.variant(), flight.startedAtS()).equals(flight)
                && !course.flown().isEmpty()
                && course.flown().get(0).mark() == Source.AIRCRAFT;
    }

    /**
     * A step by hand, or one taken back, says which figure is flown; a drop or a swap, what comes. What the aircraft led to is
     * the follower's own word, and teaches it nothing. A follower that begins in the middle of an act, as after a crash, takes
     * what the screen says.
     */
    private void teach(Follower following, Course course) {
        List<Integer> order = course.toFly();
        if (!order.equals(lastOrder)) {
            following.told(order);
            lastOrder = order;
        }
        if (course.figureId() == null || course.flown().isEmpty()) {
            return;
        }
        Flown current = course.flown().get(course.flown().size() - 1);
        boolean fresh = lastFlown == null;
        boolean stepped = lastFlown == null
                || !current.figureId().equals(lastFlown.figureId())
                || current.startedAtS() != lastFlown.startedAtS();
        boolean takenBack = course.flown().size() < lastCount;
        if (stepped && (fresh || takenBack || current.mark() == Source.HAND)) {
            now = following.hand(current.startedAtS(), course.position());
        }
        lastFlown = current;
        lastCount = course.flown().size();
    }
}
