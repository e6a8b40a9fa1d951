package crowdline.storage.file;

import java.util.Locale;

/** How much a file of lines may hold: far more than anybody times or says, and so little that it is read in a moment. */
public final class LineLimits {
    public static final int LINES = 10_000;
    public static final int VALUES_IN_A_LINE = 20;
    static final int LETTERS = 5_000;

    /** Lines of passes: fifty a day for a year. */
    public static final int PASS_LINES = 20_000;

    private LineLimits() {}

    public static String tooManyLines(int limit) {
        return String.format(
                Locale.UK,
                "the limit is %,d lines; check that it is the right file, or split it into smaller ones",
                limit);
    }

    static String tooManyValues(int limit) {
        return "the line has more than " + limit + " values; check that it is the right file";
    }

    public static boolean isTooLong(String value) {
        return value.length() > LETTERS && letters(value) > LETTERS;
    }

    public static String tooLong(String value) {
        return String.format(
                Locale.UK,
                "this is %,d letters long; the limit is %,d, so shorten it, split it, or look for a missing quote or line"
                        + " end",
                letters(value),
                LETTERS);
    }

    private static int letters(String value) {
        return value.codePointCount(0, value.length());
    }
}
