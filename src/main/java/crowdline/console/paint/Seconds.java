package crowdline.console.paint;

import java.util.Locale;

/** Seconds in the few letters there is room for. */
public final class Seconds {
    private static final long DAY_S = 24 * 3600;

    private Seconds() {}

    /** Whole seconds, from a minute on minutes, from an hour on hours, from two days on days: "9 s", "1:05", "2 h 05 min", "3 days". What is up is "0 s". */
    public static String left(double seconds) {
        long whole = Math.max(0, Math.round(seconds));
        if (whole >= 2 * DAY_S) {
            return Math.round((double) whole / DAY_S) + " days";
        }
        if (whole >= 3600) {
            return whole / 3600 + " h " + String.format(Locale.ROOT, "%02d", whole % 3600 / 60) + " min";
        }
        return whole < 60 ? whole + " s" : clock((double) whole);
    }

    /** Whole minutes that have passed, from an hour on hours: "2 min", "1 h 05 min". */
    public static String minutes(double seconds) {
        long whole = Math.max(0, (long) Math.floor(seconds / 60));
        return whole < 60
                ? whole + " min"
                : whole / 60 + " h " + String.format(Locale.ROOT, "%02d", whole % 60) + " min";
    }

    /** How long something lasts, to the nearest minute: "5 min" for 4:49; less than a minute in seconds. */
    public static String toTheMinute(double seconds) {
        return seconds < 59.5 ? left(seconds) : minutes(60.0 * Math.max(1, Math.round(seconds / 60)));
    }

    /** Minutes and seconds: "0:07", "12:30". */
    public static String clock(double seconds) {
        long whole = Math.max(0, (long) Math.floor(seconds));
        return whole / 60 + ":" + String.format(Locale.ROOT, "%02d", whole % 60);
    }

    /** When something is planned, to the nearest second as on paper: "0:07" for 6.6 s. */
    public static String planned(double seconds) {
        return clock(Math.rint(seconds));
    }

    /** The age of a reading: tenths below ten seconds, where they say whether it is fresh. */
    public static String age(double seconds) {
        return seconds < 10 ? String.format(Locale.ROOT, "%.1f s old", Math.max(0, seconds)) : left(seconds) + " old";
    }
}
