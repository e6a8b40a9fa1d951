package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Element;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One aircraft in one area: what its figures need, each measured once, and where they are best seen. */
final class Ground {
    /** Where nobody gave an end, a figure may be begun as far out as this, metres, or as figures are spread; by judgement. */
    private static final double FARTHEST_M = 2_000;

    private static final double FARTHEST_SPREADS = 1.3;
    /** Above the base by this much figures are drawn, metres. */
    static final double MARGIN_M = 5;
    /** How near the end of the line a figure reaches that is wanted there, as a share of how far figures are spread. */
    private static final double AT_END = 0.9;
    /** Where in its length something happens for which it first slows down, as a spin does. */
    private static final double SPINS_AT = 0.6;
    /** After take-off: height, metres, and speed in stalling speeds. */
    private static final double AIRBORNE_M = 20;

    private static final double AIRBORNE_STALLS = 1.35;
    /** A pass begins so long before the middle, seconds. */
    private static final double PASS_S = 5.5;
    /** A wind along the line that decides which way to take off, m/s; about 2 kt. */
    private static final double FELT_MPS = 1;
    /** Where the wheels leave the ground, as a share of how far figures are spread. */
    private static final double RUNWAY = 0.4;

    final FigureTrial trial;
    final Area area;
    final Joining joining;
    final Work work;
    private final Map<Drawn, Measured> measured = new HashMap<>();

    /** All that the measure of a figure depends on: a list that has a loop twice has it measured once. */
    private record Drawn(
            List<Element> elements,
            boolean own,
            @Nullable EntrySpeed enters,
            @Nullable Double kt,
            boolean isTold,
            boolean toRight) {
        Drawn theOtherWay() {
            return new Drawn(elements, own, enters, kt, isTold, !toRight);
        }
    }

    Ground(FigureTrial trial, Area area) {
        this.trial = trial;
        this.area = area;
        work = new Work(trial);
        Double ceiling = area.ceilingM();
        double mostM = ceiling == null ? Double.POSITIVE_INFINITY : ceiling;
        double reachM = area.halfGiven() ? area.halfM() : Double.POSITIVE_INFINITY;
        joining = new Joining(trial, area.baseM(), mostM, reachM);
    }

    /** Whether it can be flown at all. */
    boolean isShown(Wish wish) {
        return wish.isFlown()
                && (measured(wish, true).lack() == null || measured(wish, false).lack() == null);
    }

    Measured measured(Wish wish, boolean toRight) {
        Drawn drawn =
                new Drawn(wish.elements(), wish.own(), wish.enters(), wish.kt(), wish.heightFt() != null, toRight);
        Measured known = measured.get(drawn);
        if (known == null) {
            Measured other = measured.get(drawn.theOtherWay());
            double heightM = measuredAtM();
            known = other == null
                    ? Measured.of(wish, trial, toRight, heightM, work.isLeft(Work.Part.MEASURING))
                    : other.theOtherWay(wish, trial, toRight, heightM, work.isLeft(Work.Part.MEASURING));
            measured.put(drawn, known);
        }
        return known;
    }

    /** How high figures are measured, metres above the datum. */
    double measuredAtM() {
        return area.baseM() + MARGIN_M;
    }

    /** The lowest anything may come above the datum: a base that nobody gave is only a height to draw at, metres. */
    double floorM() {
        return area.baseGiven() ? area.baseM() : 0;
    }

    /** How far from the middle of the line a figure may be begun, metres. */
    double farthestM() {
        double drawn = Math.max(FARTHEST_M, FARTHEST_SPREADS * area.spreadM());
        return Math.min(area.halfGiven() ? area.halfM() : drawn, Runs.OUT_OF_SIGHT_M);
    }

    /** How far from the middle of the line anything is flown, metres. */
    double mostM() {
        return area.halfGiven() ? area.halfM() : Runs.OUT_OF_SIGHT_M;
    }

    /** The lowest a figure can begin, metres: what turns down in the wind takes more height one way than the other. */
    double lowestM(Measured m) {
        return area.baseM() - m.downM() + MARGIN_M;
    }

    /** The height a figure was told, or the nearest to it that base and ceiling leave; metres. */
    double toldM(double toldFt, Measured m) {
        Double ceiling = area.ceilingM();
        double told = Units.mFromFt(toldFt);
        double below = ceiling == null ? told : Math.min(told, ceiling - m.upM() - MARGIN_M);
        return Math.max(below, floorM() - m.downM() + MARGIN_M);
    }

    /** Where it begins so that it is flown where it is wanted, or best seen, or so that what it leads to is. */
    double bestM(Wish wish, Measured m) {
        Double pinned = wish.alongM();
        if (pinned != null) {
            return pinned - m.middleM();
        }
        End end = wish.end();
        Wish leadsTo = wish.leadsTo();
        if (end == null && leadsTo != null) {
            return -pastM(leadsTo, m.leaves(new Vec(0, 0, beginsM(wish, m) - measuredAtM())));
        }
        End wanted = end != null ? end : End.CENTRE;
        if (m.turnsRound() && (end == null || end == End.ahead(m.toRight()))) {
            return m.way() * turnsAtM(m);
        }
        double slowsM = wish.enters() != EntrySpeed.SLOW ? 0 : m.toRight() ? m.rightM() : m.leftM();
        return switch (wanted) {
            case CENTRE -> -m.middleM();
            case RIGHT -> AT_END * area.spreadM() - (m.toRight() ? m.rightM() : SPINS_AT * slowsM);
            case LEFT -> -AT_END * area.spreadM() - (m.toRight() ? SPINS_AT * slowsM : m.leftM());
        };
    }

    /** How high it begins, metres: as it was told, or as low as it can. */
    private double beginsM(Wish wish, Measured m) {
        Double toldFt = wish.heightFt();
        return toldFt == null ? lowestM(m) : toldM(toldFt, m);
    }

    /** How much further to the right an aircraft is than where it would fly straight on to a figure, metres. */
    double pastM(Wish next, FlightState at) {
        Entry begins = begins(next, at.toRight());
        double aheadM = joining.straight.needM(at, begins.at(at.place().x()));
        return at.place().x() + begins.way() * aheadM - begins.alongM();
    }

    /** How much higher an aircraft is than where a figure begins, metres. */
    double aboveM(Wish next, FlightState at) {
        return at.place().z() - begins(next, at.toRight()).heightM();
    }

    private Entry begins(Wish wish, boolean toRight) {
        Measured m = measured(wish, toRight);
        return m.begunAt(bestM(wish, m), beginsM(wish, m));
    }

    /**
     * How far along its way a figure begins that turns round: at the end of the line, and so far out that it is back on the
     * display line for a pass past the middle, where there is room for that.
     */
    private double turnsAtM(Measured m) {
        double endM = m.way() * m.end().place().x();
        double backM = joining.straight.asideM(m.end(), m.end().place().y())
                + PASS_S
                        * Math.max(
                                m.end().speedMps(),
                                Units.mpsFromKt(trial.usual().passKt()))
                - endM;
        return Math.max(AT_END * area.spreadM() - aheadM(m), Math.min(backM, roomM(m)));
    }

    /**
     * How far along its way a figure may begin, metres: so far that it stays within an area that was given; and one that
     * turns round as far out as anything is flown.
     */
    double roomM(Measured m) {
        return (m.turnsRound() ? mostM() : farthestM()) - (area.halfGiven() ? aheadM(m) : 0);
    }

    /** How far along its way it reaches, metres. */
    private static double aheadM(Measured m) {
        return m.toRight() ? m.rightM() : -m.leftM();
    }

    /** Which way it takes off or lands: as wanted, else into the wind, else as given. */
    boolean overGround(Wish wish, boolean otherwise) {
        Boolean wanted = wish.toRight();
        double wind = trial.windAlongMps();
        return wanted != null ? wanted : Math.abs(wind) < FELT_MPS ? otherwise : wind < 0;
    }

    /** Which ways it may take off: as wanted, into the wind, or either, to the right rather than to the left. */
    List<Boolean> takesOff(Wish wish) {
        boolean toRight = overGround(wish, true);
        return toRight == overGround(wish, false) ? List.of(toRight) : List.of(true, false);
    }

    /** Standing at the beginning of the runway. */
    FlightState onRunway(boolean toRight) {
        double start = (toRight ? -1 : 1) * RUNWAY * area.spreadM();
        return FlightState.along(new Vec(start, 0, 0), Units.mpsFromKt(1), toRight);
    }

    /** Just after take-off; a glider is let go where its height lasts for the act. */
    FlightState airborne(boolean toRight, double raisedM) {
        double height = joining.sinks() ? releasedM(raisedM) : AIRBORNE_M;
        double end = (toRight ? 1 : -1) * RUNWAY * area.spreadM();
        return FlightState.along(new Vec(end, 0, height), AIRBORNE_STALLS * trial.stallMps(0), toRight);
    }

    /** How high a glider is let go after it took off, metres. */
    double releasedM(double raisedM) {
        return area.baseM() + MARGIN_M + raisedM;
    }

    /** Coming in from the end of the line. */
    FlightState comingIn(boolean toRight, double raisedM) {
        double pass = Units.mpsFromKt(trial.usual().passKt());
        double end = (toRight ? -1 : 1) * area.spreadM();
        return FlightState.along(new Vec(end, 0, area.baseM() + MARGIN_M + raisedM), pass, toRight);
    }

    /** As a show file writes it, so that it is flown again from the same place. */
    static FlightState written(FlightState state) {
        Vec place = new Vec(
                Math.rint(state.place().x()),
                Math.rint(state.place().y()),
                Units.mFromFt(Math.rint(Units.ftFromM(state.place().z()))));
        double kt = Math.max(Math.rint(Units.ktFromMps(state.speedMps()) * 10) / 10, 1);
        return FlightState.along(place, Units.mpsFromKt(kt), state.toRight());
    }
}
