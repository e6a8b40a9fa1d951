package crowdline.speech.say;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Text with one way of writing each thing: plain digits, plain quotes and minus signs, ordinary spaces; without
 * control characters, joiners, emoji and lone surrogates. Nothing is read as mark-up.
 */
final class CleanText {

    private static final String KEPT_SYMBOLS = "°±×+=%&@/£$€½¼¾⅓⅔⅛⅜⅝⅞²³~≈<>≤≥";

    private static final Pattern GROUPS = Pattern.compile("[1-9][0-9]{0,2}(,[0-9]{3}){0,5}");

    private static final Pattern HALF_OF_DAY = Pattern.compile("(?<=\\d ?)[AP]\\.?M(?![\\p{L}\\p{N}])");

    private static final int LONGEST_GROUPS = 24;

    private CleanText() {}

    static String of(String raw) {
        String written = raw.replace("^2", "²").replace("^3", "³");
        StringBuilder clean = new StringBuilder(written.length());
        int at = 0;
        while (at < written.length()) {
            int c = written.codePointAt(at);
            at += Character.charCount(c);
            append(clean, c, written, at);
        }
        return oneWay(clean.toString());
    }

    /** Pairs of characters that stand for one sign, and "2 PM" as "2 pm". */
    private static String oneWay(String text) {
        String signs = text.replace("+/-", "±");
        return HALF_OF_DAY.matcher(signs).replaceAll(found -> found.group().toLowerCase(Locale.ROOT));
    }

    private static void append(StringBuilder clean, int c, String written, int next) {
        if (c == '\n' || c == '\u2029') {
            lineEnd(clean, c == '\u2029' || blankLineAt(written, next));
        } else if (c == ' ' || c == '\u00A0' || c == '\u202F' || c == '\u2009') {
            clean.append(groupsThousands(clean, written, next) ? ',' : ' ');
        } else if (Character.getType(c) == Character.FORMAT || c == '\uFE0F' || c == '\uFE0E') {
            // Joiners, direction marks and emoji selectors have no sound and part no word.
            return;
        } else if (Character.isDigit(c)) {
            clean.append((char) ('0' + Character.digit(c, 10)));
        } else if (KEPT_SYMBOLS.indexOf(c) >= 0) {
            clean.append((char) c);
        } else {
            other(clean, c);
        }
    }

    private static void other(StringBuilder clean, int c) {
        switch (c) {
            case '\u2019', '\u2018', '\u02BC', '\u2032' -> clean.append('\'');
            case '\u2212', '\u2010', '\u2011' -> clean.append('-');
            case '\u2012' -> clean.append('–');
            case '\u2015' -> clean.append('—');
            case '\u00BA' -> clean.append('°');
            case '\u2044' -> clean.append('/');
            case '\u2103' -> clean.append("°C");
            case '\u2109' -> clean.append("°F");
            case '\u2116' -> clean.append("No. ");
            default -> byKind(clean, c);
        }
    }

    private static void byKind(StringBuilder clean, int c) {
        switch (Character.getType(c)) {
            case Character.UPPERCASE_LETTER,
                    Character.LOWERCASE_LETTER,
                    Character.TITLECASE_LETTER,
                    Character.MODIFIER_LETTER,
                    Character.OTHER_LETTER,
                    Character.NON_SPACING_MARK,
                    Character.COMBINING_SPACING_MARK -> clean.appendCodePoint(c);
            case Character.LETTER_NUMBER, Character.OTHER_NUMBER -> {
                String plain = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
                boolean known = plain.chars().allMatch(p -> p < 128 && Character.isLetterOrDigit(p));
                clean.append(known ? plain : " ");
            }
            case Character.DASH_PUNCTUATION,
                    Character.START_PUNCTUATION,
                    Character.END_PUNCTUATION,
                    Character.OTHER_PUNCTUATION -> clean.appendCodePoint(c);
            default -> clean.append(' ');
        }
    }

    /** A blank line ends a sentence even where its full stop was left out, as under a heading. */
    private static void lineEnd(StringBuilder clean, boolean paragraph) {
        int last = clean.length() - 1;
        while (last >= 0 && clean.charAt(last) == ' ') {
            last--;
        }
        if (paragraph && last >= 0 && Character.isLetterOrDigit(clean.charAt(last))) {
            clean.append('.');
        }
        clean.append(' ');
    }

    private static boolean blankLineAt(String written, int at) {
        for (int i = at; i < written.length() && i < at + 80; i++) {
            char c = written.charAt(i);
            if (c == '\n') {
                return true;
            }
            if (!Character.isWhitespace(c)) {
                return false;
            }
        }
        return false;
    }

    /** "12 000": one to three digits that begin a number, a space, and three digits with no more behind them. */
    private static boolean groupsThousands(StringBuilder clean, String written, int next) {
        int end = next;
        while (end < written.length() && end - next < 4 && isDigit(written.charAt(end))) {
            end++;
        }
        if (end - next != 3 || written.startsWith(" Sq", end)) {
            return false;
        }
        int first = clean.length();
        while (first > 0
                && clean.length() - first < LONGEST_GROUPS
                && (isDigit(clean.charAt(first - 1)) || clean.charAt(first - 1) == ',')) {
            first--;
        }
        return GROUPS.matcher(clean.substring(first)).matches() && (first == 0 || beginsNumber(clean, first - 1));
    }

    /** Whether what stands before is no part of a longer number, such as a telephone's. */
    private static boolean beginsNumber(StringBuilder clean, int before) {
        char c = clean.charAt(before);
        boolean afterNumber = c == ' ' && before > 0 && isDigit(clean.charAt(before - 1));
        return !afterNumber && ".:/-–'".indexOf(c) < 0 && !Character.isLetter(c);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
