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
        return '"' + brief(text, LONGEST) + '"';
    }

    /**
     * A text as it is if it is short, or its beginning and an ellipsis.
     *
     * @param longest characters, the ellipsis among them, at least 1; no character is cut in two
     */
    public static String brief(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        int end = longest - 1;
        return text.substring(0, end > 0 && Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end) + "…";
    }

    /** Words with a capital at their front, as a sentence begins. */
    public static String begun(String words) {
        int first = words.isEmpty() ? 0 : Character.charCount(words.codePointAt(0));
        return words.substring(0, first).toUpperCase(Locale.UK) + words.substring(first);
    }
}
