package crowdline.speech.say;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/** Halves, quarters and other parts, written with a sign ("½") or a stroke ("3/4"). */
final class FractionRules {

    private static final String SIGNS = "[½¼¾⅓⅔⅛⅜⅝⅞]";

    private static final Map<String, String> OF_SIGN = Map.ofEntries(
            Map.entry("½", "1/2"),
            Map.entry("¼", "1/4"),
            Map.entry("¾", "3/4"),
            Map.entry("⅓", "1/3"),
            Map.entry("⅔", "2/3"),
            Map.entry("⅛", "1/8"),
            Map.entry("⅜", "3/8"),
            Map.entry("⅝", "5/8"),
            Map.entry("⅞", "7/8"));

    private static final String UNIT = "(?:[ -]?(" + SpokenUnits.REGEX + "))?";

    /** What comes in parts; before these "3/4" is said as one word, "three-quarter". */
    private static final String IN_PARTS =
            "(?:rolls?|loops?|turns?|spins?|flicks?|circles?|cubans?|Cubans?|throttle|power|hours?|miles?|scale|size"
                    + "|length|inverted|inside|outside|vertical|aileron|slow|snap)";

    private static final String FOLLOWING = "(?=([ -]?\\p{L})?)(?=([ -]" + IN_PARTS + "(?!\\p{L}))?)";

    private final SpelledNumbers words;

    FractionRules(SpelledNumbers words) {
        this.words = words;
    }

    static boolean isFractionSign(char c) {
        return OF_SIGN.containsKey(String.valueOf(c));
    }

    /** Most particular first. */
    List<SayingRule> rules() {
        return List.of(
                SayingRule.of("(\\d{1,3})/(\\d{2,4})((?:st|nd|rd|th)s?)(?!\\p{L})", this::small),
                SayingRule.of("(\\d{1,3})/([1-9]\\d{1,3})(?= (?:scale|(of) an?)(?!\\p{L}))", this::small),
                SayingRule.of(
                        "(10|5|100)/\\1(?![\\d/])",
                        m -> words.quantity(group(m, 1)) + " out of " + words.quantity(group(m, 1))),
                SayingRule.of(
                        "(?<=\\b[Aa]n? )(?:(" + SIGNS + ")|(1/[2-8]))(?=[ -]\\p{L})",
                        m -> ofOne(m) == 0 ? null : part(1, ofOne(m), false)),
                SayingRule.of(
                        "(\\d{1,6})? ?(" + SIGNS + ")" + UNIT + FOLLOWING,
                        m -> fraction(m, OF_SIGN.getOrDefault(group(m, 2), ""))),
                SayingRule.of(
                        "(?:(\\d{1,4})[ -])?([1-9]/(?:2|3|4|5|6|8|10|16))(?![\\d/.,]\\d|\\d|/)" + UNIT + FOLLOWING,
                        m -> fraction(m, group(m, 2))));
    }

    /** "1/100th of a second", "1/72 scale". */
    private @Nullable String small(Matcher m) {
        long top = Long.parseLong(m.group(1));
        long bottom = Long.parseLong(m.group(2));
        if (top < 1 || bottom <= top) {
            return null;
        }
        boolean noun = m.group(3) != null;
        String name = bottom == 100 ? "hundredth" : bottom == 1000 ? "thousandth" : words.ordinal(bottom);
        return (top > 1 ? words.cardinal(top) : noun ? "a" : "one") + " " + name + (top > 1 ? "s" : "");
    }

    private @Nullable String fraction(Matcher m, String fraction) {
        int slash = fraction.indexOf('/');
        long top = Long.parseLong(fraction.substring(0, slash));
        long bottom = Long.parseLong(fraction.substring(slash + 1));
        if (top >= bottom) {
            return null;
        }
        String whole = group(m, 1);
        String symbol = group(m, 3);
        boolean ofThing = m.group(5) != null && symbol.isEmpty();
        if (!whole.isEmpty()) {
            String tail = symbol.isEmpty() ? "" : " " + SpokenUnits.say(symbol, SpokenUnits.beforeThing(m, 3));
            return words.quantity(whole) + " and "
                    + (ofThing && top > 1 ? partOfThing(top, bottom) : part(top, bottom, true)) + tail;
        }
        if (ofThing && top > 1) {
            return partOfThing(top, bottom);
        }
        boolean half = top == 1 && bottom == 2;
        boolean beforeWord = !symbol.isEmpty() || m.group(4) != null;
        String tail = symbol.isEmpty() ? "" : (half ? "" : " of a") + " " + SpokenUnits.say(symbol, true);
        return part(top, bottom, !half || !beforeWord) + tail;
    }

    /** The lower number of a fraction with one on top, or 0. */
    private static int ofOne(Matcher m) {
        String fraction = OF_SIGN.getOrDefault(group(m, 1), group(m, 2));
        return fraction.startsWith("1/") ? fraction.charAt(2) - '0' : 0;
    }

    /** "three-quarter", as in a three-quarter roll. */
    private String partOfThing(long top, long bottom) {
        return words.cardinal(top) + "-" + part(1, bottom, false);
    }

    private String part(long top, long bottom, boolean article) {
        String name = bottom == 2 ? "half" : bottom == 4 ? "quarter" : words.ordinal(bottom);
        if (top == 1) {
            return (article ? "a " : "") + name;
        }
        return words.cardinal(top) + " " + name + "s";
    }

    private static String group(Matcher m, int group) {
        String found = m.group(group);
        return found == null ? "" : found;
    }
}
