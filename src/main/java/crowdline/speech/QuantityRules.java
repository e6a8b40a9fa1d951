package crowdline.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/** Numbers that measure something: plain and decimal numbers, ranges, fractions, money, all with their units. */
final class QuantityRules {

    /** A number without sign, no groups. Repeats are bounded so that a megabyte of digits cannot exhaust the stack. */
    static final String NUMBER = "(?:(?:\\d{1,3}(?:,\\d{3}){1,5}(?![,\\d])|\\d+)(?:\\.\\d+)?|\\.\\d+)";

    private static final String FRACTION_SIGNS = "[½¼¾⅓⅔⅛⅜⅝⅞]";
    private static final String SIGN = "([+±-]?)";

    /** A full stop after a unit that cannot end the sentence, because it goes on in lower case. */
    private static final String UNIT = "(?:[ -]?(" + Units.REGEX + ")(?:\\.(?= \\p{Ll}))?)?";

    private static final Map<String, String> FRACTIONS = Map.ofEntries(
            Map.entry("½", "1/2"),
            Map.entry("¼", "1/4"),
            Map.entry("¾", "3/4"),
            Map.entry("⅓", "1/3"),
            Map.entry("⅔", "2/3"),
            Map.entry("⅛", "1/8"),
            Map.entry("⅜", "3/8"),
            Map.entry("⅝", "5/8"),
            Map.entry("⅞", "7/8"));
    private static final String MULTIPLE = "k|m|bn|thousand|million|billion";
    /** Two of these make an area; two of anything else are simply two. */
    private static final Set<String> ACROSS = Set.of("", "m", "ft", "cm", "mm", "km", "ins", "yd", "yds", "mi");

    private static final Map<String, String> CURRENCIES = Map.of("£", "pound", "$", "dollar", "€", "euro");
    private static final Map<String, String> MULTIPLES = Map.of(
            "k",
            "thousand",
            "m",
            "million",
            "bn",
            "billion",
            "thousand",
            "thousand",
            "million",
            "million",
            "billion",
            "billion");

    private final NumberWords words;

    QuantityRules(NumberWords words) {
        this.words = words;
    }

    /** Most particular first. */
    List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        rules.add(Rule.of(
                "\\+ ?(" + NUMBER + ")(?: ?" + Units.REGEX + ")? ?/ ?[-–] ?(" + NUMBER + ")" + UNIT,
                m -> "plus " + words.quantity(group(m, 1)) + ", minus " + withUnit(m, 2, 3)));
        signs(rules);
        lengths(rules);
        rules.add(Rule.of("([£$€]) ?(" + NUMBER + ")(?: ?(" + MULTIPLE + ")(?![\\p{L}\\p{N}]))?", this::money));
        rules.add(Rule.of(
                "(?<=\\b[Aa]n? )(?:(" + FRACTION_SIGNS + ")|(1/[2-8]))(?=[ -]\\p{L})",
                m -> ofOne(m) == 0 ? null : part(1, ofOne(m), false)));
        rules.add(Rule.of(
                "(\\d{1,6})? ?(" + FRACTION_SIGNS + ")(?:[ -]?(" + Units.REGEX + "))?(?=( ?\\p{L})?)",
                m -> fraction(m, FRACTIONS.getOrDefault(group(m, 2), ""), 3, 4)));
        rules.add(Rule.of(
                "(?:(\\d{1,4})[ -])?([1-9]/(?:2|3|4|5|6|8|10|16))(?![\\d/.,]\\d|\\d|/)(?:[ -]?(" + Units.REGEX
                        + "))?(?=( ?\\p{L})?)",
                m -> fraction(m, group(m, 2), 3, 4)));
        rules.add(Rule.of(
                SIGN + "(" + NUMBER + ")(?: ?" + Units.REGEX + ")?(?:[-–]| – )(" + NUMBER + ")(?![-–]\\d)" + UNIT,
                m -> sign(m) + words.quantity(group(m, 2)) + " to " + withUnit(m, 3, 4)));
        rules.add(Rule.of(
                "(" + NUMBER + ")(?: ?" + Units.REGEX + ")? ?[x×] ?(" + NUMBER + ")" + UNIT,
                m -> words.quantity(group(m, 1))
                        + (ACROSS.contains(group(m, 3)) ? " by " : " times ")
                        + withUnit(m, 2, 3)));
        rules.add(Rule.of("(" + NUMBER + ")(?:x| ?×)(?![\\p{L}\\p{N}])", m -> words.quantity(group(m, 1)) + " times"));
        // "a 45° line": after the article the unit stands before a thing and is said as one.
        rules.add(Rule.of(
                "(?<=\\b[Aa]n? )(" + NUMBER + ")[ -]?(" + Units.REGEX + ")(?= \\p{L})",
                m -> words.quantity(group(m, 1)) + " " + Units.say(group(m, 2), true)));
        rules.add(Rule.of(
                SIGN + " ?(" + NUMBER + ")[ -]?(" + Units.REGEX + ")(?:\\.(?= \\p{Ll}))?",
                m -> sign(m) + withUnit(m, 2, 3)));
        return rules;
    }

    /** Signs before a number, and words for large ones. */
    private void signs(List<Rule> rules) {
        rules.add(Rule.of("[~≈] ?(?=[\\d.])", m -> "about"));
        rules.add(Rule.of("#(?=\\d)", m -> "number"));
        rules.add(Rule.of("> ?(?=\\d)", m -> "more than"));
        rules.add(Rule.of("< ?(?=\\d)", m -> "less than"));
        rules.add(Rule.of(
                "([£$€]) ?(" + NUMBER + ")(?:[-–]| – )[£$€]?(" + NUMBER + ")(?: ?(" + MULTIPLE
                        + ")(?![\\p{L}\\p{N}]))?",
                m -> words.quantity(group(m, 2)) + " to " + words.quantity(group(m, 3))
                        + (group(m, 4).isEmpty() ? "" : " " + MULTIPLES.get(group(m, 4))) + " "
                        + CURRENCIES.get(group(m, 1)) + "s"));
        rules.add(Rule.of(
                "(" + NUMBER + ") ?(?:m|mn|mln)(?= (?:people|spectators|visitors|viewers|pounds|dollars|euros|views"
                        + "|miles|passengers|hours|flights|years)\\b)",
                m -> words.quantity(group(m, 1)) + " million"));
        rules.add(Rule.of("(" + NUMBER + ") ?bn(?![\\p{L}\\p{N}])", m -> words.quantity(group(m, 1)) + " billion"));
        rules.add(Rule.of(
                "(?<=\\b[Aa]n? )([£$€])(" + NUMBER + ")(?: ?(" + MULTIPLE + "))?(?=[ -]\\p{L})",
                m -> words.quantity(group(m, 2)) + (group(m, 3).isEmpty() ? "" : " " + MULTIPLES.get(group(m, 3))) + " "
                        + CURRENCIES.get(group(m, 1))));
        // Turns by their angle: "two 360s", "a 180".
        rules.add(Rule.of("(180|270|360|540|720)s(?!\\p{L})", m -> {
            String name = words.inName(group(m, 1));
            return (name.endsWith("y") ? name.substring(0, name.length() - 1) + "ie" : name) + "s";
        }));
        rules.add(Rule.of(
                "(?<=\\b[Aa] )(180|270|360|540|720)(?=[.,;:!?](?!\\d)| ?$| (?:turn|spin|flick)\\b)",
                m -> words.inName(group(m, 1))));
        rules.add(
                Rule.of("(\\d{1,2})[ -]?pt(?=[ -](?:hesitation )?roll)", m -> words.quantity(group(m, 1)) + " point"));
        rules.add(Rule.of("100s(?= (?:of|more)\\b)", m -> "hundreds"));
        rules.add(Rule.of("1,?000s(?= (?:of|more)\\b)", m -> "thousands"));
        rules.add(Rule.of(
                "([+-]?)(\\d{1,3}(?:\\.\\d)?)([CF])(?![\\p{L}\\p{N}]|-\\p{L})",
                m -> sign(m) + words.quantity(group(m, 2)) + " degrees "
                        + (group(m, 3).equals("C") ? "Celsius" : "Fahrenheit")));
    }

    /** Feet and inches; "in" alone is only an inch where something is so wide or so long. */
    private void lengths(List<Rule> rules) {
        rules.add(Rule.of(
                "(\\d{1,3}) ?(?:ft|'|feet|foot) ?(\\d|1[01]) ?(?:ins?\\b|inch(?:es)?\\b|\"|″)",
                m -> feet(m) + words.quantity(group(m, 2)) + (group(m, 2).equals("1") ? " inch" : " inches")));
        rules.add(Rule.of(
                "(\\d{1,3}) ?(?:ft|') ?(\\d|1[01])(?![\\p{L}\\d./,½¼¾x×'%:°]|[ -]\\p{L})",
                m -> feet(m) + words.quantity(group(m, 2))));
        rules.add(Rule.of(
                "(" + NUMBER + ") ?in(?= (?:wide|long|high|tall|across|deep|thick|of (?:rain|snow))\\b)",
                m -> words.quantity(group(m, 1)) + (group(m, 1).equals("1") ? " inch" : " inches")));
    }

    private String feet(Matcher m) {
        return words.quantity(group(m, 1)) + (group(m, 1).equals("1") ? " foot " : " feet ");
    }

    /** A number on its own; asked last, when it is no year, time or date. */
    Rule plain() {
        return Rule.of(SIGN + "(" + NUMBER + ")", m -> sign(m) + words.quantity(group(m, 2)));
    }

    static boolean isFractionSign(char c) {
        return FRACTIONS.containsKey(String.valueOf(c));
    }

    private String withUnit(Matcher m, int number, int unit) {
        String digits = group(m, number);
        String symbol = group(m, unit);
        if (symbol.isEmpty()) {
            return words.quantity(digits);
        }
        return words.quantity(digits) + " " + Units.say(symbol, digits.equals("1") || beforeThing(m, unit));
    }

    /** "a 300-ft pole": joined by a hyphen, the unit stands before a thing and is said as one. */
    private static boolean beforeThing(Matcher m, int unit) {
        int start = m.start(unit);
        return start > m.start() && charBefore(m, start) == '-';
    }

    private static char charBefore(Matcher m, int at) {
        String matched = m.group();
        return matched.charAt(at - m.start() - 1);
    }

    private static String sign(Matcher m) {
        return switch (group(m, 1)) {
            case "+" -> "plus ";
            case "-" -> "minus ";
            case "±" -> "plus or minus ";
            default -> "";
        };
    }

    private @Nullable String fraction(Matcher m, String fraction, int unit, int following) {
        int slash = fraction.indexOf('/');
        long top = Long.parseLong(fraction.substring(0, slash));
        long bottom = Long.parseLong(fraction.substring(slash + 1));
        if (top >= bottom) {
            return null;
        }
        String whole = group(m, 1);
        String symbol = group(m, unit);
        if (!whole.isEmpty()) {
            String tail = symbol.isEmpty() ? "" : " " + Units.say(symbol, beforeThing(m, unit));
            return words.quantity(whole) + " and " + part(top, bottom, true) + tail;
        }
        boolean half = top == 1 && bottom == 2;
        boolean beforeWord = !symbol.isEmpty() || m.group(following) != null;
        String tail = symbol.isEmpty() ? "" : (half ? "" : " of a") + " " + Units.say(symbol, true);
        return part(top, bottom, !half || !beforeWord) + tail;
    }

    /** The lower number of a fraction with one on top, or 0. */
    private static int ofOne(Matcher m) {
        String fraction = FRACTIONS.getOrDefault(group(m, 1), group(m, 2));
        return fraction.startsWith("1/") ? fraction.charAt(2) - '0' : 0;
    }

    private String part(long top, long bottom, boolean article) {
        String name = bottom == 2 ? "half" : bottom == 4 ? "quarter" : words.ordinal(bottom);
        if (top == 1) {
            return (article ? "a " : "") + name;
        }
        return words.cardinal(top) + " " + name + "s";
    }

    private String money(Matcher m) {
        String currency = CURRENCIES.getOrDefault(group(m, 1), "");
        String amount = group(m, 2);
        String multiple = group(m, 3);
        if (!multiple.isEmpty()) {
            return words.quantity(amount) + " " + MULTIPLES.get(multiple) + " " + currency + "s";
        }
        int point = amount.indexOf('.');
        boolean pence = point > 0 && amount.length() == point + 3 && !amount.endsWith("00");
        String main = pence || amount.endsWith(".00") ? amount.substring(0, point) : amount;
        if (pence && main.equals("0") && currency.equals("pound")) {
            return words.cardinal(Long.parseLong(amount.substring(point + 1))) + " pence";
        }
        String said = words.quantity(main) + " " + currency + (main.equals("1") ? "" : "s");
        return pence ? said + " " + words.cardinal(Long.parseLong(amount.substring(point + 1))) : said;
    }

    private static String group(Matcher m, int group) {
        String found = m.group(group);
        return found == null ? "" : found;
    }
}
