package crowdline.draft;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Sentences taken apart and put together. */
final class Sentences {
    private static final Pattern BETWEEN = Pattern.compile("(?<=[.!?])\\s+(?=\\p{Lu}|\\p{N})");

    private static final Pattern SIDE = Pattern.compile(
            "(it (?:flies|climbs) (?:out|on)|to come in|comes back along the line) (?:to|from) the (?:left|right)");

    private Sentences() {}

    /** The sentences of a text. */
    static List<String> of(String text) {
        return text.isBlank() ? List.of() : List.of(BETWEEN.split(text.strip()));
    }

    /** Two sentences with the same key say the same; to which side is no difference between two ways to a figure. */
    static String key(String sentence) {
        return SIDE.matcher(sentence.toLowerCase(Locale.ROOT))
                .replaceAll("$1")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    /** As it begins a sentence. */
    static String begun(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** As it goes on within a sentence; what is written in capitals stays. */
    static String within(String words) {
        boolean capitals = words.length() > 1 && Character.isUpperCase(words.charAt(1));
        return words.isEmpty() || capitals
                ? words
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** With a full stop, unless it ends in one. */
    static String stopped(String words) {
        return words.matches("(?s).*[.!?]") ? words : words + ".";
    }

    /** With "a" or "an" before it, by how it sounds. */
    static String withArticle(String noun) {
        boolean vowel = noun.matches("(?i)(?!(one|uni|use|eu))[aeiou].*|(?i)(8|11|18|hour).*");
        return (vowel ? "an " : "a ") + noun;
    }
}
