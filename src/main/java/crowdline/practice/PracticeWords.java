package crowdline.practice;

import java.util.Locale;

/** How figures and times are put into the sentences of a score. */
final class PracticeWords {
    private static final int GLANCE = 44;

    private PracticeWords() {}

    /** "the loop"; a name with a comma in it is closed by one. */
    static String the(String name) {
        return "the " + name + (name.contains(",") ? "," : "");
    }

    /** The same at the front of a sentence. */
    static String front(String name) {
        return capital(the(name));
    }

    /** With a capital in front. */
    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** "4 s after", "2 s before", or "as" where it is less than half a second. */
    static String against(double laterS) {
        long whole = Math.round(Math.abs(laterS));
        return whole == 0 ? "as" : whole + " s " + (laterS > 0 ? "after" : "before");
    }

    /** "after 6 s", or "at once". */
    static String after(double seconds) {
        long whole = Math.round(seconds);
        return whole <= 0 ? "at once" : "after " + whole + " s";
    }

    /** The beginning of a remark in quotation marks. */
    static String glance(String text) {
        return "\u201c"
                + (text.length() <= GLANCE
                        ? text
                        : text.substring(0, Math.max(1, text.lastIndexOf(' ', GLANCE))) + "\u2026")
                + "\u201d";
    }
}
