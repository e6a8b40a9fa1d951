package crowdline.console.theme;

/**
 * How much larger than designed everything is.
 *
 * @param percent 100 to 200
 */
public record Zoom(int percent) {
    public static final Zoom NONE = new Zoom(100);
    public static final Zoom LARGEST = new Zoom(200);
    private static final int STEP = 10;

    public Zoom {
        if (percent < 100 || percent > 200) {
            throw new IllegalArgumentException("zoom is " + percent + "%; it must be from 100 to 200");
        }
    }

    public double factor() {
        return percent / 100.0;
    }

    public Zoom larger() {
        return new Zoom(Math.min(200, percent + STEP));
    }

    public Zoom smaller() {
        return new Zoom(Math.max(100, percent - STEP));
    }
}
