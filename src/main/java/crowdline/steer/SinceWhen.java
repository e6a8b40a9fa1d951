package crowdline.steer;

/** Since when something has been so without a break. Not thread-safe. */
final class SinceWhen {
    private double sinceS = Double.NaN;

    /** It is so now, or it is not. */
    void is(boolean so, double nowS) {
        sinceS = !so ? Double.NaN : Double.isNaN(sinceS) ? nowS : sinceS;
    }

    /** True if it has been so for at least this long. */
    boolean atLeast(double seconds, double nowS) {
        return nowS - sinceS >= seconds;
    }

    /** Since when it has been so; NaN while it is not. */
    double sinceS() {
        return sinceS;
    }
}
