package crowdline.speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;

/** Numbers that measure something: plain and decimal numbers, ranges, fractions, money, all with their units. */
public final class QuantityRules {

    /** A number without sign, no groups. Repeats are bounded so that a megabyte of digits cannot exhaust the stack. */
    public static final String NUMBER = "(?:(?:\\d{1,3}(?:,\\d{3}){1,5}(?![,\\d])|\\d+)(?:\\.\\d+)?|\\.\\d+)";

    private static final String SIGN = "([+±-]?)";

    /** A full stop after a unit that cannot end the sentence, because it goes on in lower case. */
    private static final String UNIT = "(?:[ -]?(" + SpokenUnits.REGEX + ")(?:\\.(?= \\p{Ll}))?)?";

    private static final String MULTIPLE = "[kK]|[mM]|bn|thousand|million|billion";
    /** Two of these make an area; two of anything else are simply two. */
    private static final Set<String> ACROSS = Set.of("", "m", "ft", "cm", "mm", "km", "ins", "yd", "yds", "mi");

    private static final Map<String, String> CURRENCIES = Map.of("£", "pound", "$", "dollar", "€", "euro");
    private static final Map<String, String> MULTIPLES = Map.of(
            "k",
            "thousand",
            "K",
            "thousand",
            "m",
            "million",
            "M",
            "million",
            "bn",
            "billion",
            "thousand",
            "thousand",
            "million",
            "million",
            "billion",
            "billion");

    /** Things that a measure stands before as one: "a 9.5 L engine" is of nine point five litre. */
    private static final String MEASURED = "(?:engines?|motors?|tanks?|propellers?|props?|poles?|wings?|wingspan|runway"
            + "|crosswind|headwind|tailwind|breeze|radius|lines?|banner|flag)";

    private final SpelledNumbers words;

    QuantityRules(SpelledNumbers words) {
        this.words = words;
    }

    /** Most particular first. */
    List<SayingRule> rules() {
        List<SayingRule> rules = new ArrayList<>();
        rules.add(SayingRule.of(
                "\\+ ?(" + NUMBER + ")(?: ?" + SpokenUnits.REGEX + ")? ?/ ?[-–] ?(" + NUMBER + ")" + UNIT,
                m -> "plus " + words.quantity(group(m, 1)) + ", minus " + withUnit(m, 2, 3)));
        rules.add(SayingRule.of(
                "- ?(" + NUMBER + ")(?: ?" + SpokenUnits.REGEX + ")? ?/ ?\\+ ?(" + NUMBER + ")" + UNIT,
                m -> "minus " + words.quantity(group(m, 1)) + ", plus " + withUnit(m, 2, 3)));
        signs(rules);
        rules.addAll(new LengthRules(words).rules());
        rules.add(continental());
        rules.add(SayingRule.of("([£$€]) ?(" + NUMBER + ")(?: ?(" + MULTIPLE + ")(?![\\p{L}\\p{N}]))?", this::money));
        rules.addAll(new FractionRules(words).rules());
        rules.add(SayingRule.of(
                SIGN + "(" + NUMBER + ")(?: ?" + SpokenUnits.REGEX + ")?(?:[-–]| – )(" + NUMBER + ")(?![-–]\\d)" + UNIT,
                m -> sign(m) + words.quantity(group(m, 2)) + " to " + withUnit(m, 3, 4)));
        rules.add(SayingRule.of(
                "(" + NUMBER + ")(?: ?" + SpokenUnits.REGEX + ")? ?[x×] ?(" + NUMBER + ")" + UNIT,
                m -> words.quantity(group(m, 1))
                        + (ACROSS.contains(group(m, 3)) ? " by " : " times ")
                        + withUnit(m, 2, 3)));
        rules.add(SayingRule.of(
                "(" + NUMBER + ")(?:x| ?×)(?![\\p{L}\\p{N}])", m -> words.quantity(group(m, 1)) + " times"));
        // "a 45° line": after the article the unit stands before a thing and is said as one.
        rules.add(SayingRule.of(
                "(?<=\\b[Aa]n? )(" + NUMBER + ")[ -]?(" + SpokenUnits.REGEX + ")(?= \\p{L})",
                m -> words.quantity(group(m, 1)) + " " + SpokenUnits.say(group(m, 2), true)));
        rules.add(SayingRule.of(
                "(" + NUMBER + ")[ -]?(" + SpokenUnits.REGEX + ")(?= " + MEASURED + "\\b)",
                m -> words.quantity(group(m, 1)) + " " + SpokenUnits.say(group(m, 2), true)));
        rules.add(SayingRule.of(
                SIGN + " ?(" + NUMBER + ")[ -]?(" + SpokenUnits.REGEX + ")(?:\\.(?= \\p{Ll}))?",
                m -> sign(m) + withUnit(m, 2, 3)));
        return rules;
    }

    /** Signs before a number, and words for large ones. */
    private void signs(List<SayingRule> rules) {
        rules.add(SayingRule.of("[~≈] ?(?=[\\d.])", m -> "about"));
        rules.add(SayingRule.of("#(?=\\d)", m -> "number"));
        rules.add(SayingRule.of("≥ ?(?=\\d)", m -> "at least"));
        rules.add(SayingRule.of("≤ ?(?=\\d)", m -> "at most"));
        rules.add(SayingRule.of("> ?(?=\\d)", m -> "more than"));
        rules.add(SayingRule.of("< ?(?=\\d)", m -> "less than"));
        rules.add(SayingRule.of(
                "([£$€]) ?(" + NUMBER + ")(?:[-–]| – )[£$€]?(" + NUMBER + ")(?: ?(" + MULTIPLE
                        + ")(?![\\p{L}\\p{N}]))?",
                m -> words.quantity(group(m, 2)) + " to " + words.quantity(group(m, 3))
                        + (group(m, 4).isEmpty() ? "" : " " + MULTIPLES.get(group(m, 4))) + " "
                        + CURRENCIES.get(group(m, 1)) + "s"));
        rules.add(SayingRule.of(
                "(" + NUMBER + ") ?(?:m|mn|mln)(?= (?:people|spectators|visitors|viewers|pounds|dollars|euros|views"
                        + "|miles|passengers|hours|flights|years)\\b)",
                m -> words.quantity(group(m, 1)) + " million"));
        rules.add(SayingRule.of(
                "(" + NUMBER + ")k(?= (?:people|spectators|visitors|viewers|pounds|views|followers|fans)\\b)",
                m -> words.quantity(group(m, 1)) + " thousand"));
        rules.add(SayingRule.of(
                "(\\d{1,2})p(?![\\p{L}\\p{N}])",
                m -> words.quantity(group(m, 1)) + (group(m, 1).equals("1") ? " penny" : " pence")));
        rules.add(
                SayingRule.of("(" + NUMBER + ") ?bn(?![\\p{L}\\p{N}])", m -> words.quantity(group(m, 1)) + " billion"));
        rules.add(SayingRule.of(
                "(?<=\\b[Aa]n? )([£$€])(" + NUMBER + ")(?: ?(" + MULTIPLE + "))?(?=[ -]\\p{L})",
                m -> words.quantity(group(m, 2)) + (group(m, 3).isEmpty() ? "" : " " + MULTIPLES.get(group(m, 3))) + " "
                        + CURRENCIES.get(group(m, 1))));
        // Turns by their angle: "two 360s", "a 180".
        rules.add(SayingRule.of("(180|270|360|540|720)s(?!\\p{L})", m -> {
            String name = words.inName(group(m, 1));
            return (name.endsWith("y") ? name.substring(0, name.length() - 1) + "ie" : name) + "s";
        }));
        rules.add(SayingRule.of(
                "(?<=\\b[Aa] )(180|270|360|540|720)(?=[.,;:!?](?!\\d)| ?$| (?:turn|spin|flick)\\b)",
                m -> words.inName(group(m, 1))));
        rules.add(SayingRule.of(
                "(\\d{1,2})[ -]?pt(?=[ -](?:hesitation )?roll)", m -> words.quantity(group(m, 1)) + " point"));
        rules.add(SayingRule.of("100s(?= (?:of|more)\\b)", m -> "hundreds"));
        rules.add(SayingRule.of("1,?000s(?= (?:of|more)\\b)", m -> "thousands"));
        rules.add(SayingRule.of(
                "([+-]?)(\\d{1,3}(?:\\.\\d)?)([CF])(?![\\p{L}\\p{N}]|-\\p{L})",
                m -> sign(m) + words.quantity(group(m, 2)) + " degrees "
                        + (group(m, 3).equals("C") ? "Celsius" : "Fahrenheit")));
    }

    /** A number with a comma for its point, as some write it; only where it measures something. */
    private SayingRule continental() {
        return SayingRule.of(
                SIGN + "(\\d{1,3}),(\\d{1,2})[ -]?(" + SpokenUnits.REGEX + ")",
                m -> sign(m) + words.quantity(group(m, 2) + "." + group(m, 3)) + " "
                        + SpokenUnits.say(group(m, 4), false));
    }

    /** A number on its own; asked last, when it is no year, time or date. */
    SayingRule plain() {
        return SayingRule.of(SIGN + "(" + NUMBER + ")", m -> sign(m) + words.quantity(group(m, 2)));
    }

    private String withUnit(Matcher m, int number, int unit) {
        String digits = group(m, number);
        String symbol = group(m, unit);
        if (symbol.isEmpty()) {
            return words.quantity(digits);
        }
        return words.quantity(digits) + " "
                + SpokenUnits.say(symbol, digits.equals("1") || SpokenUnits.beforeThing(m, unit));
    }

    private static String sign(Matcher m) {
        return switch (group(m, 1)) {
            case "+" -> "plus ";
            case "-" -> "minus ";
            case "±" -> "plus or minus ";
            default -> "";
        };
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
