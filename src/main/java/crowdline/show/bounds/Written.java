package crowdline.show.bounds;

import java.util.Locale;

/** What somebody wrote, as it is compared with a name and as it is quoted. */
public final class Written {
    private static final int LONGEST = 40;

    private Written() {}

    /** Two names with the same key are the same name. */
    public static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }

    /** A value in quotes, shortened if long. */
    public static String quoted(String text) {
        return '"' + (text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…") + '"';
    }
}
