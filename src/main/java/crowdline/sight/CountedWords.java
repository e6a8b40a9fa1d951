package crowdline.sight;

/** Numbers as people say them when they mean "about": twelve hundred, two and a half, a hundred and eighty. */
final class CountedWords {
    private static final String[] ONES = {
        "nought",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen"
    };
    private static final String[] TENS = {
        "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
    };

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
    static String of(double value) {
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
            return whole(n / 100) + " hundred";
        }
        if (n >= 1000) {
            return (n < 2000 ? "a" : whole(n / 1000)) + " thousand" + rest(n % 1000);
        }
        if (n >= 100) {
            return (n < 200 ? "a" : ONES[(int) n / 100]) + " hundred" + rest(n % 100);
        }
        if (n >= 20) {
            return TENS[(int) n / 10] + (n % 10 == 0 ? "" : "-" + ONES[(int) n % 10]);
        }
        return ONES[(int) n];
    }

    private static String rest(long n) {
        return n == 0
                ? ""
                : (n < 100 ? " and " : " ") + (n >= 100 && n < 200 ? "one hundred" + rest(n % 100) : whole(n));
    }
}
