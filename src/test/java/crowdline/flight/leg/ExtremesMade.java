package crowdline.flight.leg;

/** Extremes as a test wants them, without a flight. */
public final class ExtremesMade {
    public double leastAlongM;
    public double greatestAlongM;
    public double nearestM;
    public double farthestM;
    public double shortG;
    public double shortAskedG;
    public double shortGaveG;
    public double shortMps;
    public double slowByMps;
    public double slowMps;

    /** As they stand now. */
    public Extremes made() {
        Extremes made = new Extremes();
        made.leastAlongM = leastAlongM;
        made.greatestAlongM = greatestAlongM;
        made.nearestM = nearestM;
        made.farthestM = farthestM;
        made.shortG = shortG;
        made.shortAskedG = shortAskedG;
        made.shortGaveG = shortGaveG;
        made.shortMps = shortMps;
        made.slowByMps = slowByMps;
        made.slowMps = slowMps;
        return made;
    }
}
