package crowdline.layout;

import crowdline.flight.body.FlightState;
import java.util.List;
import java.util.Objects;

/** About what it takes to come from one place to another, for choosing among ways. */
final class Estimating {
    /** A line back to the display line for each metre of distance from it, and how far along it leads. */
    private static final double CUT_IN = 1.74;

    private static final double CUT_ALONG = 1.43;
    /** Round by more than half a circle and a line back, in radii. */
    static final double TURN_RADII = 4.36 + CUT_IN * 1.64;
    /** How much longer the way in to the line is than what it leads along it. */
    private static final double IN = 1.1;

    /** What coming round twice takes beyond its turns, or is worth not to be watched, seconds; tuned. */
    private static final double TWICE_S = 60;

    /** What is longer than this between two figures is looked at as nothing flown; each second beyond counts three times. Tuned. */
    private static final double LONG_S = 45;

    /** So little less than it needs is enough, metres: a place that is just far enough ahead is so to the last digit. */
    private static final double ROUGH_M = 1;

    /** From so far above it dives for its speed at once, metres. */
    private static final double DIVES_M = 400;

    private final Straight straight;

    Estimating(Straight straight) {
        this.straight = straight;
    }

    /**
     * What it will take, for choosing among ways.
     *
     * @param seconds about how long
     * @param reachM about how far it comes from the middle of the display line, metres
     */
    record Estimate(double seconds, double reachM) {}

    /** What so many seconds between two figures are worth, seconds. */
    static double worthS(double seconds) {
        return seconds + 2 * Math.max(seconds - LONG_S, 0);
    }

    /** What a way that was flown is worth, seconds: more than it takes if it takes long or comes round twice. */
    static double worthS(List<Piece> way) {
        double seconds = way.stream().mapToDouble(Piece::seconds).sum();
        return worthS(seconds) + (isTwice(way) ? TWICE_S : 0);
    }

    /** Whether a way comes round twice. */
    static boolean isTwice(List<Piece> way) {
        return way.stream()
                        .filter(piece -> piece.turns() && !Fit.isAcross(piece.from()))
                        .count()
                > 1;
    }

    /** About what it will take to come to a beginning. */
    Estimate estimate(FlightState at, Entry to) {
        if (Fit.isAcross(at) || at.toRight() != to.toRight()) {
            return turning(at, dive(at, to));
        }
        Way way = way(at, to);
        double needM = Math.min(way.needM(), straight.needM(at, to.slower(Fit.SLOW)));
        if (way.restM() >= needM - ROUGH_M && way.restM() >= -Joining.NEAR_M) {
            return new Estimate(Math.max(way.restM(), 0) / way.mps(), 0);
        }
        double behindM = (Joining.BACK_RADII + 1) * way.radiusM() - to.alongM() * to.way();
        double twiceM = 2 * way.turnM();
        double metres = twiceM + Math.abs(way.restM()) + way.outM(twiceM, 0) + CUT_IN * way.asideM();
        return new Estimate(TWICE_S + metres / way.mps(), Math.max(outwards(at) + way.radiusM(), behindM));
    }

    /** The dive that it comes round for: one that does not lead out of an area that was given, or least far. */
    Straight.Dive dive(FlightState at, Entry to) {
        Straight.Dive best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Straight.Dive dive : straight.dives(to)) {
            double reachM = turning(at, dive).reachM();
            if (best == null || reachM < least) {
                best = dive;
                least = reachM;
            }
            if (least <= straight.reachM()) {
                break;
            }
        }
        return Objects.requireNonNull(best, "there is always one");
    }

    private Estimate turning(FlightState at, Straight.Dive dive) {
        Estimate turn = turning(at, dive.from());
        return new Estimate(turn.seconds() + dive.seconds(), turn.reachM());
    }

    private Estimate turning(FlightState at, Entry to) {
        Way way = way(at, to);
        if (Fit.isAcross(at)) {
            return across(at, way);
        }
        Estimate round = round(at, way);
        Estimate in = inAndRound(at, way);
        return in.seconds() < round.seconds() ? in : round;
    }

    /** Whether it is back sooner if it comes in to the display line before it turns round. */
    boolean comesInFirst(FlightState at, Entry to) {
        Way way = way(at, to);
        return inAndRound(at, way).seconds() < round(at, way).seconds();
    }

    /**
     * From one place to another.
     *
     * @param mps about how fast
     * @param radiusM of its turns, as if they were flown at that speed
     * @param restM how far along the way of the beginning it lies ahead, metres
     * @param needM how long a straight line the change of height and speed takes
     * @param inM how far it flies along the line until it has come in to it
     * @param turningM what of the straight line is not needed for each metre of a turn
     */
    private record Way(
            double mps, double radiusM, double restM, double asideM, double needM, double inM, double turningM) {
        /** Round by more than half a circle and a line back. */
        double turnM() {
            return TURN_RADII * radiusM;
        }

        /** How much longer its way is so that it has room for what it needs, and does not come back past the beginning, metres. */
        double outM(double roundM, double aheadM) {
            return Math.max(shortM(roundM, aheadM), -Math.min(aheadM, 0));
        }

        /** How much further out that leads, metres: what it needs is had on the way out and on the way back. */
        double furtherM(double roundM, double aheadM) {
            return Math.max(shortM(roundM, aheadM) / 2, -Math.min(aheadM, 0));
        }

        private double shortM(double roundM, double aheadM) {
            return needM - turningM * roundM - Math.max(aheadM, 0);
        }
    }

    private Way way(FlightState at, Entry to) {
        // From far above its speed is soon had, and from far below one that is less.
        double aboveM = at.place().z() - to.heightM();
        double far = Math.min(Math.max(at.speedMps() > to.mps() ? Math.abs(aboveM) : aboveM, 0) / DIVES_M, 1);
        double then = (1 + far) / 2;
        double asideM = Math.max(at.place().y() - to.awayM(), 0);
        return new Way(
                (1 - then) * at.speedMps() + then * to.mps(),
                straight.radiusM(at, to) * straight.climbing(at, to),
                (to.alongM() - at.place().x()) * to.way(),
                asideM,
                straight.needM(at, to),
                Fit.isOff(at, to) ? straight.asideM(at, asideM) : 0,
                straight.turning(at, to));
    }

    /** A turn through 125 degrees and a line back to the display line. */
    private static Estimate across(FlightState at, Way way) {
        double depthM = way.asideM() + 0.64 * way.radiusM();
        double aheadM = way.restM() - 2.15 * way.radiusM() - CUT_ALONG * depthM;
        double turnM = 2.8 * way.radiusM() + CUT_IN * depthM;
        return new Estimate(
                (turnM + Math.max(aheadM, 0) + way.outM(turnM, aheadM)) / way.mps(),
                Math.abs(at.place().x()) + way.furtherM(turnM, aheadM) + way.radiusM());
    }

    private static Estimate round(FlightState at, Way way) {
        double aheadM = way.restM() - 3.5 * way.radiusM() - CUT_ALONG * way.asideM();
        return round(at, way, CUT_IN * way.asideM(), aheadM);
    }

    private static Estimate inAndRound(FlightState at, Way way) {
        double aheadM = way.restM() - 3.5 * way.radiusM() + way.inM();
        return way.inM() == 0 ? round(at, way) : round(at, way, IN * way.inM(), aheadM);
    }

    private static Estimate round(FlightState at, Way way, double backM, double aheadM) {
        double roundM = way.turnM() + backM;
        return new Estimate(
                (roundM + Math.max(aheadM, 0) + way.outM(roundM, aheadM)) / way.mps(),
                outwards(at) + way.furtherM(roundM, aheadM) + way.radiusM());
    }

    private static double outwards(FlightState at) {
        return at.place().x() * (at.toRight() ? 1 : -1);
    }
}
