package crowdline.list.about;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Numbers as they are spoken of hours and minutes. */
final class Numbers {
    private static final List<String> SPOKEN = List.of(
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
            "nineteen",
            "twenty");

    private static final Map<String, Integer> WORDS =
            IntStream.range(0, SPOKEN.size()).boxed().collect(Collectors.toUnmodifiableMap(SPOKEN::get, i -> i + 1));

    /** One of them in a pattern, without a group; the longer stand first, as "sixteen" begins with "six". */
    static final String WORD = SPOKEN.stream()
            .sorted((first, second) -> second.length() - first.length())
            .collect(Collectors.joining("|"));

    private Numbers() {}

    /**
     * What a number is, in words or in digits.
     *
     * @throws NumberFormatException if it is none
     */
    static double of(String written) {
        Integer word = WORDS.get(written.toLowerCase(Locale.UK));
        return word == null ? Double.parseDouble(written.replace(',', '.')) : word;
    }
}
