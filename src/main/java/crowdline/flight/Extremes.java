package crowdline.flight;

/** The least and the greatest of what was seen while a figure was flown, and where the wing fell short. */
final class Extremes {
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
    /** How long the pilot hung in the straps, seconds. */
    double hangingS;
    /** Greatest load asked for beyond what the wing gave, g. */
    double shortG;

    double shortAskedG;
    double shortGaveG;
    double shortMps;
    /** How far below the speed at which the wing holds a path that is kept, at most, m/s. */
    double slowByMps;

    double slowMps;
    private double lastS = Double.NaN;
    private boolean lastUpsideDown;
    private boolean lastHanging;

    void see(double tS, double[] y, Look look) {
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
            hangingS += tS - lastS;
        }
        lastS = tS;
        lastHanging = look.g < -0.3;
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
}
