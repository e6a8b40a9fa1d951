package crowdline.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
                "\\+ ?(" + NUMBER + ") ?/ ?[-–] ?(" + NUMBER + ")" + UNIT,
                m -> "plus " + words.quantity(group(m, 1)) + ", minus " + withUnit(m, 2, 3)));
        rules.add(Rule.of(
                "([£$€]) ?(" + NUMBER + ")(?: ?(k|m|bn|thousand|million|billion)(?![\\p{L}\\p{N}]))?", this::money));
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
                "(" + NUMBER + ") ?[x×] ?(" + NUMBER + ")" + UNIT,
                m -> words.quantity(group(m, 1)) + " by " + withUnit(m, 2, 3)));
        rules.add(Rule.of("(" + NUMBER + ") ?×", m -> words.quantity(group(m, 1)) + " times"));
        // "a 45° line": after the article the unit stands before a thing and is said as one.
        rules.add(Rule.of(
                "(?<=\\b[Aa]n? )(" + NUMBER + ")[ -]?(" + Units.REGEX + ")(?= \\p{L})",
                m -> words.quantity(group(m, 1)) + " " + Units.say(group(m, 2), true)));
        rules.add(Rule.of(
                SIGN + " ?(" + NUMBER + ")[ -]?(" + Units.REGEX + ")(?:\\.(?= \\p{Ll}))?",
                m -> sign(m) + withUnit(m, 2, 3)));
        return rules;
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
        String said = words.quantity(main) + " " + currency + (main.equals("1") ? "" : "s");
        return pence ? said + " " + words.cardinal(Long.parseLong(amount.substring(point + 1))) : said;
    }

    private static String group(Matcher m, int group) {
        String found = m.group(group);
        return found == null ? "" : found;
    }
}
