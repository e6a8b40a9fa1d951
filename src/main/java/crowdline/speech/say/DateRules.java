package crowdline.speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/** Dates, years, decades, ordinals and the time of day. */
final class DateRules {

    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");
    private static final Map<String, String> DAYS = Map.of(
            "Mon",
            "Monday",
            "Tue",
            "Tuesday",
            "Wed",
            "Wednesday",
            "Thu",
            "Thursday",
            "Fri",
            "Friday",
            "Sat",
            "Saturday",
            "Sun",
            "Sunday");
    private static final String MONTH = "(Jan(?:uary|\\b\\.?)|Feb(?:ruary|\\b\\.?)|Mar(?:ch|\\b\\.?)|Apr(?:il|\\b\\.?)"
            + "|May|June?|July?|Aug(?:ust|\\b\\.?)|Sept?(?:ember|\\b\\.?)|Oct(?:ober|\\b\\.?)|Nov(?:ember|\\b\\.?)"
            + "|Dec(?:ember|\\b\\.?))";
    private static final String DAY = "([12]\\d|3[01]|0?[1-9])(?:st|nd|rd|th)?";
    private static final String YEAR_AFTER = "(?:,? ((?:1\\d|20)\\d\\d)(?![\\d,.]?\\d))?";

    /** Four digits before one of these count something. */
    static final String COUNTED = "(?! ?(?:feet|foot|met(?:re|er)s?|miles?|kilomet\\p{L}+|knots?|horsepower"
            + "|kilo\\p{L}*|pounds?|tonnes?|tons?|people|spectators|visitors|members|seconds?|minutes?|hours?|days"
            + "|revs?|revolutions|litres?|gallons?|degrees?|newtons?|watts?|times|aircraft|aeroplanes|planes|pilots"
            + "|volunteers|flights|rivets|parts|turns|rolls|examples|nautical|square|cubic|per|a second|an hour)\\b)";

    /** What comes before a time of day rather than a number of hours. */
    private static final String AT = "(?<=\\b(?:[Aa]t|[Uu]ntil|[Tt]ill|[Ff]rom|[Bb]y) )";

    private static final String WORD_END = "(?![\\p{L}\\p{N}])";

    private final SpelledNumbers words;

    DateRules(SpelledNumbers words) {
        this.words = words;
    }

    /** Asked before quantities: what a quantity would misread. */
    List<SayingRule> timesAndDates() {
        List<SayingRule> rules = new ArrayList<>();
        rules.add(SayingRule.of(
                "((?:1\\d|20)\\d\\d)-(0\\d|1[0-2])-([0-2]\\d|3[01])(?![\\d-])",
                m -> day("the ", intOf(m, 3), MONTHS.get(Math.max(0, intOf(m, 2) - 1)), m.group(1))));
        rules.add(SayingRule.of(
                "(\\d{1,2})([/.-])(\\d{1,2})\\2((?:19|20)?\\d\\d)(?![\\d/-])(?!\\.\\d)",
                // Which number is the month is not said: readers differ, and a wrong guess would be heard.
                m -> cardinal(m, 1) + " " + cardinal(m, 3) + " "
                        + (m.group(4).length() == 4 ? words.year(intOf(m, 4)) : words.inName(m.group(4)))));
        rules.add(SayingRule.of(
                "(?<=\\b[Tt]he )" + DAY + " ?([-–/]) ?(?=" + DAY + " (?:of )?" + MONTH + ")", m -> daysUntil("", m)));
        rules.add(SayingRule.of(DAY + " ?([-–/]) ?(?=" + DAY + " (?:of )?" + MONTH + ")", m -> daysUntil("the ", m)));
        rules.add(SayingRule.of(
                "(?<=\\b[Tt]he )" + DAY + " (?:of )?" + MONTH + YEAR_AFTER + "(?!\\p{L})",
                m -> day("", intOf(m, 1), month(m.group(2)), m.group(3))));
        rules.add(SayingRule.of(
                DAY + " (?:of )?" + MONTH + YEAR_AFTER + "(?!\\p{L})",
                m -> day("the ", intOf(m, 1), month(m.group(2)), m.group(3))));
        rules.add(SayingRule.of(
                "(\\d{1,2})(?:[:.]([0-5]\\d))?(?: ?([ap])\\.?m\\.?)? ?[-–] ?(?=\\d{1,2}(?:[:.][0-5]\\d)? ?[ap]\\.?m\\b)",
                m -> cardinal(m, 1) + (m.group(2) == null ? "" : minutes(m, ""))
                        + (m.group(3) == null ? "" : " " + m.group(3) + " m") + " to"));
        rules.add(SayingRule.of(
                "([01]?\\d|2[0-3]):([0-5]\\d)() ?[-–] ?(?=\\d{1,2}:[0-5]\\d(?!\\d))", m -> fullClock(m) + " to"));
        rules.add(SayingRule.of(
                "([01]?\\d|2[0-3]|24(?=:00)):([0-5]\\d)(?::[0-5]\\d)?(?!\\d)(?: ?([ap])\\.?m\\b(?:\\.(?! \\p{Lu}|$))?)?"
                        + "(?: ?(h(?:ou)?rs)(?!\\p{L}))?",
                m -> m.group(3) != null
                        ? halfDay(m)
                        : m.group(4) == null ? hourOfTheDay(m) : cardinal(m, 1) + minutes(m, " hundred") + " hours"));
        rules.add(SayingRule.of(
                AT + "([01]\\d|2[0-3])([0-5]\\d) ?h(?:(?:ou)?rs)?(?!\\p{L})", m -> fullClock(m) + " hours"));
        rules.add(SayingRule.of("(0\\d)([0-5]\\d)(?: ?h(?:(?:ou)?rs)?)?(?![\\p{L}\\d]|[.,:/-]\\d)", this::fullClock));
        rules.add(SayingRule.of(
                "(?<=\\b(?:[Aa]t|[Uu]ntil|[Tt]ill) )([01]?\\d|2[0-3])\\.([0-5]\\d)(?![\\d%]|[.,]\\d|[ -]?"
                        + SpokenUnits.REGEX + "| \\p{L}*(?:et|tre|les|tres|illion)\\b| ?[ap]\\.?m\\b)",
                this::hourOfTheDay));
        rules.add(SayingRule.of("(1[0-2]|0?[1-9])\\.([0-5]\\d) ?([ap])\\.?m\\b(?:\\.(?! \\p{Lu}|$))?", this::halfDay));
        rules.add(SayingRule.of(
                "(\\d{1,2}) ?h(?:rs?)? ?(\\d{1,2}) ?m(?:ins?)?" + WORD_END,
                m -> count(m, 1, "hour") + " " + count(m, 2, "minute")));
        rules.add(SayingRule.of(
                "(1[0-2]|0?[1-9]) ?([ap])\\.?m\\b(?:\\.(?! \\p{Lu}|$))?",
                m -> cardinal(m, 1) + " " + m.group(2) + " m"));
        rules.add(SayingRule.of("(\\d{2}):\\1(?![:\\d])", m -> cardinal(m, 1) + " " + cardinal(m, 1)));
        rules.add(SayingRule.of("(\\d{1,4}):(\\d{1,4})(?![:\\d])", m -> cardinal(m, 1) + " to " + cardinal(m, 2)));
        rules.add(SayingRule.of("((?!1000)(?:1\\d|20)\\d0)'?s(?!\\p{L})", m -> words.decade(intOf(m, 1))));
        rules.add(SayingRule.of("'(\\d0)s(?!\\p{L})", m -> words.decade(intOf(m, 1))));
        rules.add(SayingRule.of(
                "(?<=(?:the|The|mid|early|late|her|his|their)[ -])([2-9]0)s(?!\\p{L})",
                m -> words.decade(intOf(m, 1))));
        rules.add(SayingRule.of(
                "((?:19|20)\\d\\d)(?: ?[-–] ?|/)((?:19|20)?\\d\\d)(?![\\d,.]?\\d)(?![ -]?" + SpokenUnits.REGEX + ")"
                        + COUNTED,
                m -> words.year(intOf(m, 1)) + " to "
                        + (m.group(2).length() == 4 ? words.year(intOf(m, 2)) : words.inName(m.group(2)))));
        rules.add(SayingRule.of(
                "(\\d{1,4})(?:st|nd|rd|th) ?([-–/]) ?(?=\\d{1,4}(?:st|nd|rd|th)(?!\\p{L}))", m -> daysUntil("", m)));
        rules.add(SayingRule.of("2nd(?= (?:Lt|Lieutenant)\\b)", m -> "Second"));
        rules.add(SayingRule.of(
                "(\\d{1,12}|\\d{1,3}(?:,\\d{3}){1,3})(?:st|nd|rd|th)(?!\\p{L})",
                m -> words.ordinal(Long.parseLong(m.group(1).replace(",", "")))));
        return rules;
    }

    /** Asked after quantities: four digits without a unit. */
    List<SayingRule> years() {
        return List.of(
                SayingRule.of(
                        "((?:19|20)\\d\\d)(?!\\d|[.,]\\d|\\p{L}|[-/]\\d)" + COUNTED, m -> words.year(intOf(m, 1))),
                SayingRule.of(
                        "(?<=\\b(?:[Ii]n|[Ss]ince|[Uu]ntil|[Bb]efore|[Aa]fter|[Ff]rom|[Bb]y|[Cc]irca|of) )"
                                + "(1[1-8]\\d\\d)(?!\\d|[.,]\\d|\\p{L}|[-/]\\d)" + ClockRules.NOT_COUNTED,
                        m -> words.year(intOf(m, 1))));
    }

    /** Asked where a word starts: "June 12, 1944", "June 1944" is left to the year. */
    List<SayingRule> monthFirst() {
        return List.of(
                SayingRule.of(
                        MONTH + " " + DAY + YEAR_AFTER + "(?![\\p{L}\\d]|[:.,]\\d)",
                        m -> month(m.group(1)) + " the " + words.ordinal(intOf(m, 2))
                                + (m.group(3) == null ? "" : ", " + words.year(intOf(m, 3)))),
                SayingRule.of(
                        "(Mon|Tue|Wed|Thu|Fri|Sat|Sun)(?:s|rs|urs)?\\.?,?(?= " + DAY + " (?:of )?" + MONTH + ")",
                        m -> DAYS.get(m.group(1))),
                SayingRule.of("(?:Jan|Feb|Aug|Sept|Sep|Oct|Nov|Dec)(?!\\p{L})\\.?(?= \\d{4})", m -> month(m.group())));
    }

    private String day(String article, int day, String month, @Nullable String year) {
        String date = article + words.ordinal(day) + " of " + month;
        return year == null ? date : date + " " + words.year(Integer.parseInt(year));
    }

    private String halfDay(Matcher m) {
        return cardinal(m, 1) + minutes(m, "") + " " + m.group(3) + " m";
    }

    private String hourOfTheDay(Matcher m) {
        if (intOf(m, 1) == 0 && intOf(m, 2) > 0) {
            return fullClock(m);
        }
        boolean oClock = intOf(m, 1) >= 1 && intOf(m, 1) <= 12;
        return cardinal(m, 1) + minutes(m, oClock ? " o'clock" : " hundred");
    }

    private String daysUntil(String article, Matcher m) {
        return article + words.ordinal(intOf(m, 1)) + (m.group(2).equals("/") ? " and" : " to");
    }

    private String fullClock(Matcher m) {
        return words.clock(m.group(1), intOf(m, 2));
    }

    private String minutes(Matcher m, String ifNone) {
        int minute = intOf(m, 2);
        return minute == 0 ? ifNone : (minute < 10 ? " oh " : " ") + words.cardinal(minute);
    }

    private String count(Matcher m, int group, String of) {
        return cardinal(m, group) + " " + of + (intOf(m, group) == 1 ? "" : "s");
    }

    private String cardinal(Matcher m, int group) {
        return words.cardinal(intOf(m, group));
    }

    private static int intOf(Matcher m, int group) {
        return Integer.parseInt(m.group(group));
    }

    private static String month(String written) {
        String start = written.substring(0, 3).toLowerCase(Locale.ROOT);
        return MONTHS.stream()
                .filter(month -> month.toLowerCase(Locale.ROOT).startsWith(start))
                .findFirst()
                .orElse(written);
    }
}
