package crowdline.speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;

/**
 * Feet and inches, written with letters or with their marks ({@code 6' 2"}). "in" alone is only an inch where something
 * is so wide or so long, and a mark only where it does not close a quotation.
 */
final class LengthRules {

    private static final String NUMBER = QuantityRules.NUMBER;

    /** Where no quotation is open that the mark could close. */
    private static final String NO_OPEN_DOUBLE = "(?<!(?:^|[ (])\"[^\"]{1,200})";

    private static final String NO_OPEN_SINGLE = "(?<!(?:^|[ (])'[^']{1,200})";

    /** How far something reaches: after these the measure stands in the plural. */
    private static final String REACH =
            "(?:wide|long|high|tall|across|deep|thick|apart|in diameter|of (?:rain|snow)|by|x|×)";

    private static final String THING =
            "(?:wheels?|propellers?|props?|spinners?|tyres?|model|models|gauge|blades?|pipe|screen"
                    + "|diameter|wingspan|disc|guns?|square)";

    /** Words that go on with the sentence rather than name what is so large. */
    private static final String GOES_ON =
            "(?:in|and|or|to|at|from|off|up|below|above|over|under|is|was|the|a|it|he|she|they"
                    + "|with|for|on|into|as|than|then)";

    private final SpelledNumbers words;

    LengthRules(SpelledNumbers words) {
        this.words = words;
    }

    /** Most particular first. */
    List<SayingRule> rules() {
        List<SayingRule> rules = new ArrayList<>();
        rules.add(SayingRule.of(
                "(\\d{1,3}) ?(?:ft|'|feet|foot) ?(\\d|1[01]) ?(?:ins?\\b|inch(?:es)?\\b|\"|″|'')",
                m -> feet(m) + " " + inches(m.group(2), false)));
        rules.add(SayingRule.of(
                "(\\d{1,3}) ?(?:ft|') ?(\\d|1[01])(?![\\p{L}\\d./,½¼¾x×'%:°]|[ -]\\p{L})",
                m -> feet(m) + " " + words.quantity(m.group(2))));
        rules.add(
                SayingRule.of("(" + NUMBER + ") ?in\\.?(?= " + REACH + "(?!\\p{L}))", m -> inches(m.group(1), false)));
        rules.add(SayingRule.of(
                "(?<=\\b[Aa]n? )(" + NUMBER + ")[ -]?(?:in|\"|″)(?= (?!" + GOES_ON + "(?!\\p{L}))\\p{Ll})",
                m -> inches(m.group(1), true)));
        rules.add(SayingRule.of(
                "(" + NUMBER + ") ?(?:in|\"|″)(?= " + THING + "(?!\\p{L}))", m -> inches(m.group(1), true)));
        rules.add(SayingRule.of("(" + NUMBER + ")-in(?=[- ]\\p{Ll})", m -> inches(m.group(1), true)));
        rules.add(SayingRule.of(
                "(?<!\\p{L} \\d{1,3} in \\d{0,3})(" + NUMBER + ") in(?=[.,;:)!?](?!\\d)|$)",
                m -> inches(m.group(1), false)));
        rules.add(SayingRule.of(
                NO_OPEN_DOUBLE + "(" + NUMBER + ") ?(?:\"|″)(?![\\p{L}\\d])", m -> inches(m.group(1), false)));
        rules.add(SayingRule.of(NO_OPEN_SINGLE + "(\\d{1,3})'(?![\\p{L}\\d'])", this::feet));
        return rules;
    }

    private String feet(Matcher m) {
        return words.quantity(m.group(1)) + (m.group(1).equals("1") ? " foot" : " feet");
    }

    private String inches(String number, boolean beforeThing) {
        return words.quantity(number) + (number.equals("1") || beforeThing ? " inch" : " inches");
    }
}
