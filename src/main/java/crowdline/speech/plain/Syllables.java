package crowdline.speech.plain;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Counts the syllables of English words by groups of vowels, with corrections, and by a list of flying words that the
 * rules get wrong. Good enough for readability scores of a block of text, which is all it serves; spoken time counts
 * letters instead.
 */
public final class Syllables {

    private static final Map<String, Integer> KNOWN = Map.ofEntries(
            Map.entry("aeroplane", 3),
            Map.entry("aerobatic", 4),
            Map.entry("aerobatics", 4),
            Map.entry("aerofoil", 3),
            Map.entry("aerial", 3),
            Map.entry("manoeuvre", 3),
            Map.entry("manoeuvring", 4),
            Map.entry("hammerhead", 3),
            Map.entry("tailslide", 2),
            Map.entry("immelmann", 3),
            Map.entry("lomcevak", 3),
            Map.entry("lomcovak", 3),
            Map.entry("chandelle", 2),
            Map.entry("wingover", 3),
            Map.entry("sideslip", 2),
            Map.entry("avalanche", 3),
            Map.entry("horsepower", 3),
            Map.entry("torque", 1),
            Map.entry("fuselage", 3),
            Map.entry("biplane", 2),
            Map.entry("triplane", 2),
            Map.entry("monoplane", 3),
            Map.entry("sailplane", 2),
            Map.entry("pirouette", 3),
            Map.entry("area", 3),
            Map.entry("idea", 3),
            Map.entry("people", 2),
            Map.entry("every", 2),
            Map.entry("everyone", 3),
            Map.entry("everything", 3),
            Map.entry("something", 2),
            Map.entry("sometimes", 2),
            Map.entry("someone", 2),
            Map.entry("somewhere", 2),
            Map.entry("business", 2),
            Map.entry("evening", 2),
            Map.entry("being", 2),
            Map.entry("doing", 2),
            Map.entry("going", 2),
            Map.entry("seeing", 2),
            Map.entry("flying", 2),
            Map.entry("trying", 2),
            Map.entry("science", 2),
            Map.entry("quiet", 2),
            Map.entry("diet", 2),
            Map.entry("client", 2),
            Map.entry("create", 2),
            Map.entry("created", 3),
            Map.entry("museum", 3),
            Map.entry("poem", 2),
            Map.entry("lion", 2),
            Map.entry("giant", 2),
            Map.entry("pioneer", 3),
            Map.entry("violent", 3),
            Map.entry("variety", 4),
            Map.entry("society", 4),
            Map.entry("radial", 3),
            Map.entry("radio", 3),
            Map.entry("audience", 3),
            Map.entry("experience", 4),
            Map.entry("obvious", 3),
            Map.entry("various", 3),
            Map.entry("serious", 3),
            Map.entry("glorious", 3),
            Map.entry("previous", 3),
            Map.entry("period", 3),
            Map.entry("material", 4),
            Map.entry("medium", 3),
            Map.entry("stadium", 3),
            Map.entry("aluminium", 5),
            Map.entry("reality", 4),
            Map.entry("real", 1),
            Map.entry("theatre", 2),
            Map.entry("metre", 2),
            Map.entry("litre", 2),
            Map.entry("centre", 2),
            Map.entry("kilometre", 4),
            Map.entry("maybe", 2),
            Map.entry("recipe", 3),
            Map.entry("apostrophe", 4),
            Map.entry("the", 1),
            Map.entry("ladies", 2),
            Map.entry("clothes", 1));

    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    private static final Pattern NOT_LETTERS = Pattern.compile("[^a-z]");
    private static final Pattern SPLIT = Pattern.compile("[^\\p{L}\\p{M}'’]+");

    /** Two vowels written together and said apart. */
    private static final Pattern APART = Pattern.compile("i[ao](?!u)(?<![cgst]i[ao])|[^cgstq]iu|ua[lt]|uou|uit(?:y|ou)"
            + "|eo(?:u|r|l|n$)|[aeiou]y(?:e(?!d$|s$|$)|[aiou])|[^cst]ien[ct]|iet|ism$|eali[tz]|[^cgstx]iou|[^l]i(?:er|est)s?$"
            + "|[^aeiou]li(?:er|est)s?$|oe[tm]|^rea[cdl][^dhkl]|^coop|^pree|^reen|[^qo]uous|[^aeiou]ying");

    /** Vowels that are written and not said, beyond the final e. */
    private static final Pattern SILENT = Pattern.compile(
            "(?:[^aeiouytdr]|[aeiou]r)ed$|ically$|[^aeiou](?<![cgszx]|sh|ch)es$|[aeiouy][^aeiouyl]e(?:ly|ment|ments|ful|less|ness)$");

    private static final Pattern FINAL_E = Pattern.compile("[^aeiou]e$");
    private static final Pattern SAID_FINAL_E = Pattern.compile("[^aeiouylrw]le[sd]?$|[bcdgptk]res?$");

    private Syllables() {}

    /**
     * Syllables of one word, or of several joined by hyphens or spaces; 0 if there is no letter. Words of other than
     * Latin letters count one syllable.
     */
    public static int count(String word) {
        int syllables = 0;
        for (String part : SPLIT.splitAsStream(word).toList()) {
            syllables += part.isEmpty() ? 0 : ofPart(part.toLowerCase(Locale.UK));
        }
        return syllables;
    }

    private static int ofPart(String lower) {
        String owner = lower.endsWith("'s") || lower.endsWith("’s") ? lower.substring(0, lower.length() - 2) : lower;
        String word = NOT_LETTERS.matcher(owner).replaceAll("");
        Integer known = known(word);
        return known != null ? known : Math.max(1, byRule(word));
    }

    private static @Nullable Integer known(String word) {
        Integer count = KNOWN.get(word);
        if (count == null && word.endsWith("s")) {
            return KNOWN.get(word.substring(0, word.length() - 1));
        }
        if (count == null && word.endsWith("d")) {
            return word.endsWith("ed") ? KNOWN.get(word.substring(0, word.length() - 1)) : null;
        }
        return count;
    }

    private static int byRule(String word) {
        int count = matches(VOWELS, word) + matches(APART, word) - matches(SILENT, word);
        if (FINAL_E.matcher(word).find() && !SAID_FINAL_E.matcher(word).find()) {
            count--;
        }
        if (SAID_FINAL_E.matcher(word).find() && SILENT.matcher(word).find()) {
            count++;
        }
        return count;
    }

    private static int matches(Pattern pattern, String word) {
        Matcher matcher = pattern.matcher(word);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }
}
