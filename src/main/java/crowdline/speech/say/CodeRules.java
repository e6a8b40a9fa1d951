package crowdline.speech.say;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/** Numbers that count nothing: telephones, levels, winds, countdowns, addresses; said as codes. */
final class CodeRules {

    private static final String NO_MORE_WORD = "(?![\\p{L}\\p{N}])";

    /** How an address ends, so that "roll.Then" is not one. */
    private static final String ENDINGS = "(?:com|org|net|info|aero|tv|co|uk|ie|eu|de|fr|gov|example)";

    private final SpelledNumbers words;

    CodeRules(SpelledNumbers words) {
        this.words = words;
    }

    /** Asked where a number or a sign starts, before everything else. */
    List<SayingRule> numbers() {
        return List.of(
                SayingRule.of("#(?=\\p{L})", m -> "hashtag"),
                SayingRule.of(
                        "0\\d{2,5}[ -]\\d{3,6}(?:[ -]?,?\\d{3,4})?(?![\\d/])(?! ?(?:to|-) ?\\d)",
                        m -> words.digits(m.group().replaceAll("\\D", ""))),
                SayingRule.of(
                        "(?<=\\b(?:[Dd]ial|[Cc]all|[Rr]ing) )(\\d{3})(?=[.,;:!?)](?!\\d)|$| (?:for|now|at once|if)\\b)",
                        m -> words.digits(m.group(1))),
                SayingRule.of("(?<=\\b[Ww]ind )([0-3]\\d0)/(?=\\d{1,2}(?!\\d))", m -> words.digits(m.group(1)) + " at"),
                SayingRule.of("\\d{1,2}(?:-\\d{1,2}){2,12}(?![\\d-]|/)", this::row));
    }

    /** Asked where a word starts, before the other words. */
    List<SayingRule> words() {
        return List.of(
                SayingRule.of("FL ?(\\d{2,3})" + NO_MORE_WORD, m -> "flight level " + words.digits(m.group(1))),
                SayingRule.of("T ?[-–](?= ?\\d{1,3} ?(?:s|secs?|seconds?|mins?|minutes?)(?!\\p{L}))", m -> "T minus"),
                SayingRule.of(
                        "V(ne|no|fe|so?)(?= ?(?:is )?\\d)",
                        m -> Initialisms.spelled("V" + m.group(1).toUpperCase(Locale.ROOT))),
                SayingRule.of("(noon|midnight|midday|dawn)[-–](?=\\d)", m -> m.group(1) + " to"),
                SayingRule.of(
                        "(?:https?://)?www\\.((?:[\\p{L}\\d-]{1,40}\\.){1,4}\\p{L}{2,10})/?" + NO_MORE_WORD,
                        m -> "w w w dot " + dotted(m)),
                SayingRule.of(
                        "(?:https?://)?((?:\\p{L}[\\p{L}\\d-]{1,40}\\.){1,3}" + ENDINGS + ")/?" + NO_MORE_WORD,
                        this::dotted),
                SayingRule.of("(\\p{L}{2,15})/(" + SpokenUnits.EACH_REGEX + ")", this::rate),
                SayingRule.of("(?<=\\p{N}/)(" + SpokenUnits.EACH_REGEX + ")", m -> SpokenUnits.each(m.group(1))),
                SayingRule.of(
                        "(he|his|him|she|her|hers)/(?=(?:he|his|him|she|her|hers)" + NO_MORE_WORD + ")",
                        m -> m.group(1) + " or"),
                SayingRule.of(
                        "([A-Z]{2,3}) ([1-9]\\d\\d)(?![\\p{L}\\p{N}]|[.,:/-]\\d|[ -]?" + SpokenUnits.REGEX
                                + "| \\p{Ll})",
                        m -> Initialisms.isSpelled(m.group(1), false)
                                ? Initialisms.spelled(m.group(1)) + " " + words.inName(m.group(2))
                                : null));
    }

    /** "4WD", "100LL": asked after the units. */
    SayingRule withCapitals() {
        return SayingRule.of(
                "(\\d{1,4})([A-Z]{2,4})" + NO_MORE_WORD,
                m -> words.quantity(m.group(1)) + " "
                        + (Initialisms.isSpelled(m.group(2), false) ? Initialisms.spelled(m.group(2)) : m.group(2)));
    }

    /** "5-4-3-2-1" is a countdown, with a beat between; other rows are read on. */
    private @Nullable String row(Matcher m) {
        String[] parts = m.group().split("-", -1);
        StringBuilder said = new StringBuilder();
        boolean counts = true;
        for (int i = 1; i < parts.length; i++) {
            counts &= Math.abs(Integer.parseInt(parts[i]) - Integer.parseInt(parts[i - 1])) == 1;
        }
        for (String part : parts) {
            said.append(said.isEmpty() ? "" : counts ? ", " : " ").append(words.quantity(part));
        }
        return said.toString();
    }

    private String dotted(Matcher m) {
        StringBuilder said = new StringBuilder();
        for (String part : m.group(1).split("\\.", -1)) {
            said.append(said.isEmpty() ? "" : " dot ");
            said.append(part.length() == 2 ? Initialisms.spelled(part) : digitsApart(part));
        }
        return said.toString();
    }

    private String digitsApart(String part) {
        StringBuilder said = new StringBuilder();
        for (char c : part.replace('-', ' ').toCharArray()) {
            boolean digit = c >= '0' && c <= '9';
            said.append(digit ? " " + words.digits(String.valueOf(c)) + " " : String.valueOf(c));
        }
        return said.toString().strip().replaceAll(" +", " ");
    }

    /** "miles/hour", also after a number: "200 miles/hour". */
    private @Nullable String rate(Matcher m) {
        String thing = m.group(1);
        if (thing.length() < 4 && !thing.equals("rev") && !thing.equals("revs")) {
            return null;
        }
        return thing + " " + SpokenUnits.each(m.group(2));
    }
}
