package crowdline.speech.say;

import java.util.List;

/**
 * Whole numbers in British words: "one hundred and eighty", "two thousand and fifth". From a hundred thousand on, commas part
 * the thousands as in print, so that a pause is heard there.
 */
public final class NumberWords {

    /** The largest number that has words; longer ones are serial numbers. */
    public static final long LARGEST = 999_999_999_999L;

    private static final List<String> BELOW_TWENTY = List.of(
            ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
                            + "seventeen eighteen nineteen")
                    .split(" "));
    private static final List<String> TENS =
            List.of("zero ten twenty thirty forty fifty sixty seventy eighty ninety".split(" "));
    private static final List<String> THOUSANDS = List.of(" thousand", " million", " billion");

    private NumberWords() {}

    /**
     * "one hundred and twenty-three thousand, four hundred and fifty-six".
     *
     * @param number 0 to {@link #LARGEST}
     * @throws IllegalArgumentException if it is outside
     */
    public static String cardinal(long number) {
        if (number < 0 || number > LARGEST) {
            throw new IllegalArgumentException("only numbers from 0 to " + LARGEST + " have words, but got " + number);
        }
        if (number < 1000) {
            return belowThousand((int) number);
        }
        String grouped = number < 100_000 ? " " : ", ";
        StringBuilder words = new StringBuilder();
        int power = THOUSANDS.size();
        for (long unit = 1_000_000_000; unit >= 1000; unit /= 1000) {
            power--;
            int group = (int) (number / unit % 1000);
            if (group > 0) {
                words.append(words.isEmpty() ? "" : grouped)
                        .append(belowThousand(group))
                        .append(THOUSANDS.get(power));
            }
        }
        int rest = (int) (number % 1000);
        if (rest > 0) {
            words.append(rest < 100 ? " and " : grouped).append(belowThousand(rest));
        }
        return words.toString();
    }

    /**
     * "one hundred and first", "twentieth", "one thousandth".
     *
     * @param number 0 to {@link #LARGEST}
     * @throws IllegalArgumentException if it is outside
     */
    public static String ordinal(long number) {
        String words = cardinal(number);
        int last = Math.max(words.lastIndexOf(' '), words.lastIndexOf('-')) + 1;
        return words.substring(0, last) + ordinal(words.substring(last));
    }

    private static String ordinal(String word) {
        return switch (word) {
            case "one" -> "first";
            case "two" -> "second";
            case "three" -> "third";
            case "five" -> "fifth";
            case "eight" -> "eighth";
            case "nine" -> "ninth";
            case "twelve" -> "twelfth";
            default -> word.endsWith("y") ? word.substring(0, word.length() - 1) + "ieth" : word + "th";
        };
    }

    private static String belowThousand(int number) {
        if (number < 20) {
            return BELOW_TWENTY.get(number);
        }
        if (number < 100) {
            String tens = TENS.get(number / 10);
            return number % 10 == 0 ? tens : tens + "-" + BELOW_TWENTY.get(number % 10);
        }
        String hundreds = BELOW_TWENTY.get(number / 100) + " hundred";
        return number % 100 == 0 ? hundreds : hundreds + " and " + belowThousand(number % 100);
    }
}
