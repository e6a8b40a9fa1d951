package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Out, round away from the crowd and back along the line: by an even turn, or pulled up into one, which is tighter as it
 * slows down, and comes back higher with a speed that can be dived for. What is there sooner is flown.
 */
final class TurningBack {
    private static final int MOST_TRIES = 6;
    /** It heads back to the line by so much when it comes out of a climbing turn, degrees; as out of the even one. */
    private static final double CUT_IN_DEG = 35;
    /** Height for speed, with the power there is; tuned. */
    private static final double ZOOM_GAIN = 1.2;
    /** Steeper it climbs nowhere in a turn, degrees; by judgement. */
    private static final double STEEPEST_DEG = 30;
    /** Less steep it is no climbing turn, degrees. */
    private static final double LEAST_DEG = 6;
    /** So much of a ceiling is left, metres. */
    private static final double BELOW_CEILING_M = 10;
    /** Nearer to its line than this it is on it when it has come in from a climbing turn, metres. */
    private static final double ON_LINE_M = 40;
    /** Higher than this it has not come down from one, metres. */
    private static final double DOWN_M = 12;

    private final FigureTrial trial;
    private final Climbing climbing;
    private final Straight straight;
    private final Runs runs;
    private final Fit fit;
    private final double mostM;

    /** @param mostM nothing goes higher, metres above the datum; infinite if nobody gave a ceiling */
    TurningBack(FigureTrial trial, Climbing climbing, Straight straight, Runs runs, double mostM) {
        this.trial = trial;
        this.climbing = climbing;
        this.straight = straight;
        this.runs = runs;
        this.mostM = mostM;
        fit = new Fit(climbing.sinks());
    }

    /** Round and back to a beginning; null if it cannot be flown at all. */
    @Nullable
    Piece back(FlightState at, Entry wanted) {
        Entry to = wanted.at(Runs.seen(wanted.alongM()));
        double bankDeg = straight.bankDeg(at, to);
        Piece even = flown(at, to, false, List.of(runs.round(at, bankDeg, to)));
        // Without an engine the height that drag takes in the climb is not won again.
        Element.Turn up = climbing.sinks() ? null : up(at, bankDeg);
        if (even == null || up == null) {
            return even;
        }
        Piece climb = flown(at, to, true, List.of(up, runs.to(at, to.alongM(), to)));
        return climb != null && climb.seconds() < even.seconds() && isAsGood(climb.to(), even.to(), to) ? climb : even;
    }

    private boolean isAsGood(FlightState climb, FlightState even, Entry to) {
        double low = Fit.lowM(climb, to);
        boolean fits =
                fit.isGood(climb, to) || (!fit.isGood(even, to) && Math.abs(low) <= Math.abs(Fit.lowM(even, to)));
        return fits && low > -DOWN_M && Math.abs(climb.place().y() - to.awayM()) < ON_LINE_M;
    }

    /**
     * The turn that takes up what speed there is to spare, no slower at its top than the wing carries its bank with
     * something in hand; null where it would hardly climb.
     */
    private Element.@Nullable Turn up(FlightState at, double evenDeg) {
        double mps = at.speedMps();
        double stalls = Straight.topStalls(evenDeg);
        double carriedDeg = Math.toDegrees(Math.acos(1 / (Straight.SHARE_OF_WING * stalls * stalls)));
        double bankDeg = Math.floor(Math.min(evenDeg, carriedDeg));
        double top = stalls * trial.stallMps(at.place().z());
        double spareM = ZOOM_GAIN * (mps * mps - top * top) / (2 * Units.G_MPS2);
        double upM = Math.min(spareM, mostM - BELOW_CEILING_M - at.place().z());
        double degrees = Math.rint(180 + CUT_IN_DEG - turnedOffDeg(at));
        double radiusM = (mps * mps + top * top) / 2 / (Units.G_MPS2 * Math.tan(Math.toRadians(bankDeg)));
        // Its slope grows and goes again as half a wave of a sine does, whose mean is two of its height in pi.
        double slope = Math.PI / 2 * upM / (radiusM * Math.toRadians(degrees));
        double peakDeg = Math.rint(Math.min(Math.toDegrees(slope), STEEPEST_DEG));
        Element.Side away = at.toRight() ? Element.Side.LEFT : Element.Side.RIGHT;
        return peakDeg < LEAST_DEG ? null : new Element.Turn(away, degrees, bankDeg, peakDeg, true, 0, false, 1);
    }

    /** How far it is turned off the line already, away from the crowd, degrees; below 0 towards it. */
    private static double turnedOffDeg(FlightState at) {
        return Math.toDegrees(
                Math.atan2(at.direction().y(), Math.abs(at.direction().x())));
    }

    /** @param round what is flown where it turns, which is further out where it does not lead there otherwise */
    private @Nullable Piece flown(FlightState at, Entry to, boolean up, List<Element> round) {
        int outWay = at.toRight() ? 1 : -1;
        double extraM = 0;
        Piece best = null;
        for (int i = 0; i < MOST_TRIES; i++) {
            List<Element> elements = new ArrayList<>();
            double outM = Runs.seen(at.place().x() + outWay * extraM);
            if ((outM - at.place().x()) * outWay >= Joining.NEAR_M) {
                elements.add(runs.to(at, outM, up ? asItIs(at) : to));
            }
            elements.addAll(round);
            FigureTrial.Outcome out = trial.fly(elements, at);
            if (!out.flown()) {
                return best;
            }
            best = Piece.transit(up ? Transit.TURNS_UP : Transit.TURNS_BACK, elements, at, out);
            double moreM = up ? moreAfterClimbM(out.end(), to) : moreM(out.end(), to, Fit.HIGH_M);
            if (moreM == 0) {
                return best;
            }
            if (outM != at.place().x() + outWay * extraM) {
                return best;
            }
            extraM += Math.max(moreM, Joining.NEAR_M);
        }
        return best;
    }

    /** On at the height and the speed it has. */
    private static Entry asItIs(FlightState at) {
        double awayM = Math.max(at.place().y(), 0);
        return Entry.anyhow(at.place().x(), awayM, at.place().z(), at.speedMps(), at.toRight());
    }

    /** The same after a climbing turn, which does not find its place by itself. */
    private double moreAfterClimbM(FlightState end, Entry to) {
        double pastM = (end.place().x() - to.alongM()) * to.way();
        double offM = end.place().y() - to.awayM();
        double inM = Math.abs(offM) > ON_LINE_M ? straight.asideM(end, offM) / 2 : 0;
        return Math.max((pastM > Joining.NEAR_M ? pastM : 0) + inM, moreM(end, to, DOWN_M));
    }

    /**
     * How much further out the turn must begin, metres; 0 if it leads there.
     *
     * @param highM higher than wanted by this much is of no matter
     */
    private double moreM(FlightState end, Entry to, double highM) {
        double pastM = (end.place().x() - to.alongM()) * to.way();
        double lowM = climbing.sinks() ? 0 : Fit.lowM(end, to);
        double more = pastM > Joining.NEAR_M ? pastM / 2 : 0;
        if (lowM > Fit.LEVEL_M) {
            double climbsM = lowM / Math.max(trial.climbs(to.mps(), to.heightM()), 0.04);
            more = Math.max(more, (climbsM + straight.settlesM(end, lowM / Fit.LEVEL_M)) / 2);
        } else if (lowM < -highM) {
            more = Math.max(more, (-1.5 * lowM + straight.settlesM(end, -lowM / Fit.HIGH_M)) / 2);
        }
        if (end.speedMps() < to.slowestMps() || end.speedMps() > to.fastestMps()) {
            more = Math.max(more, Math.max(2.5 * to.mps(), straight.heightM(end, to) / 2));
        }
        return more;
    }
}
