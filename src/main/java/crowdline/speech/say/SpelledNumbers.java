package crowdline.speech.say;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Numbers in British words ("one hundred and eighty", where the default rule set would say "one hundred eighty").
 * Slow to make; safe to share between threads.
 */
final class SpelledNumbers {

    private static final String CARDINAL = "%spellout-numbering-verbose";
    private static final String YEAR = "%spellout-numbering-year";
    private static final String ORDINAL = "%spellout-ordinal-verbose";

    /** Longer rows of digits are serial numbers, not quantities. */
    private static final int LONGEST_NUMBER = 12;

    private final RuleBasedNumberFormat format = new RuleBasedNumberFormat(ULocale.UK, RuleBasedNumberFormat.SPELLOUT);

    private final List<String> digitNames =
            IntStream.range(0, 10).mapToObj(this::cardinal).toList();

    /** A whole or decimal number without sign, thousands commas allowed: "1,250.5". */
    String quantity(String number) {
        String plain = number.replace(",", "");
        int point = plain.indexOf('.');
        if (point < 0) {
            return whole(plain);
        }
        String before = plain.substring(0, point);
        String decimals = "point " + digits(plain.substring(point + 1));
        return before.isEmpty() ? decimals : whole(before) + " " + decimals;
    }

    /** Years as they are said: nineteen forty-four, two thousand and five, twenty twenty-six. */
    String year(int year) {
        boolean thousands = year < 1000 || (year >= 2000 && year < 2010);
        return format(year, thousands ? CARDINAL : YEAR);
    }

    /** "nineteen forties", "nineteen hundreds", "twenty tens". */
    String decade(int year) {
        String words = year(year);
        return words.endsWith("y") ? words.substring(0, words.length() - 1) + "ies" : words + "s";
    }

    /** By the clock of 24 hours: "oh nine thirty", "fourteen hundred". */
    String clock(String hour, int minute) {
        int hours = Integer.parseInt(hour);
        String oh = hour.length() == 2 && hour.startsWith("0") ? "oh " : "";
        String minutes = minute == 0 ? " hundred" : (minute < 10 ? " oh " : " ") + cardinal(minute);
        return oh + (hours == 0 ? "oh" : cardinal(hours)) + minutes;
    }

    String ordinal(long number) {
        return format(number, ORDINAL);
    }

    String cardinal(long number) {
        return format(number, CARDINAL);
    }

    /** Digit by digit: "zero zero seven". */
    String digits(String digits) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < digits.length(); i++) {
            words.append(i == 0 ? "" : " ").append(digitNames.get(digits.charAt(i) - '0'));
        }
        return words.toString();
    }

    /** The number in a type's name: F sixteen, A three twenty, F one oh four, ten fifty-two. */
    String inName(String digits) {
        int value = Integer.parseInt(digits);
        if (digits.charAt(0) == '0' || digits.length() > 4) {
            return digits(digits);
        }
        if (value < 100 || value % 100 == 0) {
            return cardinal(value);
        }
        String tail = value % 100 < 10 ? "oh " + cardinal(value % 10) : cardinal(value % 100);
        return cardinal(value / 100) + " " + tail;
    }

    private String whole(String digits) {
        boolean serial = digits.length() > LONGEST_NUMBER || (digits.length() > 1 && digits.charAt(0) == '0');
        return serial ? digits(digits) : cardinal(Long.parseLong(digits));
    }

    private synchronized String format(long number, String rules) {
        return format.format(number, rules);
    }
}
