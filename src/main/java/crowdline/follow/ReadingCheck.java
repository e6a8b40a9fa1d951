package crowdline.follow;

import crowdline.measure.Units;
import crowdline.telemetry.Reading;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/**
 * Takes readings one after another, leaves out those the receiver cannot have measured, and says what the good ones of
 * the last second say together.
 */
final class ReadingCheck {
    /** Longest time between two readings over which a speed still means something, seconds. */
    private static final double LONGEST_S = 3.2;

    /** Positions nearer than this are the same position sent again, metres. */
    private static final double SAME_M = 0.005;

    private static final double STILL_MPS = 4;
    /** A jump must be more than noise, metres. */
    private static final double NOISE_M = 25;
    /** Energy height that noise in the speeds and a gust can feign, metres. */
    private static final double ENERGY_NOISE_M = 45;

    private static final double ENERGY_OVER_S = 3;
    /** So many readings that continue a line to the millimetre were reckoned, not measured. */
    private static final int RECKONED = 3;
    /** So many readings in a row that agree with each other make up for disagreeing with the past. */
    private static final int CONVINCING = 3;

    private final double fastestMps;
    private final double mostGainMps;
    private final Deque<Reading> good = new ArrayDeque<>();
    private final Deque<double[]> energies = new ArrayDeque<>();
    private @Nullable Reading last;
    private @Nullable Reading beforeLast;
    private int onLine;
    private int disagreeing;
    private double lastGoodS = Double.NEGATIVE_INFINITY;
    private double lastAnyS = Double.NEGATIVE_INFINITY;

    /**
     * @param fastestMps no aircraft of this act goes faster over the ground
     * @param mostGainMps no aircraft of this act gains energy height faster
     */
    ReadingCheck(double fastestMps, double mostGainMps) {
        this.fastestMps = fastestMps;
        this.mostGainMps = mostGainMps;
    }

    /** Time of the last reading that counted; negative infinity before the first. */
    double lastGoodS() {
        return lastGoodS;
    }

    /** Time of the last reading of any kind. */
    double lastAnyS() {
        return lastAnyS;
    }

    /** What a reading says, or null if it is not to be believed. */
    @Nullable
    Seen take(Reading r) {
        Reading previous = last;
        if (previous != null && r.tS() <= previous.tS()) {
            return null;
        }
        lastAnyS = r.tS();
        boolean reckoned = continuesLine(r);
        beforeLast = previous;
        last = r;
        if (previous != null && distance(previous, r) < SAME_M && moving(r)) {
            return null;
        }
        if (reckoned) {
            return null;
        }
        Reading before = good.peekLast();
        if (before != null && r.tS() - before.tS() <= LONGEST_S * 3 && jumps(before, r)) {
            boolean agrees = previous != null && !jumps(previous, r);
            disagreeing = agrees ? disagreeing + 1 : 0;
            if (disagreeing < CONVINCING) {
                return null;
            }
            good.clear();
            energies.clear();
        }
        disagreeing = 0;
        return accepted(r);
    }

    private boolean moving(Reading r) {
        Double along = r.alongMps();
        Double away = r.awayMps();
        if (along != null && away != null) {
            return Math.hypot(along, away) > STILL_MPS;
        }
        return r.heightM() > 30;
    }

    private boolean continuesLine(Reading r) {
        Reading b = last;
        Reading a = beforeLast;
        if (a == null || b == null) {
            return false;
        }
        double share = (r.tS() - a.tS()) / (b.tS() - a.tS());
        double dx = a.alongM() + share * (b.alongM() - a.alongM()) - r.alongM();
        double dy = a.awayM() + share * (b.awayM() - a.awayM()) - r.awayM();
        double dz = a.heightM() + share * (b.heightM() - a.heightM()) - r.heightM();
        boolean exactly =
                Math.sqrt(dx * dx + dy * dy + dz * dz) < SAME_M * Math.max(1, share) && distance(b, r) > SAME_M;
        onLine = exactly ? onLine + 1 : 0;
        return onLine >= RECKONED;
    }

    private boolean jumps(Reading from, Reading to) {
        return distance(from, to) > NOISE_M + fastestMps * (to.tS() - from.tS());
    }

    private static double distance(Reading a, Reading b) {
        double dx = a.alongM() - b.alongM();
        double dy = a.awayM() - b.awayM();
        double dz = a.heightM() - b.heightM();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private @Nullable Seen accepted(Reading r) {
        double newS = r.tS() - lastGoodS;
        good.addLast(r);
        while (good.size() > 2 && r.tS() - good.peekFirst().tS() > Bins.CHORD_S + 0.05) {
            good.removeFirst();
        }
        if (good.size() == 2 && r.tS() - good.peekFirst().tS() > LONGEST_S) {
            good.removeFirst();
        }
        Seen seen = fitted(r, newS);
        if (gainsEnergy(r.tS(), seen)) {
            good.removeLast();
            return null;
        }
        lastGoodS = r.tS();
        return seen;
    }

    /** Energy without thrust is a fault; losing it is not. Against most of the last, for one of these may be a fault too. */
    private boolean gainsEnergy(double tS, Seen seen) {
        while (!energies.isEmpty() && tS - energies.peekFirst()[0] > ENERGY_OVER_S) {
            energies.removeFirst();
        }
        if (!seen.hasSpeeds() || !seen.hasClimb()) {
            return false;
        }
        double v2 = seen.groundMps() * seen.groundMps() + seen.climbMps() * seen.climbMps();
        double energy = seen.heightM() + v2 / (2 * Units.G_MPS2);
        int above = 0;
        for (double[] then : energies) {
            above += energy - then[1] > ENERGY_NOISE_M + mostGainMps * (tS - then[0]) ? 1 : 0;
        }
        if (2 * above > energies.size()) {
            return true;
        }
        energies.addLast(new double[] {tS, energy});
        return false;
    }

    private Seen fitted(Reading r, double newS) {
        int n = good.size();
        double over = r.tS() - good.getFirst().tS();
        Double along = r.alongMps();
        Double away = r.awayMps();
        boolean told = along != null && away != null;
        double climb = Double.NaN;
        double vx = along == null ? Double.NaN : along;
        double vy = away == null ? Double.NaN : away;
        if (n >= 2 && over > 0.3) {
            double t = 0;
            for (Reading g : good) {
                t += g.tS() / n;
            }
            double tt = 0;
            double tx = 0;
            double ty = 0;
            double tz = 0;
            for (Iterator<Reading> it = good.iterator(); it.hasNext(); ) {
                Reading g = it.next();
                double d = g.tS() - t;
                tt += d * d;
                tx += d * g.alongM();
                ty += d * g.awayM();
                tz += d * g.heightM();
            }
            climb = tz / tt;
            if (!told) {
                vx = tx / tt;
                vy = ty / tt;
            }
        }
        return new Seen(r.alongM(), r.awayM(), r.heightM(), vx, vy, climb, over, !told, Math.min(newS, 2));
    }
}
