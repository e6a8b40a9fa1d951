package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
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
    /** Near enough to a place, metres. */
    private static final double NEAR_M = 40;
    /** Near enough to a height, metres. */
    private static final double LEVEL_M = 8;
    /** Too low by less than this it does not come round once more, metres. */
    private static final double SHORT_M = 40;
    /** Higher than wanted by this much is of no matter, metres. */
    private static final double HIGH_M = 25;

    /** How far before a place a second turn begins that leads there, in radii of it. */
    private static final double BACK_RADII = 3.7;

    private static final int MOST_TRIES = 6;
    private static final int MOST_ROUNDS = 3;
    private static final double STEEPEST_BANK_DEG = 72;
    /** A change of height that is worth a word, metres. */
    private static final double CLIMB_M = 40;

    /** Nearer to the crowd than wanted by this much is of no matter, metres. */
    private static final double CLOSE_M = 15;
    /** Cosine of the heading below which it flies across the line. */
    private static final double ALONG = 0.8;

    private static final double SLOWING = 0.85;
    /** A glider is told to stay as high as it can. */
    private static final double AS_HIGH_AS_IT_CAN_M = 1_500;
    /** Slope of a dive for speed, as a tangent. */
    private static final double DIVE = 0.2;
    /** Height for speed, with what drag takes. */
    private static final double DIVE_LOSS = 1.3;
    /** A figure is begun this much further on, seconds, rather than that the aircraft comes round for it; by judgement. */
    private static final double FURTHER_S = 10;
    /** Slowing down with the throttle closed, m/s². */
    private static final double SLOWING_MPS2 = 1.6;
    /** Of the greatest level speed, what is reached in good time. */
    private static final double GOOD_TIME = 0.92;

    /** So far past where a figure would have begun best it is begun all the same, rather than flying round, seconds. */
    private static final double PAST_S = 4;

    /** About how long it is from one figure to the next, seconds. */
    private static final double BETWEEN_S = 25;

    private final FigureTrial trial;
    private final Climbing climbing;

    Joining(FigureTrial trial, double heightM) {
        this.trial = trial;
        climbing = Climbing.of(trial, heightM);
    }

    /** Whether it has no power to climb with. */
    boolean sinks() {
        return climbing.sinks();
    }

    /** Height that is won on the way from one figure to the next, metres; below 0 it is lost. */
    double wonM() {
        return climbing.rateMps() * BETWEEN_S;
    }

    /** How the last stretch is flown: from where, how high and how fast it begins. */
    private record Lead(Entry from, boolean separate) {}

    private Lead lead(Entry to, double nowM) {
        if (climbing.sinks()) {
            return new Lead(to, false);
        }
        boolean climbs = to.heightM() - nowM > 30;
        double level = GOOD_TIME * climbing.mostLevelMps();
        double comes = climbs ? Math.min(climbing.bestMps(), level) : Math.min(to.mps(), level);
        if (comes < to.slowestMps()) {
            double speed = (to.slowestMps() + Math.min(to.mps(), to.fastestMps())) / 2;
            double high = DIVE_LOSS * (speed * speed - comes * comes) / (2 * Units.G_MPS2);
            double from = to.alongM() - to.way() * (high / DIVE + 2 * comes);
            return new Lead(
                    Entry.anyhow(from, to.awayM(), to.heightM() + high, comes, to.toRight())
                            .within(0.9, 1.25),
                    true);
        }
        if (comes > to.fastestMps()) {
            double slowM = (comes * comes - to.mps() * to.mps()) / (2 * SLOWING_MPS2) + comes;
            double from = to.alongM() - to.way() * slowM;
            return new Lead(
                    Entry.anyhow(from, to.awayM(), to.heightM(), comes, to.toRight())
                            .within(0, 1.3),
                    true);
        }
        return new Lead(
                new Entry(to.alongM(), to.awayM(), to.heightM(), comes, to.slowestMps(), to.fastestMps(), to.toRight()),
                false);
    }

    /**
     * The pieces that lead to a beginning; none if it is there already.
     *
     * @return what was found, which may fall short of height or speed; null if there is no way at all
     */
    @Nullable
    List<Piece> from(FlightState start, Entry to, boolean first) {
        List<Piece> pieces = new ArrayList<>();
        FlightState at = start;
        if (at.upsideDown()) {
            List<Element> roll =
                    List.of(new Element.Roll(Element.RollStyle.AILERON, Element.Side.LEFT, 180, null, 0, 0, 1));
            FigureTrial.Outcome out = trial.fly(roll, at);
            if (!out.flown()) {
                return null;
            }
            pieces.add(Piece.transit(Transit.ROLLS_UPRIGHT, roll, out.seconds(), at, out.end()));
            at = out.end();
        }
        if (isAcross(at)) {
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
            Piece ahead = ahead(at, to, first);
            if (ahead != null && isGood(ahead.to(), to)) {
                pieces.add(ahead);
                return pieces;
            }
        }
        Lead lead = lead(to, at.place().z());
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

    /** Whether it flies to the crowd or away from it rather than along the line. */
    private static boolean isAcross(FlightState at) {
        return Math.abs(at.direction().x()) < ALONG;
    }

    /** From across the line so far round that the turn back which follows comes out the way wanted. */
    private @Nullable Piece turnOff(FlightState at, Entry to) {
        boolean away = at.direction().y() > 0;
        // What flies off to the left comes back flying to the right.
        boolean toLeft = to.toRight();
        Element.Side side = toLeft == away ? Element.Side.LEFT : Element.Side.RIGHT;
        double degrees = away ? 30 : 120;
        List<Element> turn = List.of(new Element.Turn(side, degrees, bankDeg(), 0, false, 0, 1));
        FigureTrial.Outcome out = trial.fly(turn, at);
        return out.flown() ? Piece.transit(Transit.TURNS_BACK, turn, out.seconds(), at, out.end()) : null;
    }

    /** By turns away from the crowd, once if it is to be flown the other way, else twice. */
    private @Nullable List<Piece> round(FlightState start, Entry to) {
        List<Piece> pieces = new ArrayList<>();
        FlightState at = start;
        double missing = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            if (at.toRight() == to.toRight()) {
                Piece ahead = i == 0 ? ahead(at, to, false) : null;
                if (ahead != null && isGood(ahead.to(), to)) {
                    pieces.add(ahead);
                    return pieces;
                }
                double backM = to.alongM() - to.way() * BACK_RADII * radiusM(at, to);
                boolean further = (backM - at.place().x()) * to.way() < 0;
                double wayM = further ? backM : at.place().x() - to.way() * BACK_RADII * radiusM(at, to);
                Piece back = turnBack(at, Entry.anyhow(wayM, to.awayM(), to.heightM(), to.mps(), !to.toRight()));
                if (back == null) {
                    return null;
                }
                pieces.add(back);
                at = back.to();
            }
            Piece back = turnBack(at, to);
            if (back == null) {
                return null;
            }
            pieces.add(back);
            at = back.to();
            double low = Math.abs(lowM(at, to));
            if (isGood(at, to) || low > 0.8 * missing || isNearlyGood(at, to)) {
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
                && !at.upsideDown()
                && !isAcross(at)
                && past > NEAR_M
                && past < PAST_S * at.speedMps()
                && isGood(at, to);
        return here ? to.at(at.place().x()) : to;
    }

    /** The same beginning so much further on that its speed is had by then, if it lies ahead and that is not far. */
    Entry reached(FlightState at, Entry to) {
        double restM = (to.alongM() - at.place().x()) * to.way();
        boolean isAhead = at.toRight() == to.toRight() && !at.upsideDown() && !isAcross(at) && restM > -NEAR_M;
        boolean isOtherSpeed = at.speedMps() < to.slowestMps() || at.speedMps() > to.fastestMps();
        double shortM = isAhead && isOtherSpeed ? needM(at, to) - restM : 0;
        return shortM > 0 && shortM < FURTHER_S * (at.speedMps() + to.mps()) / 2
                ? to.at(to.alongM() + to.way() * shortM)
                : to;
    }

    private boolean isThere(FlightState at, Entry to) {
        return Math.abs(at.place().x() - to.alongM()) < NEAR_M && isGood(at, to);
    }

    /** Whether height, speed and distance from the crowd do; a glider takes the height there is. */
    private boolean isGood(FlightState at, Entry to) {
        return (to.isAnyhow() || at.place().y() >= to.awayM() - CLOSE_M)
                && at.speedMps() >= to.slowestMps()
                && at.speedMps() <= to.fastestMps()
                && (climbing.sinks() || (lowM(at, to) <= LEVEL_M && lowM(at, to) >= -HIGH_M));
    }

    /** Whether only a few metres of height are missing, for which nobody comes round again: it is aimed higher instead. */
    private boolean isNearlyGood(FlightState at, Entry to) {
        double low = lowM(at, to);
        return low > 0 && low < SHORT_M && isGood(at, to.raised(-low));
    }

    /** How far below the height wanted, metres; nothing where height is of no matter. */
    private static double lowM(FlightState at, Entry to) {
        return to.slowestMps() == 0 && Double.isInfinite(to.fastestMps())
                ? 0
                : to.heightM() - at.place().z();
    }

    /** Straight on; null if the place lies behind. */
    private @Nullable Piece ahead(FlightState at, Entry to, boolean first) {
        double restM = (to.alongM() - at.place().x()) * to.way();
        if (restM < NEAR_M) {
            return null;
        }
        List<Element> run = List.of(run(at, to.alongM(), to));
        FigureTrial.Outcome out = trial.fly(run, at);
        return out.flown() ? Piece.transit(name(at, to, out, first), run, out.seconds(), at, out.end()) : null;
    }

    private Element.Run run(FlightState at, double alongM, Entry to) {
        return new Element.Run(Math.rint(alongM), Math.rint(to.awayM()), feet(at, to), knots(to), 1);
    }

    private double feet(FlightState at, Entry to) {
        double wanted = climbing.sinks() ? Math.max(at.place().z(), to.heightM()) + AS_HIGH_AS_IT_CAN_M : to.heightM();
        return Math.rint(Units.ftFromM(wanted));
    }

    private static double knots(Entry to) {
        return Math.rint(Units.ktFromMps(to.mps()) * 10) / 10;
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
        return to.mps() < SLOWING * at.speedMps() ? Transit.SLOWS_DOWN : Transit.FLIES_ON;
    }

    /** Out, round and back; null if it cannot be flown at all. */
    private @Nullable Piece turnBack(FlightState at, Entry to) {
        int outWay = at.toRight() ? 1 : -1;
        double extraM = 0;
        Piece best = null;
        for (int i = 0; i < MOST_TRIES; i++) {
            List<Element> elements = new ArrayList<>();
            if (extraM >= NEAR_M) {
                elements.add(run(at, at.place().x() + outWay * extraM, to));
            }
            elements.add(new Element.Reposition(
                    Math.rint(to.alongM()), Math.rint(to.awayM()), feet(at, to), knots(to), bankDeg(), 1));
            FigureTrial.Outcome out = trial.fly(elements, at);
            if (!out.flown()) {
                return best;
            }
            best = Piece.transit(Transit.TURNS_BACK, elements, out.seconds(), at, out.end());
            double moreM = moreM(out.end(), to);
            if (moreM == 0) {
                return best;
            }
            extraM += Math.max(moreM, NEAR_M);
        }
        return best;
    }

    /** How much further out the turn must begin, metres; 0 if it leads there. */
    private double moreM(FlightState end, Entry to) {
        double pastM = (end.place().x() - to.alongM()) * to.way();
        double lowM = climbing.sinks() ? 0 : lowM(end, to);
        double more = pastM > NEAR_M ? pastM / 2 : 0;
        if (lowM > LEVEL_M) {
            more = Math.max(more, lowM / (2 * Math.max(trial.climbs(to.mps(), to.heightM()), 0.04)));
        } else if (lowM < -HIGH_M) {
            more = Math.max(more, -1.5 * lowM);
        }
        if (end.speedMps() < to.slowestMps() || end.speedMps() > to.fastestMps()) {
            more = Math.max(more, 2.5 * to.mps());
        }
        return more;
    }

    private double bankDeg() {
        return Math.rint(Math.min(trial.airframe().usual().turnBankDeg(), STEEPEST_BANK_DEG));
    }

    private double radiusM(FlightState at, Entry to) {
        double v = Math.max(at.speedMps(), to.mps());
        double stall = trial.stallMps(at.place().z());
        double lift = Math.max(0.75 * v * v / (stall * stall), 1.05);
        double tan = Math.min(Math.tan(Math.toRadians(bankDeg())), Math.sqrt(lift * lift - 1));
        return v * v / (Units.G_MPS2 * tan);
    }

    /** How long a straight line the change of height and speed takes, metres. */
    double needM(FlightState at, Entry to) {
        double up = to.heightM() - at.place().z();
        if (climbing.sinks()) {
            return Gliding.needM(at.speedMps(), to);
        }
        double climb = up > LEVEL_M ? up / Math.max(trial.climbs(climbing.bestMps(), to.heightM()), 0.05) : 0;
        double dive = up < -HIGH_M ? -up * 3 : 0;
        double slower = at.speedMps() - to.fastestMps();
        double slow = slower > 0 ? slower * (at.speedMps() + to.mps()) / (2 * SLOWING_MPS2) : 0;
        double faster = to.slowestMps() - at.speedMps();
        double gain = faster > 0 ? faster * 8 * at.speedMps() / 10 : 0;
        return Math.min(Math.max(Math.max(climb, dive), Math.max(slow, gain)), 6_000);
    }

    /**
     * What it will take, for choosing among ways.
     *
     * @param seconds about how long
     * @param reachM about how far it comes from the middle of the display line, metres
     */
    record Estimate(double seconds, double reachM) {}

    /** About what it will take to come to a beginning. */
    Estimate estimate(FlightState at, Entry to) {
        double v = (at.speedMps() + to.mps()) / 2;
        double radius = radiusM(at, to);
        double turnS = (Math.toRadians(250) + 2.86) * radius / v;
        double restM = (to.alongM() - at.place().x()) * to.way();
        double needM = needM(at, to);
        double outwards = at.place().x() * (at.toRight() ? 1 : -1);
        if (at.toRight() == to.toRight()) {
            double behindM = (BACK_RADII + 1) * radius - to.alongM() * to.way();
            return restM >= needM && restM >= -NEAR_M
                    ? new Estimate(Math.max(restM, 0) / v, 0)
                    : new Estimate(2 * turnS + (Math.abs(restM) + needM) / v, Math.max(outwards + radius, behindM));
        }
        // Going out by some metres and back again leaves the run in so much longer at both ends.
        double runInM = restM - 3.5 * radius;
        double outM = Math.max(needM - Math.max(runInM, 0), -Math.min(runInM, 0) * 2);
        return new Estimate(turnS + (Math.max(runInM, 0) + outM) / v, outwards + outM / 2 + radius);
    }
}
