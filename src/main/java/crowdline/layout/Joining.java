package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds what a pilot flies from the end of one figure to the beginning of the next: straight on, or round by a turn away
 * from the crowd, with the climb, the dive or the slowing down that is needed on the way.
 *
 * <p>Speed that the engine alone does not give is dived for; a slow beginning high up is climbed to at a better speed.
 */
final class Joining {
    /** Before and after a roll it is straight for a moment, seconds: so that it is seen, however fast it rolls. */
    private static final Element.Line MOMENT = new Element.Line(Element.Until.SECONDS, 0.5, List.of(), 1);
    /** From upside down to the right way up. */
    static final List<Element> UPRIGHT =
            List.of(MOMENT, new Element.Roll(Element.RollStyle.AILERON, Element.Side.LEFT, 180, null, 0, 0, 1), MOMENT);

    /** Near enough to a place, metres. */
    static final double NEAR_M = 40;
    /** Nearer than that it is over before it is seen, seconds. */
    private static final double NEAR_S = 1;
    /** So much further out than where it goes, the way in is what there is to see of it, metres; by judgement. */
    private static final double IN_M = 150;
    /** Of the way in to the display line, so much is worth to be flown before it turns round; by judgement. */
    private static final double MOST_OF_IT = 0.7;
    /** Too low by less than this it does not come round once more, metres. */
    private static final double SHORT_M = 40;
    /** Too high by less than this neither, metres; by judgement. */
    private static final double SPARE_M = 80;
    /** How far before a place a second turn begins that leads there, in radii of it. */
    static final double BACK_RADII = 3.7;

    private static final int MOST_FURTHER = 4;
    private static final double STEP_S = 3;
    private static final int MOST_ROUNDS = 3;
    /** A change of height that is worth a word, metres. */
    static final double CLIMB_M = 40;

    /** From straight away it turns off by so much that the turn back knows its way, degrees. */
    private static final double LITTLE_DEG = 5;

    private static final double SLOWING = 0.85;
    /** So far past where a figure would have begun best it is begun all the same, rather than flying round, seconds. */
    private static final double PAST_S = 4;

    /** About how long it is from one figure to the next, seconds. */
    private static final double BETWEEN_S = 25;

    /** Above the base, where it climbs from figure to figure, metres. */
    private static final double CLIMBS_AT_M = 100;

    private final FigureTrial trial;
    private final Climbing climbing;
    private final Fit fit;
    private final Leading leading;
    private final Runs runs;
    private final TurningBack turning;
    final Straight straight;
    final Estimating estimating;

    /**
     * @param baseM where figures are flown, metres above the datum
     * @param mostM nothing between figures goes higher, metres above the datum; infinite if nobody gave a ceiling
     * @param reachM how far left and right of the datum it may come, metres; infinite if nobody gave it
     */
    Joining(FigureTrial trial, double baseM, double mostM, double reachM) {
        this.trial = trial;
        climbing = Climbing.of(trial, baseM + CLIMBS_AT_M);
        fit = new Fit(climbing.sinks());
        straight = new Straight(trial, climbing, reachM);
        runs = new Runs(climbing);
        turning = new TurningBack(trial, climbing, straight, runs, mostM);
        estimating = new Estimating(straight);
        leading = new Leading(trial, climbing, straight, estimating, baseM);
    }

    /** Whether it has no power to climb with. */
    boolean sinks() {
        return climbing.sinks();
    }

    /** Height that is won on the way from one figure to the next, metres; below 0 it is lost. */
    double wonM() {
        return climbing.rateMps() * BETWEEN_S;
    }

    /** The right way up again; null if it cannot be flown. */
    @Nullable
    Piece upright(FlightState at) {
        FigureTrial.Outcome out = trial.fly(UPRIGHT, at);
        return out.flown() ? Piece.transit(Transit.ROLLS_UPRIGHT, UPRIGHT, at, out) : null;
    }

    /**
     * The pieces that lead to a beginning from the right way up; none if it is there already.
     *
     * @return what was found, which may fall short of height or speed; null if there is no way at all
     */
    @Nullable
    List<Piece> from(FlightState start, Entry to, boolean first) {
        List<Piece> pieces = new ArrayList<>();
        FlightState at = start;
        if (Fit.isAcross(at)) {
            Piece turn = turnOff(at, to);
            if (turn == null) {
                return null;
            }
            pieces.add(turn);
            at = turn.to();
        } else if (at.toRight() == to.toRight()) {
            if (isThere(at, to)) {
                return pieces;
            }
            List<Piece> on = straightOn(at, to, first);
            if (on != null) {
                return on;
            }
            List<Piece> nearly = nearlyThere(at, to);
            if (nearly != null) {
                return nearly;
            }
        }
        Piece in = at.toRight() != to.toRight() && !Fit.isAcross(start) ? inFirst(at, to) : null;
        if (in != null) {
            pieces.add(in);
            at = in.to();
        }
        Leading.Lead lead = leading.lead(to, at);
        List<Piece> to0 = round(at, lead.from());
        if (to0 == null) {
            return null;
        }
        pieces.addAll(to0);
        if (lead.separate()) {
            FlightState here = to0.isEmpty() ? at : to0.get(to0.size() - 1).to();
            Piece last = ahead(here, to, false);
            if (last != null) {
                pieces.add(last);
            }
        }
        return pieces;
    }

    /** In to the display line before it turns round, if it is back sooner so and comes no further out than is seen; else null. */
    private @Nullable Piece inFirst(FlightState at, Entry to) {
        if (!estimating.comesInFirst(at, to)) {
            return null;
        }
        int way = at.toRight() ? 1 : -1;
        double inM = straight.asideM(at, at.place().y() - to.awayM());
        double mostM = Math.min(straight.reachM(), Runs.OUT_OF_SIGHT_M);
        // Most of the way in does where all of it leads too far along.
        double alongM = way * Math.min(way * at.place().x() + inM, mostM);
        if (way * (alongM - at.place().x()) < MOST_OF_IT * inM) {
            return null;
        }
        // What it slows down to in the end it does not turn round at.
        List<Element> run = List.of(runs.to(at, alongM, leading.lead(to, at).from()));
        FigureTrial.Outcome out = trial.fly(run, at);
        return out.flown() ? Piece.transit(Transit.COMES_IN, run, at, out) : null;
    }

    /** Straight on, with a climb and a dive for its speed if that is needed; null if it is not as wanted there. */
    private @Nullable List<Piece> straightOn(FlightState at, Entry to, boolean first) {
        Piece ahead = ahead(at, to, first);
        if (ahead != null && (first || fit.isGood(ahead.to(), to))) {
            return List.of(ahead);
        }
        Leading.Lead lead = leading.lead(to, at);
        Piece climb =
                lead.separate() && !sinks() && to.slowestMps() > at.speedMps() ? ahead(at, lead.from(), first) : null;
        if (climb == null || !fit.isGood(climb.to(), lead.from())) {
            return null;
        }
        Piece dive = ahead(climb.to(), to, false);
        return dive != null && fit.isGood(dive.to(), to) ? List.of(climb, dive) : null;
    }

    /** From across the line so far round that the turn back which follows comes out the way wanted. */
    private @Nullable Piece turnOff(FlightState at, Entry to) {
        boolean away = at.direction().y() > 0;
        // What flies off to the left comes back flying to the right.
        boolean toLeft = to.toRight();
        Element.Side side = toLeft == away ? Element.Side.LEFT : Element.Side.RIGHT;
        double degrees = away ? LITTLE_DEG : 120;
        List<Element> turn = List.of(new Element.Turn(side, degrees, straight.bankDeg(at, to), 0, 0, 1));
        FigureTrial.Outcome out = trial.fly(turn, at);
        return out.flown() ? Piece.transit(Transit.TURNS_BACK, turn, at, out) : null;
    }

    /** By turns away from the crowd, once if it is to be flown the other way, else twice. */
    private @Nullable List<Piece> round(FlightState start, Entry to) {
        List<Piece> pieces = new ArrayList<>();
        FlightState at = start;
        double missing = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            if (at.toRight() == to.toRight()) {
                Piece ahead = i == 0 ? ahead(at, to, false) : null;
                if (ahead != null && fit.isGood(ahead.to(), to)) {
                    pieces.add(ahead);
                    return pieces;
                }
                double backM = to.alongM() - to.way() * BACK_RADII * straight.radiusM(at, to);
                boolean further = (backM - at.place().x()) * to.way() < 0;
                double wayM = further ? backM : at.place().x() - to.way() * BACK_RADII * straight.radiusM(at, to);
                Piece back = turning.back(at, Entry.anyhow(wayM, to.awayM(), to.heightM(), to.mps(), !to.toRight()));
                if (back == null) {
                    return null;
                }
                pieces.add(back);
                at = back.to();
            }
            Piece back = turning.back(at, to);
            if (back == null) {
                return null;
            }
            pieces.add(back);
            at = back.to();
            double low = Math.abs(Fit.lowM(at, to));
            if (fit.isGood(at, to) || low > 0.8 * missing || isNearlyGood(at, to)) {
                return pieces;
            }
            missing = low;
        }
        return pieces;
    }

    /** The same beginning, taken from where the aircraft is if it is just past it and all else is well. */
    Entry fromHere(FlightState at, Entry to) {
        double past = (at.place().x() - to.alongM()) * to.way();
        boolean here = at.toRight() == to.toRight()
                && !Fit.isAcross(at)
                && past > NEAR_M
                && past < PAST_S * at.speedMps()
                && fit.isGood(at, to);
        return here ? to.at(at.place().x()) : to;
    }

    /**
     * The same beginning so much further on that its speed is had by then, if it lies ahead and that is not far.
     *
     * @param furtherM how far that may be, metres
     */
    Entry reached(FlightState at, Entry to, double furtherM) {
        double restM = (to.alongM() - at.place().x()) * to.way();
        boolean isAhead = at.toRight() == to.toRight() && !Fit.isAcross(at) && restM > -NEAR_M;
        if (!isAhead || fit.isGood(at, to)) {
            return to;
        }
        double mostM = restM + furtherM;
        double leastM = Math.max(restM, straight.needM(at, to));
        double aheadM = restM < NEAR_M ? leastM : restM;
        for (int i = 0; i < MOST_FURTHER && aheadM < mostM; i++) {
            Entry further = to.at(at.place().x() + to.way() * aheadM);
            if (straightOn(at, further, false) != null) {
                return further;
            }
            aheadM = Math.max(leastM, aheadM + STEP_S * at.speedMps());
        }
        return to;
    }

    private boolean isThere(FlightState at, Entry to) {
        return isNear(at, to) && fit.isGood(at, to);
    }

    private static boolean isNear(FlightState at, Entry to) {
        return Math.abs(at.place().x() - to.alongM()) < Math.max(NEAR_M, NEAR_S * at.speedMps());
    }

    /** The way straight on to where only a knot is missing, or it is a little too high, rather than to come round twice; else null. */
    private @Nullable List<Piece> nearlyThere(FlightState at, Entry to) {
        if (isNear(at, to) && isAlmostGood(at, to)) {
            return List.of();
        }
        Piece ahead = ahead(at, to, false);
        return ahead != null && isAlmostGood(ahead.to(), to) ? List.of(ahead) : null;
    }

    private boolean isAlmostGood(FlightState at, Entry to) {
        return Fit.lowM(at, to) <= Fit.LEVEL_M && isNearlyGood(at, to);
    }

    /**
     * Whether only a few metres of height or knots are missing, or are too much, for which nobody comes round again: it is aimed higher
     * instead, or begun from there.
     */
    private boolean isNearlyGood(FlightState at, Entry to) {
        double low = Fit.lowM(at, to);
        return low < SHORT_M && low > -SPARE_M && fit.isGood(at, to.raised(-low).slower(Fit.SLOW));
    }

    /** Straight on; null if the place lies behind. */
    private @Nullable Piece ahead(FlightState at, Entry to, boolean first) {
        double restM = (to.alongM() - at.place().x()) * to.way();
        if (restM < NEAR_M) {
            return null;
        }
        List<Element> run = List.of(runs.to(at, to.alongM(), to));
        FigureTrial.Outcome out = trial.fly(run, at);
        return out.flown() ? Piece.transit(name(at, to, out, first), run, at, out) : null;
    }

    private static Transit name(FlightState at, Entry to, FigureTrial.Outcome out, boolean first) {
        double higher = out.end().place().z() - at.place().z();
        if (first) {
            return Transit.RUNS_IN;
        }
        if (higher > CLIMB_M) {
            return Transit.CLIMBS;
        }
        if (higher < -CLIMB_M) {
            return Transit.DIVES;
        }
        if (!to.isAnyhow() && at.place().y() - to.awayM() > IN_M) {
            return Transit.COMES_IN;
        }
        return to.mps() < SLOWING * at.speedMps() ? Transit.SLOWS_DOWN : Transit.FLIES_ON;
    }
}
