package crowdline.sight;

import crowdline.speech.say.NumberWords;

/** Numbers as people say them when they mean "about": twelve hundred, two and a half, a hundred and eighty. */
public final class CountedWords {
    private CountedWords() {}

    /** Whether there are words for a number in whole numbers or quarters. */
    static boolean has(double value) {
        return value >= 0 && value < 1_000_000;
    }

    /**
     * The words of a number.
     *
     * @param value 0 to 999,999, in whole numbers or quarters
     * @throws Unsayable if it is less or more
     */
    public static String of(double value) {
        if (!has(value)) {
            throw new Unsayable(value, "");
        }
        long quarters = Math.round(value * 4);
        if (Math.abs(value * 4 - quarters) >= 1e-6) {
            throw new IllegalArgumentException("there are no words for " + value + ", only for quarters");
        }
        long whole = quarters / 4;
        String part = switch ((int) (quarters % 4)) {
            case 1 -> "a quarter";
            case 2 -> "a half";
            case 3 -> "three quarters";
            default -> "";
        };
        if (part.isEmpty()) {
            return whole(whole);
        }
        return whole == 0 ? part : whole(whole) + " and " + part;
    }

    private static String whole(long n) {
        if (n > 1000 && n < 2000 && n % 100 == 0) {
            return NumberWords.cardinal(n / 100) + " hundred";
        }
        if (n == 0) {
            return "nought";
        }
        String words = NumberWords.cardinal(n).replace(",", "");
        return words.startsWith("one ") ? "a" + words.substring("one".length()) : words;
    }
}
