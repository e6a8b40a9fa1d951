package crowdline.speech.say;

import java.util.List;
import java.util.regex.Matcher;

/**
 * The time of day in four bare digits ("at 1430", "1430 local"), and lengths of time in minutes and seconds. Four digits
 * are a time only where the words around them say so; a quantity with its unit stays one, and so does a year. Common
 * practice, no source.
 */
final class ClockRules {

    private static final String CLOCK = "([01]\\d|2[0-3])([0-5]\\d)";

    private static final String ANY_CLOCK = "(?:[01]\\d|2[0-3])[0-5]\\d";

    private static final String TIME = CLOCK + "(?![\\d,.]?\\d)(?!\\p{L})";

    /** Four digits that no unit or thing follows, nor the other end of a range that one follows. */
    static final String NOT_COUNTED = "(?![ -]?" + SpokenUnits.REGEX + ")(?!/)" + DateRules.COUNTED
            + "(?! ?(?:to|-|–|or|and) ?\\d[\\d,.]*(?:[ -]?" + SpokenUnits.REGEX
            + "| (?:feet|foot|met|mile|people|hour|spectator|visitor|rev|pound|kilo|horse|knot|member|flight)))";

    /** These name a clock. */
    private static final String ZONE =
            "(?= (?:local(?! (?:people|famil|school|pilot|club|business|volunteer|resident|shop|trader|child|firm))|UTC|GMT|BST|CET|CEST|Zulu|zulu)\\b)";

    /** Before hours that were flown rather than an hour of the day. */
    private static final String FLOWN =
            "(?<!\\b(?:has|have|had|flown|flew|over|of|than|about|with|logged|nearly|almost|some"
                    + "|around|after|for|her|his|their|my|another|total) )";

    /** 1900 to 2099 after these may be a year, and stay one. */
    private static final String UNTIL =
            "(?<=\\b(?:[Uu]ntil|[Tt]ill|[Ff]rom|[Bb]y|[Bb]efore|[Aa]fter|[Bb]etween|[Ss]lot) )";

    private final SpelledNumbers words;

    ClockRules(SpelledNumbers words) {
        this.words = words;
    }

    /** Most particular first. */
    List<SayingRule> rules() {
        return List.of(
                SayingRule.of(CLOCK + " ?Z(?![\\p{L}\\p{N}])", m -> clock(m) + " zulu"),
                SayingRule.of(TIME + ZONE, this::clock),
                SayingRule.of("(?<=\\b[Aa]t )" + CLOCK + "h(?![\\p{L}\\p{N}])", m -> clock(m) + " hours"),
                SayingRule.of(
                        FLOWN + CLOCK + " ?h(?:ou)?rs(?!\\p{L})(?! (?:of|on|in|flying|flight|flown|total|solo)\\b)",
                        m -> clock(m) + " hours"),
                SayingRule.of(
                        "(?<=\\b[Aa]t )" + CLOCK + " ?[-–] ?(?=" + TIME + NOT_COUNTED + ")", m -> clock(m) + " to"),
                SayingRule.of("(?<=\\b[Aa]t " + ANY_CLOCK + " ?[-–] ?)" + TIME + NOT_COUNTED, this::clock),
                SayingRule.of("(?<=\\b[Aa]t )" + TIME + NOT_COUNTED, this::clock),
                SayingRule.of(
                        "(?<=\\b" + ANY_CLOCK
                                + " (?:to|until|till|and) )(?<!(?:1[1-9]|20)\\d\\d (?:to|until|till|and) (?=(?:19|20)))"
                                + TIME + NOT_COUNTED,
                        this::clock),
                SayingRule.of(
                        "(?!19|20)([01]\\d|2[0-3])([0-5][05])(?<!00) ?[-–] ?(?=(?:[01]\\d|2[0-3])[0-5][05](?![\\d,.]?\\d))"
                                + "(?!\\d{4} ?[-–] ?\\d{4}[ -]?" + SpokenUnits.REGEX + ")(?![-–] ?\\d{4} ?\\p{L})",
                        m -> clock(m) + " to"),
                SayingRule.of(UNTIL + "(?!19|20)" + TIME + NOT_COUNTED, this::clock),
                SayingRule.of(
                        "(?<=(?<!\\d)(?!19|20)(?:[01]\\d|2[0-3])[0-5][05](?<!00) ?[-–] ?)([01]\\d|2[0-3])([0-5][05])(?![\\d,.]?\\d|\\p{L})"
                                + NOT_COUNTED,
                        this::clock),
                SayingRule.of(
                        "(\\d{1,2}) ?m(?:ins?)? ?([0-5]?\\d) ?s(?:ecs?)?(?![\\p{L}\\p{N}])",
                        m -> count(m.group(1), "minute") + " " + count(m.group(2), "second")),
                SayingRule.of(
                        "(\\d{1,2}):([0-5]\\d) ?min(?:ute)?s?(?!\\p{L})",
                        m -> count(m.group(1), "minute") + (m.group(2).equals("00") ? "" : " " + tail(m.group(2)))));
    }

    private String clock(Matcher m) {
        return words.clock(m.group(1), Integer.parseInt(m.group(2)));
    }

    private String tail(String seconds) {
        return (seconds.startsWith("0") ? "oh " : "") + words.cardinal(Integer.parseInt(seconds));
    }

    private String count(String number, String of) {
        int value = Integer.parseInt(number);
        return words.cardinal(value) + " " + of + (value == 1 ? "" : "s");
    }
}
