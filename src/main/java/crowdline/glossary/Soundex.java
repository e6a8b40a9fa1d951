package crowdline.glossary;

import java.util.Locale;

/**
 * How English words sound, roughly: American Soundex (R. C. Russell, US patents 1,261,167 of 1918 and 1,435,663 of 1922, in the
 * form the US National Archives publish). Vowels do not count after the first letter, and letters that sound alike are one.
 */
final class Soundex {
    /** For the letters from a to z; 0 for those that do not count. */
    private static final String CODES = "01230120022455012623010202";

    /** Those that do not even part what sounds alike, as vowels do. */
    private static final String SILENT = "hw";

    private static final int LENGTH = 4;

    private Soundex() {}

    /** A letter and three digits; empty for a word without a letter from a to z. */
    static String of(String word) {
        String letters = letters(word);
        return letters.isEmpty()
                ? ""
                : (Character.toUpperCase(letters.charAt(0)) + digits(letters).substring(1) + "000")
                        .substring(0, LENGTH);
    }

    /**
     * The same for comparing what was written by ear: uncut, without letters that are silent at the beginning, and with the first
     * letter by its sound as well, so that "qban" sounds like "Cuban".
     */
    static String key(String word) {
        String letters = letters(word).replaceFirst("^(?:k(?=n)|g(?=n)|w(?=r)|p(?=s))", "");
        return letters.isEmpty() ? "" : digits(letters);
    }

    private static String letters(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }

    /** The code of the first letter, and those of the others that count. */
    private static String digits(String letters) {
        StringBuilder digits = new StringBuilder().append(code(letters.charAt(0)));
        char last = digits.charAt(0);
        for (int i = 1; i < letters.length(); i++) {
            char letter = letters.charAt(i);
            if (SILENT.indexOf(letter) >= 0) {
                continue;
            }
            char code = code(letter);
            if (code != '0' && code != last) {
                digits.append(code);
            }
            last = code;
        }
        return digits.toString();
    }

    private static char code(char letter) {
        return CODES.charAt(letter - 'a');
    }
}
