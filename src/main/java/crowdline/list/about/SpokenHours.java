package crowdline.list.about;

import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Hours as they are spoken: "ten past four", "quarter to three", "four o'clock", "12 noon". */
final class SpokenHours {
    private static final String HOUR = "(" + Numbers.WORD + "|\\d{1,2})";
    private static final String MINUTES = "(twenty[- ]five|quarter|half|" + Numbers.WORD + "|\\d{1,2})";
    private static final Pattern SPOKEN =
            Pattern.compile("(?i)(?<![\\p{L}\\d.:])(?:a )?" + MINUTES + " (past|to) " + HOUR + "(?!\\p{L})");

    /** "Until twenty-five past": of the hour before it. */
    private static final Pattern UNTIL =
            Pattern.compile("(?i)(\\d{1,2}):(\\d{2}),? (?:until|till|to) (?:about |around )?" + MINUTES + " past\\b(?! "
                    + HOUR + "\\b)");

    private static final Pattern FULL = Pattern.compile("(?i)(?<![\\p{L}\\d])" + HOUR + " o['’]?clock");
    private static final Pattern NOON = Pattern.compile("(?i)\\b(?:12 ?|twelve )noon\\b|(?<=at |slot )noon\\b");
    /** "1500Z = 1600 local": the clock at the venue counts. */
    private static final Pattern ZULU = Pattern.compile("(?i)\\b\\d{2}[:.]?\\d{2} ?(?:z|utc|gmt)\\b[\\s=(,/]*"
            + "(?=\\d{2}[:.]?\\d{2} ?(?:l|lt|local|bst|cest)\\b)");

    private static final int NOON_H = 12;
    private static final int HOUR_MIN = 60;

    private SpokenHours() {}

    /** A note with its hours in digits. */
    static String inDigits(String note) {
        String local = ZULU.matcher(note).replaceAll("");
        String noon = NOON.matcher(local).replaceAll("12:00");
        String full = FULL.matcher(noon)
                .replaceAll(hour -> Numbers.of(hour.group(1)) <= NOON_H
                        ? (int) Numbers.of(hour.group(1)) + ":00"
                        : Matcher.quoteReplacement(hour.group()));
        String spoken = SPOKEN.matcher(full).replaceAll(SpokenHours::hour);
        return UNTIL.matcher(spoken)
                .replaceAll(until -> Matcher.quoteReplacement(String.format(
                        "%s:%s until %s:%02d",
                        until.group(1), until.group(2), until.group(1), minutes(until.group(3)))));
    }

    private static String hour(MatchResult spoken) {
        int minutes = minutes(spoken.group(1));
        int hour = (int) Numbers.of(spoken.group(3));
        boolean isTo = spoken.group(2).equalsIgnoreCase("to");
        boolean isTime = minutes < HOUR_MIN && hour >= 1 && hour <= NOON_H && (!isTo || minutes % 5 == 0);
        return isTime
                ? String.format(
                        "%d:%02d", isTo ? (hour + NOON_H - 2) % NOON_H + 1 : hour, isTo ? HOUR_MIN - minutes : minutes)
                : Matcher.quoteReplacement(spoken.group());
    }

    private static int minutes(String written) {
        return switch (written.toLowerCase(java.util.Locale.UK)) {
            case "quarter" -> 15;
            case "half" -> 30;
            case "twenty-five", "twenty five" -> 25;
            default -> (int) Numbers.of(written);
        };
    }
}
