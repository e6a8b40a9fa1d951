package crowdline.speech.say;

import java.util.stream.Collectors;

/** Numbers as a text means them: quantities, years, times by the clock, digits, numbers in names. */
final class SpelledNumbers {

    /** Longer rows of digits are serial numbers, not quantities. */
    private static final int LONGEST_NUMBER =
            String.valueOf(NumberWords.LARGEST).length();

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
        int century = year / 100;
        int rest = year % 100;
        boolean likeAnyNumber = year < 1010 || year >= 10_000 || (century % 10 == 0 && rest < 10);
        if (likeAnyNumber) {
            return cardinal(year);
        }
        return cardinal(century)
                + (rest == 0 ? " hundred" : rest < 10 ? " oh-" + cardinal(rest) : " " + cardinal(rest));
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
        return NumberWords.ordinal(number);
    }

    String cardinal(long number) {
        return NumberWords.cardinal(number);
    }

    /** Digit by digit: "zero zero seven". */
    String digits(String digits) {
        return digits.chars().mapToObj(digit -> cardinal(digit - '0')).collect(Collectors.joining(" "));
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
}
