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
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Flies what was chosen from end to end, with the transits that are needed. */
final class Flying {
    /** What is done with what comes too low. */
    enum TooLow {
        /** It is flown all the same, as the act is to be flown from higher. */
        FLOWN,
        /** It is only given a time, which is said of each. */
        GIVEN_UP,
        /** The same, and it is said of all of them elsewhere. */
        GIVEN_UP_TOGETHER
    }

    private static final double TAKE_OFF_S = 25;
    private static final double LANDING_S = 60;
    /** A figure that is only timed and of which nobody told the time, seconds; assumed. */
    private static final double TIMED_S = 15;
    /** What is shorter than this is not flown at all, seconds; a tenth of what anybody sees, by judgement. */
    private static final double LEAST_S = 0.05;

    private static final double ROLLING_STALLS = 0.9;
    /** Lower than this it has landed, metres. */
    private static final double ON_THE_GROUND_M = 5;

    /** Nobody sees what is further out or further up. */
    private static final double FAR_OUT_M = 30_000;

    private static final double FAR_UP_M = 12_000;

    private final Ground ground;
    private final Trying trying;
    private final Room room;
    private final @Nullable Entry first;
    private final double raisedM;
    private final TooLow tooLow;
    private final List<Piece> pieces = new ArrayList<>();
    /** What there is to say, worked out once it is known that this is the act. */
    private final List<Supplier<List<LaidOut.Finding>>> findings = new ArrayList<>();

    private final List<Wish> givenUp = new ArrayList<>();

    private @Nullable FlightState entry;
    private @Nullable FlightState at;
    private @Nullable Wish turnBack;

    /**
     * @param first where the first figure that is flown is to begin; null if none is
     * @param raisedM how much higher than chosen everything is flown, metres
     * @param tooLow what is done with what comes too low
     */
    Flying(Ground ground, @Nullable Entry first, double raisedM, TooLow tooLow) {
        this.ground = ground;
        trying = new Trying(ground);
        room = new Room(ground.area, ground.joining.sinks());
        this.first = first;
        this.raisedM = raisedM;
        this.tooLow = tooLow;
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
            case TAKE_OFF -> takeOff(wish, ground.overGround(wish, true));
            case LANDING -> land(wish);
            case TURN_BACK -> turnBack = wish;
            case FIGURE -> figure(wish, to);
        }
    }

    void takeOff(Wish wish, boolean toRight) {
        FlightState standing = Ground.written(ground.onRunway(toRight));
        FlightState airborne = Ground.written(ground.airborne(toRight, raisedM));
        if (at != null && at.place().z() > ON_THE_GROUND_M) {
            found(new LaidOut.Finding(
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
                Ground.written(FlightState.along(new Vec(0, 0, 0), ROLLING_STALLS * ground.trial.stallMps(0), toRight));
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
            Measured measured = ground.measured(wish, from.toRight());
            if (measured.isFarLow()) {
                farLow(wish, from, measured);
                return;
            }
            lacking(
                    wish,
                    from,
                    Objects.requireNonNull(measured.lack(), "why not"),
                    () -> measured.lackInFull(wish, ground.trial, ground.measuredAtM()));
            return;
        }
        fly(wish, trying.of(wish, to, at, pieces.isEmpty()));
    }

    /** Flies a figure as it was tried. */
    void fly(Wish wish, Trying.Tried tried) {
        if (tried.wanted().heightM() > FAR_UP_M) {
            tooHigh(wish, tried.wanted());
            return;
        }
        begin(tried.start());
        if (tried.out().flown() && tried.lowM() > 0 && isGivenUp(wish)) {
            at = tried.start();
            tooLow(wish, tried);
            return;
        }
        if (tried.out().flown()) {
            tried.way().forEach(this::join);
        }
        at = tried.out().flown() ? tried.from() : tried.start();
        begun(wish, tried);
    }

    private void tooLow(Wish wish, Trying.Tried tried) {
        String lack = new Shortfalls(ground, wish, tried, tried.out()).below(tried.lowM());
        if (tooLow == TooLow.GIVEN_UP_TOGETHER) {
            pieces.add(Piece.lacking(wish, seconds(wish, TIMED_S), tried.start(), lack));
            givenUp.add(wish);
        } else {
            lacking(wish, tried.start(), lack);
        }
    }

    /** Of what nothing was said yet though it is only given a time, as it comes too low. */
    List<Wish> givenUp() {
        return givenUp;
    }

    /** Whether a figure is given up where it comes too low; what somebody gave its elements is flown as it stands. */
    private boolean isGivenUp(Wish wish) {
        return !wish.own() && tooLow != TooLow.FLOWN;
    }

    private void join(Piece piece) {
        Wish asked = turnBack;
        if (asked != null && piece.turns()) {
            pieces.add(piece.as(asked));
            turnBack = null;
        } else {
            pieces.add(piece);
        }
    }

    private void begun(Wish wish, Trying.Tried tried) {
        FlightState from = tried.from();
        FigureTrial.Outcome out = tried.out();
        if (!out.flown()) {
            // How much more speed would do takes long to find, and most of what is flown is flown again.
            lacking(
                    wish,
                    from,
                    Objects.requireNonNull(out.lack()),
                    () -> wish.flown(ground.trial, from).lack());
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
        room.takes(wish, out.box());
        at = out.end();
        if (out.seconds() < LEAST_S) {
            found(new LaidOut.Finding(
                    wish.id(),
                    wish.name() + " lasts no time: what its line is to reach does not lie ahead of it, so give the line"
                            + " a time or a length"));
        }
        findings.add(() -> {
            FigureTrial.Outcome told = out.isWell() || !saysMore() ? out : wish.flown(ground.trial, from);
            return new Shortfalls(ground, wish, tried, told).said();
        });
    }

    /** Says of what comes out far lower than it began how high to begin it. */
    private void farLow(Wish wish, FlightState from, Measured measured) {
        String lack = Objects.requireNonNull(measured.lack());
        pieces.add(Piece.lacking(wish, seconds(wish, TIMED_S), from, lack));
        found(new LaidOut.Finding(
                wish.id(),
                String.format(
                        Locale.UK,
                        "%s comes out %,.0f ft lower than it began and rises by %,.0f ft, so it is only given a time; if it is"
                                + " flown, give it %,.0f ft",
                        wish.name(),
                        Shortfalls.tens(Units.ftFromM(-measured.downM())),
                        Shortfalls.tens(Units.ftFromM(measured.upM())),
                        Shortfalls.tens(Units.ftFromM(ground.lowestM(measured))))));
    }

    private void tooHigh(Wish wish, Entry to) {
        lacking(
                wish,
                start(wish),
                String.format(Locale.UK, "needs %,.0f ft to begin from", Shortfalls.tens(Units.ftFromM(to.heightM()))));
    }

    private static boolean isFarOut(Vec place) {
        return Math.hypot(place.x(), place.y()) > FAR_OUT_M || place.z() > FAR_UP_M;
    }

    private void lacking(Wish wish, FlightState from, String lack) {
        lacking(wish, from, lack, () -> lack);
    }

    /** @param inFull the same with what would do, worked out once it is known that this is the act */
    private void lacking(Wish wish, FlightState from, String lack, Supplier<@Nullable String> inFull) {
        pieces.add(Piece.lacking(wish, seconds(wish, TIMED_S), from, lack));
        findings.add(() -> List.of(new LaidOut.Finding(
                wish.id(),
                wish.name() + " " + Objects.requireNonNullElse(saysMore() ? inFull.get() : null, lack)
                        + ", so it is only given a time; ask the pilot about it")));
    }

    /** Whether how much more would do is worked out as well. */
    private boolean saysMore() {
        return ground.work.isLeft(Work.Part.SAYING);
    }

    private FlightState start(Wish wish) {
        FlightState now = at;
        if (now == null && first != null) {
            now = trying.runIn(first);
            begin(now);
        } else if (now == null) {
            now = Ground.written(ground.comingIn(wish.toRight() == null || wish.toRight(), raisedM));
            begin(now);
        }
        at = now;
        return now;
    }

    private void begin(FlightState from) {
        entry = pieces.isEmpty() ? from : entry;
    }

    private static double seconds(Wish wish, double otherwise) {
        Double told = wish.seconds();
        return told == null ? otherwise : told;
    }

    /** Says one thing. */
    private void found(LaidOut.Finding finding) {
        findings.add(() -> List.of(finding));
    }

    /** What is flown so far, in its order. */
    List<Piece> pieces() {
        return pieces;
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
        findings.add(room::said);
        List<LaidOut.Finding> said =
                findings.stream().flatMap(found -> found.get().stream()).toList();
        return new LaidOut(from, pieces, said);
    }
}
