package crowdline.follow;

import crowdline.measure.Units;
import crowdline.telemetry.Reading;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import org.jspecify.annotations.Nullable;

/**
 * Takes readings one after another, refuses those that cannot have been measured, and sums up the good ones of the last
 * second.
 */
final class ReadingCheck {
    /** Seconds: over a longer time between two readings a speed means nothing. */
    private static final double LONGEST_S = 3.2;

    /** Seconds: over a shorter time neither does one. */
    private static final double SHORTEST_S = 0.3;

    /** Metres: positions nearer than this are one position sent twice. Readings come in centimetres at best. */
    private static final double SAME_M = 0.005;

    /** Metres a second: below it an aircraft may stand still, and sending one position twice is no fault. */
    private static final double STILL_MPS = 4;
    /** Metres: a jump is more than this beyond what the fastest flight explains; noise is less. */
    private static final double NOISE_M = 25;
    /** Readings that go on in one line to the millimetre: from then on they were calculated, not measured. */
    private static final int RECKONED = 3;
    /** Readings in a row that agree with each other outweigh that they disagree with those before. */
    private static final int CONVINCING = 3;

    /** How hard a path may bend over the ground, or gain speed, and still be steady, in g. Judgement. */
    private static final double STEADY_G = 0.25;
    /** The same up and down, where noise in the height feigns more. */
    private static final double STEADY_CLIMB_G = 0.6;

    private final double fastestMps;
    private final Deque<Reading> good = new ArrayDeque<>();
    private final Deque<Climb> climbs = new ArrayDeque<>();
    private final RecentEffort recent = new RecentEffort();
    private @Nullable Reading last;
    private @Nullable Reading beforeLast;
    private int onLine;
    private int disagreeing;
    private double lastGoodS = Double.NEGATIVE_INFINITY;
    private double lastAnyS = Double.NEGATIVE_INFINITY;

    private record Climb(double tS, double mps) {}

    /** @param fastestMps no aircraft of this act goes faster over the ground */
    ReadingCheck(double fastestMps) {
        this.fastestMps = fastestMps;
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

    private Seen accepted(Reading r) {
        double newS = r.tS() - lastGoodS;
        good.addLast(r);
        while (good.size() > 2 && r.tS() - good.peekFirst().tS() > Bins.CHORD_S + 0.05) {
            good.removeFirst();
        }
        if (good.size() == 2 && r.tS() - good.peekFirst().tS() > LONGEST_S) {
            good.removeFirst();
        }
        lastGoodS = r.tS();
        return fitted(r, newS);
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
        if (n >= 2 && over > SHORTEST_S) {
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
        return new Seen(
                r.alongM(),
                r.awayM(),
                r.heightM(),
                vx,
                vy,
                climb,
                over,
                Math.min(newS, 2),
                sidewaysG(r),
                steady(r, climb),
                Double.isNaN(vx + vy + climb) ? null : recent.add(r.tS(), vx, vy, climb, r.awayM()));
    }

    /** From how little the speed over the ground, and the climb, have changed over the last second. */
    private double steady(Reading now, double climbMps) {
        if (Double.isNaN(climbMps)) {
            climbs.clear();
            return 0;
        }
        climbs.addLast(new Climb(now.tS(), climbMps));
        while (climbs.size() > 2 && now.tS() - climbs.getFirst().tS() > Bins.CHORD_S + 0.05) {
            climbs.removeFirst();
        }
        Reading from = good.getFirst();
        Double x0 = from.alongMps();
        Double y0 = from.awayMps();
        Double x1 = now.alongMps();
        Double y1 = now.awayMps();
        double overS = now.tS() - from.tS();
        double climbOverS = now.tS() - climbs.getFirst().tS();
        boolean longEnough = overS >= SHORTEST_S && climbOverS >= SHORTEST_S && climbOverS <= LONGEST_S;
        if (x0 == null || y0 == null || x1 == null || y1 == null || !longEnough) {
            return 0;
        }
        double bentG = Math.hypot(x1 - x0, y1 - y0) / overS / Units.G_MPS2;
        double climbsG = (climbMps - climbs.getFirst().mps()) / climbOverS / Units.G_MPS2;
        return Evidence.near(Math.hypot(bentG / STEADY_G, climbsG / STEADY_CLIMB_G), 0);
    }

    /** From how far the speed told has turned since the first of the good readings of the last second. */
    private double sidewaysG(Reading now) {
        Reading from = good.getFirst();
        Double x0 = from.alongMps();
        Double y0 = from.awayMps();
        Double x1 = now.alongMps();
        Double y1 = now.awayMps();
        double overS = now.tS() - from.tS();
        if (x0 == null || y0 == null || x1 == null || y1 == null || overS < SHORTEST_S) {
            return Double.NaN;
        }
        double turned = Math.atan2(x0 * y1 - y0 * x1, x0 * x1 + y0 * y1);
        return Math.abs(turned) / overS * Math.hypot(x1, y1) / Units.G_MPS2;
    }
}
