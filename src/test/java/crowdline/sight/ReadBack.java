package crowdline.sight;

import java.util.List;

/** Reads a number out of its words, the other way round from {@link CountedWords} and without its tables. */
public final class ReadBack {
    private static final List<String> UP_TO_NINETEEN = List.of(
            "nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen"
                    .concat(" seventeen eighteen nineteen")
                    .split(" ", -1));
    private static final List<String> TENS =
            List.of("- - twenty thirty forty fifty sixty seventy eighty ninety".split(" ", -1));

    private ReadBack() {}

    /** The number a phrase begins with, such as 1.5 for "a mile and a half" and 1200 for "twelve hundred feet". */
    public static double number(String phrase) {
        String words = phrase.replaceFirst("^once\\b.*", "one").replaceFirst("^twice\\b.*", "two");
        double extra = 0;
        if (words.matches("^half\\b.*")) {
            return 0.5;
        }
        if (words.matches("^a half\\b.*")) {
            return 0.5;
        }
        if (words.matches("^three quarters\\b.*")) {
            return 0.75;
        }
        if (words.matches("^a quarter\\b.*")) {
            return 0.25;
        }
        if (words.matches("^a (second|mile|minute)( and a half)?$")) {
            return words.endsWith("half") ? 1.5 : 1;
        }
        if (words.contains(" and a half")) {
            extra = 0.5;
        } else if (words.contains(" and a quarter")) {
            extra = 0.25;
        } else if (words.contains(" and three quarters")) {
            extra = 0.75;
        }
        return whole(words.replaceFirst(" and (a half|a quarter|three quarters).*", "")) + extra;
    }

    private static double whole(String words) {
        double total = 0;
        double group = 0;
        boolean read = false;
        for (String word : words.replace('-', ' ').split(" ", -1)) {
            if (word.equals("a") && !read) {
                group = 1;
            } else if (UP_TO_NINETEEN.contains(word)) {
                group += UP_TO_NINETEEN.indexOf(word);
            } else if (TENS.contains(word)) {
                group += 10 * TENS.indexOf(word);
            } else if (word.equals("hundred")) {
                group *= 100;
            } else if (word.equals("thousand")) {
                total = group * 1000;
                group = 0;
            } else if (!word.equals("and")) {
                if (!read) {
                    throw new IllegalArgumentException("no number begins " + words);
                }
                break;
            }
            read = true;
        }
        return total + group;
    }
}
