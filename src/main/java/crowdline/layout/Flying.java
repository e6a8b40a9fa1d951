package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.bounds.Most;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Flies what was chosen from end to end, with the transits that are needed. */
final class Flying {
    /** How long an act runs in to its first figure, seconds. */
    private static final double RUN_IN_S = 6;

    private static final double TAKE_OFF_S = 25;
    private static final double LANDING_S = 60;
    /** A figure that is only timed and of which nobody told the time, seconds; assumed. */
    private static final double TIMED_S = 15;
    /** What is shorter than this is not flown at all, seconds; a tenth of what anybody sees, by judgement. */
    private static final double LEAST_S = 0.05;

    private static final double ROLLING_STALLS = 0.9;
    /** How often a figure is begun anew, higher or faster. */
    private static final int MOST_CORRECTIONS = 3;
    /** Lower than this it has landed, metres. */
    private static final double ON_THE_GROUND_M = 5;
    /** So near to a limit it counts as beyond it, as it is flown a little differently step by step, metres. */
    private static final double ROUGH_M = 0.3;

    /** Nobody sees what is further out or further up. */
    private static final double FAR_OUT_M = 30_000;

    private static final double FAR_UP_M = 12_000;

    private static final double SHARE_OF_NEVER_EXCEED = 0.92;

    private final Ground ground;
    private final @Nullable Entry first;
    private final double raisedM;
    private final boolean highest;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<LaidOut.Finding> findings = new ArrayList<>();
    private @Nullable FlightState entry;
    private @Nullable FlightState at;
    private @Nullable Wish turnBack;

    /**
     * @param first where the first figure that is flown is to begin; null if none is
     * @param raisedM how much higher than chosen everything is flown, metres
     * @param highest whether it is not raised any more, so that what comes too low all the same is given up
     */
    Flying(Ground ground, @Nullable Entry first, double raisedM, boolean highest) {
        this.ground = ground;
        this.first = first;
        this.raisedM = raisedM;
        this.highest = highest;
    }

    /** Where the aircraft is by now; null before it begins. */
    @Nullable
    FlightState at() {
        return at;
    }

    /** Whether it only turns round before the next figure. */
    boolean isTurningBack() {
        return turnBack != null;
    }

    /** Rolls upright before the next figure, which begins so. */
    void rollUpright() {
        FlightState now = at;
        Piece roll = now != null && now.upsideDown() ? ground.joining.upright(now) : null;
        if (roll != null) {
            pieces.add(roll);
            at = roll.to();
        }
    }

    void fly(Wish wish, @Nullable Entry to) {
        switch (wish.role()) {
            case TAKE_OFF -> takeOff(wish);
            case LANDING -> land(wish);
            case TURN_BACK -> turnBack = wish;
            case FIGURE -> figure(wish, to);
        }
    }

    private void takeOff(Wish wish) {
        boolean toRight = ground.overGround(wish, true);
        FlightState standing = written(ground.onRunway(toRight));
        FlightState airborne = written(ground.airborne(toRight, raisedM));
        if (at != null && at.place().z() > ON_THE_GROUND_M) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    wish.name()
                            + " comes after figures that are flown, with no landing between; if the act begins with it,"
                            + " move it to the front",
                    true));
        }
        begin(standing);
        pieces.add(Piece.timed(wish, seconds(wish, TAKE_OFF_S), standing, airborne));
        at = airborne;
    }

    private void land(Wish wish) {
        FlightState from = start(wish);
        boolean toRight = ground.overGround(wish, from.toRight());
        FlightState stopped =
                written(FlightState.along(new Vec(0, 0, 0), ROLLING_STALLS * ground.trial.stallMps(0), toRight));
        pieces.add(Piece.timed(wish, seconds(wish, LANDING_S), from, stopped));
        at = stopped;
    }

    private void figure(Wish wish, @Nullable Entry to) {
        if (!wish.isFlown()) {
            FlightState from = start(wish);
            pieces.add(Piece.timed(wish, seconds(wish, TIMED_S), from, from));
            return;
        }
        if (to == null) {
            FlightState from = start(wish);
            lacking(
                    wish,
                    from,
                    Objects.requireNonNull(ground.measured(wish, from.toRight()).lack(), "why not"));
            return;
        }
        if (to.heightM() > FAR_UP_M) {
            lacking(
                    wish,
                    start(wish),
                    String.format(
                            Locale.UK, "needs %,.0f ft to begin from", Shortfalls.tens(Units.ftFromM(to.heightM()))));
            return;
        }
        FlightState before = at;
        int pieceCount = pieces.size();
        Wish turning = turnBack;
        boolean free = wish.alongM() == null && wish.end() == null;
        Entry found = inThinnerAir(wish, to, before);
        Entry wanted = free && before != null ? ground.joining.fromHere(before, found) : found;
        for (int i = 0; ; i++) {
            FlightState from = before == null ? runIn(wanted) : before;
            join(from, free ? reached(from, wanted) : wanted);
            FlightState there = Objects.requireNonNull(at);
            FigureTrial.Outcome out = wish.flownIfItCan(ground.trial, there);
            double low = lowM(pieces.subList(pieceCount, pieces.size()), out);
            Entry better = i < MOST_CORRECTIONS ? corrected(wish, wanted, there, out, low) : null;
            boolean leaves = better == null && out.flown() && low > 0 && isGivenUp(wish);
            if (better == null && !leaves) {
                begun(wish, wanted, there, out.isWell() ? out : wish.flown(ground.trial, there));
                return;
            }
            pieces.subList(pieceCount, pieces.size()).clear();
            turnBack = turning;
            if (better == null) {
                at = from;
                lacking(wish, from, new Shortfalls(ground, wish, wanted, there, out).below(low));
                return;
            }
            wanted = better;
        }
    }

    /** So much further on that its speed is had by then, where there is room. */
    private Entry reached(FlightState from, Entry wanted) {
        Entry further = ground.joining.reached(from, wanted);
        boolean isOutside = Math.abs(further.alongM()) > ground.farthestM();
        return isOutside ? wanted : further;
    }

    /** The airspeeds were found at the base; a glider begins far above it, where it takes more of them for as much lift. */
    private Entry inThinnerAir(Wish wish, Entry to, @Nullable FlightState from) {
        if (!ground.joining.sinks() || wish.kt() != null) {
            return to;
        }
        double heightM = from == null ? to.heightM() : from.place().z();
        double base = ground.trial.stallMps(ground.area.baseM());
        double thinner = Math.max(1, ground.trial.stallMps(heightM) / base);
        return to.faster(Math.max(1, Math.min(thinner, mostMps() / to.mps())));
    }

    private double mostMps() {
        return SHARE_OF_NEVER_EXCEED * Units.mpsFromKt(ground.trial.airframe().neverExceedKt());
    }

    /** Where the act begins, so that it runs in to its first figure. */
    private FlightState runIn(Entry to) {
        double runInM = to.alongM() - to.way() * RUN_IN_S * to.mps();
        double within = ground.area.halfGiven()
                ? Math.max(-ground.area.halfM(), Math.min(runInM, ground.area.halfM()))
                : runInM;
        boolean isPast = (to.alongM() - within) * to.way() < 0;
        FlightState from = written(FlightState.along(
                new Vec(isPast ? to.alongM() : within, to.awayM(), to.heightM()), to.mps(), to.toRight()));
        begin(from);
        return from;
    }

    /** A beginning that mends what was wrong with how a figure came out; null if it was well, or cannot be mended. */
    private @Nullable Entry corrected(Wish wish, Entry to, FlightState there, FigureTrial.Outcome out, double lowM) {
        boolean could = ground.measured(wish, there.toRight()).isWell();
        Entry better = to;
        if (!out.flown() || (!out.isWell() && could)) {
            double faster = Math.min(Math.max(to.mps(), there.speedMps()) * 1.05, mostMps());
            better = wish.kt() == null && faster > there.speedMps() * 1.01 ? to.atLeast(faster) : to;
        }
        double base = wish.heightFt() != null ? ground.floorM() : ground.area.baseM();
        double low = Math.max(base - Shortfalls.NOTICED_M - out.box().lowestM(), lowM);
        if (out.flown() && low > 0 && !ground.joining.sinks()) {
            better = better.raised(low + Ground.MARGIN_M);
        }
        return better.equals(to) ? null : better;
    }

    /** How far a figure and the way to it come below what they may, metres; a climb from below is no matter. */
    private double lowM(List<Piece> way, FigureTrial.Outcome out) {
        double lowest = out.box().lowestM();
        for (Piece piece : way) {
            if (piece.from().place().z() > ground.floorM()) {
                lowest = Math.min(lowest, piece.lowestM());
            }
        }
        return ground.floorM() + ROUGH_M - lowest;
    }

    /** Whether a figure is given up where it comes too low; what somebody gave its elements is flown as it stands. */
    private boolean isGivenUp(Wish wish) {
        return !wish.own() && (!ground.joining.sinks() || highest);
    }

    private void join(FlightState from, Entry to) {
        List<Piece> joined = ground.joining.from(from, to, pieces.isEmpty());
        at = from;
        if (joined == null) {
            return;
        }
        for (Piece piece : joined) {
            Wish asked = turnBack;
            if (asked != null && piece.transit() == Transit.TURNS_BACK) {
                pieces.add(piece.as(asked));
                turnBack = null;
            } else {
                pieces.add(piece);
            }
            at = piece.to();
        }
    }

    private void begun(Wish wish, Entry wanted, FlightState from, FigureTrial.Outcome out) {
        if (!out.flown()) {
            lacking(wish, from, Objects.requireNonNull(out.lack()));
            return;
        }
        if (out.elements().size() > Most.ELEMENTS.entries()) {
            lacking(wish, from, "has more parts than one figure can hold");
            return;
        }
        if (isFarOut(out.end().place())) {
            lacking(wish, from, "takes it out of everybody's sight");
            return;
        }
        pieces.add(Piece.figure(wish, from, out));
        at = out.end();
        if (out.seconds() < LEAST_S) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    wish.name() + " lasts no time: what its line is to reach does not lie ahead of it, so give the line"
                            + " a time or a length"));
        }
        findings.addAll(new Shortfalls(ground, wish, wanted, from, out).said());
    }

    private static boolean isFarOut(Vec place) {
        return Math.hypot(place.x(), place.y()) > FAR_OUT_M || place.z() > FAR_UP_M;
    }

    private void lacking(Wish wish, FlightState from, String lack) {
        pieces.add(Piece.lacking(wish, seconds(wish, TIMED_S), from, lack));
        findings.add(new LaidOut.Finding(
                wish.id(), wish.name() + " " + lack + ", so it is only given a time; ask the pilot about it"));
    }

    private FlightState start(Wish wish) {
        FlightState now = at;
        if (now == null && first != null) {
            now = runIn(first);
        } else if (now == null) {
            now = written(ground.comingIn(wish.toRight() == null || wish.toRight(), raisedM));
            begin(now);
        }
        at = now;
        return now;
    }

    private void begin(FlightState from) {
        entry = pieces.isEmpty() ? from : entry;
    }

    /** As a show file writes it, so that it is flown again from the same place. */
    private static FlightState written(FlightState state) {
        Vec place = new Vec(
                Math.rint(state.place().x()),
                Math.rint(state.place().y()),
                Units.mFromFt(Math.rint(Units.ftFromM(state.place().z()))));
        double kt = Math.max(Math.rint(Units.ktFromMps(state.speedMps()) * 10) / 10, 1);
        return FlightState.along(place, Units.mpsFromKt(kt), state.toRight());
    }

    private static double seconds(Wish wish, double otherwise) {
        Double told = wish.seconds();
        return told == null ? otherwise : told;
    }

    LaidOut laid() {
        Wish left = turnBack;
        if (left != null) {
            FlightState from = start(left);
            pieces.add(Piece.timed(left, seconds(left, TIMED_S), from, from));
            turnBack = null;
        }
        FlightState from = entry;
        if (from == null) {
            from = FlightState.along(new Vec(0, 0, ground.area.baseM()), ground.trial.stallMps(0) * 2, true);
        }
        return new LaidOut(from, pieces, findings);
    }
}
