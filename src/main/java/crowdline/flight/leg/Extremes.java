package crowdline.flight.leg;

import crowdline.flight.body.FlightState;

/** The least and the greatest of what was seen while a figure was flown, and where the wing fell short. */
public final class Extremes {
    double leastMps = Double.POSITIVE_INFINITY;
    double greatestMps = Double.NEGATIVE_INFINITY;
    double lowestM = Double.POSITIVE_INFINITY;
    double highestM = Double.NEGATIVE_INFINITY;
    double leastG = Double.POSITIVE_INFINITY;
    double greatestG = Double.NEGATIVE_INFINITY;
    double leastAlongM = Double.POSITIVE_INFINITY;
    double greatestAlongM = Double.NEGATIVE_INFINITY;
    double nearestM = Double.POSITIVE_INFINITY;
    double farthestM = Double.NEGATIVE_INFINITY;
    double upsideDownS;
    double hangingS;
    double shortG;
    double shortAskedG;
    double shortGaveG;
    double shortMps;
    double slowByMps;
    double slowMps;
    private double lastS = Double.NaN;
    private boolean lastUpsideDown;
    private boolean lastHanging;
    private double hangsS;
    /** Whether the pilot has hung in the straps from the first instant on. */
    private boolean hangsThrough = true;

    /** For how long from there, seconds. */
    private double hungAtFirstS;

    /** Those of something that is not simulated, from where it begins and ends. */
    public static Extremes between(FlightState from, FlightState to) {
        Extremes e = new Extremes();
        e.leastMps = Math.min(from.speedMps(), to.speedMps());
        e.greatestMps = Math.max(from.speedMps(), to.speedMps());
        e.lowestM = Math.min(from.place().z(), to.place().z());
        e.highestM = Math.max(from.place().z(), to.place().z());
        e.leastG = 1;
        e.greatestG = 1;
        return e;
    }

    /** Takes in what is seen of an instant. */
    public void see(double tS, double[] y, Look look) {
        leastMps = Math.min(leastMps, Math.abs(look.speedMps));
        greatestMps = Math.max(greatestMps, Math.abs(look.speedMps));
        lowestM = Math.min(lowestM, y[2]);
        highestM = Math.max(highestM, y[2]);
        leastG = Math.min(leastG, look.g);
        greatestG = Math.max(greatestG, look.g);
        leastAlongM = Math.min(leastAlongM, y[0]);
        greatestAlongM = Math.max(greatestAlongM, y[0]);
        nearestM = Math.min(nearestM, y[1]);
        farthestM = Math.max(farthestM, y[1]);
        if (lastUpsideDown && tS > lastS) {
            upsideDownS += tS - lastS;
        }
        if (lastHanging && tS > lastS) {
            hangsS += tS - lastS;
            hangingS = Math.max(hangingS, hangsS);
            hungAtFirstS += hangsThrough ? tS - lastS : 0;
        }
        lastS = tS;
        lastHanging = look.g < -0.3;
        hangsThrough &= lastHanging;
        hangsS = lastHanging ? hangsS : 0;
        lastUpsideDown = look.uz < -0.1;
        double missing = Math.abs(look.askedG - look.g);
        if (look.keptAnyway) {
            double speed = Math.abs(look.speedMps);
            double slowBy = speed * (Math.sqrt(Math.abs(look.askedG / (look.g == 0 ? 1 : look.g))) - 1);
            if (slowBy > slowByMps) {
                slowByMps = slowBy;
                slowMps = speed;
            }
        } else if (!look.stalledOnPurpose && missing > shortG) {
            shortG = missing;
            shortAskedG = look.askedG;
            shortGaveG = look.g;
            shortMps = look.speedMps;
        }
    }

    /** Takes in what was seen of what is flown on from here. */
    public void goOn(Extremes next) {
        leastMps = Math.min(leastMps, next.leastMps);
        greatestMps = Math.max(greatestMps, next.greatestMps);
        lowestM = Math.min(lowestM, next.lowestM);
        highestM = Math.max(highestM, next.highestM);
        leastG = Math.min(leastG, next.leastG);
        greatestG = Math.max(greatestG, next.greatestG);
        leastAlongM = Math.min(leastAlongM, next.leastAlongM);
        greatestAlongM = Math.max(greatestAlongM, next.greatestAlongM);
        nearestM = Math.min(nearestM, next.nearestM);
        farthestM = Math.max(farthestM, next.farthestM);
        upsideDownS += next.upsideDownS;
        hangingS = Math.max(Math.max(hangingS, hangsS + next.hungAtFirstS), next.hangingS);
        hangsS = next.hangsThrough ? hangsS + next.hangsS : next.hangsS;
        hungAtFirstS += hangsThrough ? next.hungAtFirstS : 0;
        hangsThrough &= next.hangsThrough;
        lastS = next.lastS;
        lastHanging = next.lastHanging;
        lastUpsideDown = next.lastUpsideDown;
        if (next.slowByMps > slowByMps) {
            slowByMps = next.slowByMps;
            slowMps = next.slowMps;
        }
        if (next.shortG > shortG) {
            shortG = next.shortG;
            shortAskedG = next.shortAskedG;
            shortGaveG = next.shortGaveG;
            shortMps = next.shortMps;
        }
    }

    /** Least speed, m/s. */
    public double leastMps() {
        return leastMps;
    }

    /** Greatest speed, m/s. */
    public double greatestMps() {
        return greatestMps;
    }

    /** Lowest height above the datum, metres. */
    public double lowestM() {
        return lowestM;
    }

    /** Greatest height above the datum, metres. */
    public double highestM() {
        return highestM;
    }

    /** Least load felt, g. */
    public double leastG() {
        return leastG;
    }

    /** Greatest load felt, g. */
    public double greatestG() {
        return greatestG;
    }

    /** Farthest to the left along the line, metres; right is positive. */
    public double leastAlongM() {
        return leastAlongM;
    }

    /** Farthest to the right along the line, metres. */
    public double greatestAlongM() {
        return greatestAlongM;
    }

    /** Nearest to the crowd, metres beyond the line. */
    public double nearestM() {
        return nearestM;
    }

    /** Farthest from the crowd, metres beyond the line. */
    public double farthestM() {
        return farthestM;
    }

    /** How long it flew upside down, seconds. */
    public double upsideDownS() {
        return upsideDownS;
    }

    /** How long the pilot hung in the straps at a stretch, at most, seconds. */
    public double hangingS() {
        return hangingS;
    }

    /** Greatest load asked for beyond what the wing gave, g. */
    public double shortG() {
        return shortG;
    }

    /** The load asked for there, g. */
    public double shortAskedG() {
        return shortAskedG;
    }

    /** What the wing gave there, g. */
    public double shortGaveG() {
        return shortGaveG;
    }

    /** The speed there, m/s. */
    public double shortMps() {
        return shortMps;
    }

    /** How far below the speed at which the wing holds a path that is kept, at most, m/s. */
    public double slowByMps() {
        return slowByMps;
    }

    /** The speed there, m/s. */
    public double slowMps() {
        return slowMps;
    }
}
