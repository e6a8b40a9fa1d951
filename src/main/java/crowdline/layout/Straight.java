package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
import java.util.ArrayList;
import java.util.List;

/** How long a straight line it takes to have what a beginning wants, and how wide a turn is. */
final class Straight {
    /** The least slope that height is won with, as a sine: more slowly nobody waits for it. */
    static final double LEAST_CLIMB = 0.03;
    /** Metres flown for a metre of height, where there is power for any slope. */
    private static final double STEEPEST = 4;
    /** It comes nearer to a height by a factor of e in so many seconds, as runs are flown, and bends for it and back. */
    private static final double HEIGHT_S = 5;

    private static final double BENDS_S = 2.5;
    /** The same where there is speed to spare, with which it levels off sooner; tuned. */
    private static final double ZOOM_HEIGHT_S = 3.5;
    /** From how far below it begins to level off, in seconds of the speed it has then. */
    private static final double LEVELS_OFF_S = 3.5;
    /** Metres flown for a metre further from the crowd, and the seconds it takes to bank there and back. */
    private static final double ASIDE = 1.7;

    private static final double ASIDE_S = 5;
    /** What it takes to turn back along the line where it is some degrees off, seconds. */
    private static final double SKEW_S = 2.5;

    /** Of what a straight line wins, what a turn of the same length does; tuned. */
    private static final double BANKED = 0.5;

    /** Of the wing's lift, what a turn between figures uses at most. */
    static final double SHARE_OF_WING = 0.75;
    /** In stalling speeds, the least at the top of a climbing turn; tuned. */
    private static final double TOP_STALLS = 1.5;

    private static final double STEEPEST_BANK_DEG = 80;
    /** More than its usual bank at the end of an area. */
    private static final double STEEPER_DEG = 15;

    /** It is flown for the speed wanted, so that a little less than the most that does is soon had, as a share of that. */
    private static final double SLOWED = 0.98;
    /** It slows down by this at least, m/s²: with what brakes it has. */
    private static final double LEAST_SLOWING_MPS2 = 0.5;

    /** Without an engine it turns round at so many stalling speeds, or so much of the speed it dives for, at least; tuned. */
    private static final double TURNS_STALLS = 1.6;

    private static final double[] TURNS_AT = {0.6, 0.75, 0.9};

    private final FigureTrial trial;
    private final Climbing climbing;
    private final double reachM;

    /** @param reachM how far left and right of the datum it may come, metres; infinite if nobody gave it */
    Straight(FigureTrial trial, Climbing climbing, double reachM) {
        this.trial = trial;
        this.climbing = climbing;
        this.reachM = reachM;
    }

    /** How long a straight line the change of height and speed takes, metres. */
    double needM(FlightState at, Entry to) {
        double asideM = Fit.isOff(at, to) ? asideM(at, at.place().y() - to.awayM()) : 0;
        double skewM = Fit.isSkew(at) && !to.isAnyhow() ? at.speedMps() * SKEW_S : 0;
        return Math.max(Math.max(asideM, skewM), climbing.sinks() ? Gliding.needM(at.speedMps(), to) : heightM(at, to));
    }

    /** How far left and right of the datum it may come, metres; infinite if nobody gave it. */
    double reachM() {
        return reachM;
    }

    /**
     * How long a straight line it takes to come in, metres.
     *
     * @param inM nearer to the crowd by this, metres; below 0 it goes out
     */
    double asideM(FlightState at, double inM) {
        double metres = inM > 0 ? ASIDE * inM : at.speedMps() * HEIGHT_S * Math.log(Math.max(-inM / Fit.CLOSE_M, 1));
        return metres + at.speedMps() * ASIDE_S;
    }

    /** How much of that is had for each metre of a turn: banked steeply, it climbs and gains speed more slowly. */
    double turning(FlightState at, Entry to) {
        boolean wins =
                to.slowestMps() > at.speedMps() || to.heightM() - at.place().z() > Fit.LEVEL_M;
        return wins && !climbing.sinks() ? BANKED : 1;
    }

    /** How long a straight line the change of height and speed takes with an engine, metres. */
    double heightM(FlightState at, Entry to) {
        double up = to.heightM() - at.place().z();
        double v = at.speedMps();
        double low = up > Fit.LEVEL_M ? up : 0;
        // Speed that is not needed is height.
        double then = Math.max(to.slowestMps(), Math.min(v, low > 0 ? to.mps() : to.fastestMps()));
        // Height and speed together are won by the power to spare, whichever of them is short.
        double energyM = low + (then * then - v * v) / (2 * Units.G_MPS2);
        boolean isShort = low > 0 || then > v;
        double zoomed = Math.min(Math.max(v * v - then * then, 0) / (2 * Units.G_MPS2), low);
        double won = then > Math.max(v, Leading.GOOD_TIME * climbing.mostLevelMps())
                ? divedM(at, to, then)
                : isShort
                        ? Math.max(
                                energyM / Math.max(trial.climbs((v + then) / 2, to.heightM()), LEAST_CLIMB),
                                (low - zoomed) * STEEPEST)
                        : 0;
        double dive = up < -Fit.HIGH_M ? -up * 3 : 0;
        double settled = zoomed > Fit.LEVEL_M
                ? zoomM(v, then, zoomed)
                : up > Fit.LEVEL_M
                        ? settledM(v, up / Fit.LEVEL_M)
                        : up < -Fit.HIGH_M ? settledM(v, -up / Fit.HIGH_M) : 0;
        double comes = afterClimbing(v, low, to);
        double slow = comes > to.fastestMps() ? slowM(comes, to) : 0;
        return Math.min(Math.max(Math.max(won, settled), Math.max(dive, slow)), 6_000);
    }

    /** How far it flies until it has climbed and dived for a speed that the engine alone does not give, metres. */
    private double divedM(FlightState at, Entry to, double then) {
        double v = at.speedMps();
        double comes = Math.min(v, Leading.GOOD_TIME * climbing.mostLevelMps());
        double high = Math.max(Leading.DIVE_LOSS * (then * then - comes * comes) / (2 * Units.G_MPS2), 0);
        double up = Math.max(to.heightM() + high - at.place().z(), 0);
        double best = climbing.rateMps() / climbing.bestMps();
        double climbs =
                up > Fit.LEVEL_M ? Math.max(up / Math.max(best, LEAST_CLIMB), settledM(v, up / Fit.LEVEL_M)) : 0;
        return climbs + high / Leading.DIVE;
    }

    /** How far it flies until it has pulled up by so much for a speed there was to spare, and is level again, metres. */
    private static double zoomM(double v, double then, double upM) {
        double levelsM = Math.min(upM, LEVELS_OFF_S * then);
        double levels = then * ZOOM_HEIGHT_S * Math.log(Math.max(levelsM / Fit.LEVEL_M, 1));
        return upM - levelsM + v * BENDS_S + levels;
    }

    /** How far it flies on until it has come so many times nearer to a height it is flown for already, metres. */
    double settlesM(FlightState at, double times) {
        return at.speedMps() * HEIGHT_S * Math.log(times);
    }

    /** How far it flies until it has come so many times nearer to a height. */
    private static double settledM(double mps, double times) {
        return mps * (HEIGHT_S * Math.log(times) + BENDS_S);
    }

    /** What is left of a speed that is too much after a climb, m/s; a climb slows down sooner than the air does. */
    private static double afterClimbing(double mps, double upM, Entry to) {
        return Math.sqrt(Math.max(
                mps * mps - 2 * Units.G_MPS2 * upM / Leading.ZOOM_LOSS, Math.min(mps * mps, to.mps() * to.mps())));
    }

    /** How long a straight line it takes to slow down to a beginning, metres. */
    double slowM(double mps, Entry to) {
        double least = Math.min(mps, Math.max(to.mps(), SLOWED * to.fastestMps()));
        double slowing = Math.max(trial.slowsMps2((mps + least) / 2, to.heightM()), LEAST_SLOWING_MPS2);
        return (mps * mps - least * least) / (2 * slowing);
    }

    /** About how fast it turns round, m/s: a glider soon as slowly as it is told. */
    private double turnsMps(FlightState at, Entry to) {
        return climbing.sinks() ? to.mps() : Math.max(at.speedMps(), to.mps());
    }

    /** How steeply it banks to turn back: as usual, and more steeply where that leads out of the area. */
    double bankDeg(FlightState at, Entry to) {
        double mps = turnsMps(at, to);
        double usual = Math.min(trial.usual().turnBankDeg(mps), STEEPEST_BANK_DEG);
        boolean isOut = Math.abs(at.place().x()) + radiusM(at, to, usual) > reachM;
        return Math.rint(isOut ? Math.min(usual + STEEPER_DEG, STEEPEST_BANK_DEG) : usual);
    }

    /**
     * The last stretch before a beginning that a glider comes round for slowly.
     *
     * @param from where it begins; the beginning itself if there is none
     */
    record Dive(Entry from, double seconds) {}

    /**
     * Without an engine it comes round slowly, higher by the speed it does not need there, and dives for its speed: from
     * the slowest way to do so to none.
     */
    List<Dive> dives(Entry to) {
        List<Dive> dives = new ArrayList<>();
        for (double share : TURNS_AT) {
            double slow = Math.max(TURNS_STALLS * trial.stallMps(to.heightM()), share * to.mps());
            if (climbing.sinks() && slow < to.slowestMps()) {
                double metres = Gliding.needM(slow, to);
                double alongM = to.alongM() - to.way() * metres;
                dives.add(new Dive(
                        Entry.anyhow(alongM, to.awayM(), to.heightM(), slow, to.toRight()),
                        2 * metres / (slow + to.mps())));
            }
        }
        dives.add(new Dive(to, 0));
        return dives;
    }

    /**
     * What a turn back takes that climbs and slows down, as a share of an even one: it is tighter, and flown more slowly. 1
     * without an engine, which turns evenly.
     */
    double climbing(FlightState at, Entry to) {
        double top = topStalls(bankDeg(at, to)) * trial.stallMps(at.place().z()) / at.speedMps();
        return climbing.sinks() || top > 1 ? 1 : (1 + top * top) / (1 + top);
    }

    /** How slow it is at the top of a climbing turn at least, in stalling speeds: its wing carries the bank with something in hand. */
    static double topStalls(double bankDeg) {
        return Math.max(TOP_STALLS, Math.sqrt(1 / Math.cos(Math.toRadians(bankDeg)) / SHARE_OF_WING));
    }

    double radiusM(FlightState at, Entry to) {
        return radiusM(at, to, bankDeg(at, to));
    }

    private double radiusM(FlightState at, Entry to, double bankDeg) {
        return radiusM(turnsMps(at, to), at.place().z(), bankDeg);
    }

    /** How wide a turn is as it usually banks for it, as far as its wing carries that, metres. */
    double radiusM(double mps, double heightM) {
        return radiusM(mps, heightM, trial.usual().turnBankDeg(mps));
    }

    private double radiusM(double v, double heightM, double bankDeg) {
        double stall = trial.stallMps(heightM);
        double lift = Math.max(SHARE_OF_WING * v * v / (stall * stall), 1.05);
        double tan = Math.min(Math.tan(Math.toRadians(bankDeg)), Math.sqrt(lift * lift - 1));
        return v * v / (Units.G_MPS2 * tan);
    }
}
