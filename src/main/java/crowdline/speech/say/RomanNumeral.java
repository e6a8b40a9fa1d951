package crowdline.speech.say;

import java.util.regex.Pattern;

/** Roman numerals as marks use them, 1 to 39. */
public final class RomanNumeral {

    private static final Pattern VALID = Pattern.compile("X{0,3}(?:IX|IV|V?I{0,3})");

    private RomanNumeral() {}

    /** The value, or 0 if the text is no Roman numeral up to 39. */
    public static int value(String text) {
        if (text.isEmpty() || !VALID.matcher(text).matches()) {
            return 0;
        }
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            int here = digit(text.charAt(i));
            boolean subtract = i + 1 < text.length() && digit(text.charAt(i + 1)) > here;
            sum += subtract ? -here : here;
        }
        return sum;
    }

    private static int digit(char c) {
        return c == 'X' ? 10 : c == 'V' ? 5 : 1;
    }
}
