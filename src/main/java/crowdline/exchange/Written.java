package crowdline.exchange;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Times of day and lengths, as people write them into cells. */
final class Written {
    private static final Pattern CLOCK = Pattern.compile(
            "(?:at |from |ca\\.? |about |approx\\.? )?(\\d{1,2}) ?[:.h] ?(\\d{2})(?:[:.]\\d{2})? ?(am|pm|a\\.m\\.|p\\.m\\.)?(?: ?(?:hrs?|hours|h|z|l|utc|local|uhr))?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FOUR =
            Pattern.compile("(\\d{2})(\\d{2}) ?(?:hrs?|hours|h|z|l|utc|local)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern HOUR =
            Pattern.compile("(\\d{1,2}) ?(am|pm|a\\.m\\.|p\\.m\\.)", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBER = Pattern.compile(
            "(?:about |approx\\.? |ca\\.? |~)?(\\d{1,3}(?:[.,]\\d+)?) ?(?:minutes?|mins?\\.?|m|'|′)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SECONDS =
            Pattern.compile("(\\d{1,5}) ?(?:seconds?|secs?\\.?|s)", Pattern.CASE_INSENSITIVE);
    private static final Pattern MIXED = Pattern.compile(
            "(\\d{1,2}) ?(?:minutes?|mins?|m) ?(\\d{1,2}) ?(?:seconds?|secs?|s)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern PARTS = Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2}))?");
    private static final double MINUTES_IN_AN_HOUR = 60;

    private Written() {}

    /** The time of day at the beginning of a range or alone, as "14:30", "2.30 pm", "1430", "14h30"; empty if it is none. */
    static Optional<LocalTime> clock(String text) {
        String said = text.strip().replaceAll("\\s*[–—-]\\s*\\d.*$", "").replaceFirst("(?i)^12 noon$|^noon$", "12:00");
        for (Pattern pattern : new Pattern[] {CLOCK, FOUR, HOUR}) {
            Matcher matcher = pattern.matcher(said);
            if (matcher.matches()) {
                boolean hourAlone = pattern == HOUR;
                String half = hourAlone ? matcher.group(2) : pattern == CLOCK ? matcher.group(3) : null;
                return time(
                        Integer.parseInt(matcher.group(1)), hourAlone ? 0 : Integer.parseInt(matcher.group(2)), half);
            }
        }
        return Optional.empty();
    }

    /** The time of day at the end of a range, as in "14:30 - 14:42". */
    static Optional<LocalTime> rangeEnd(String text) {
        Matcher range = Pattern.compile(".*\\d.*?[–—-]\\s*(\\d.*)").matcher(text.strip());
        return range.matches() ? clock(range.group(1)) : Optional.empty();
    }

    private static Optional<LocalTime> time(int hour, int minute, @Nullable String half) {
        int of24 = hour;
        if (half != null) {
            boolean after = half.toLowerCase(Locale.ROOT).startsWith("p");
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            of24 = hour % 12 + (after ? 12 : 0);
        }
        try {
            return Optional.of(LocalTime.of(of24 == 24 && minute == 0 ? 0 : of24, minute));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /**
     * Minutes, as "12", "12 min", "0:12", "12:00", "0:12:00", "90 s", "6 min 30 s"; empty if it is none. No act lasts hours: "0:12"
     * is twelve minutes and "3:30" three and a half.
     */
    static OptionalDouble minutes(String text) {
        String said = text.strip().replaceFirst("(?i)^(\\d)(?: ?h| ?hours?| ?hrs?)$", "$1:00:00");
        Matcher parts = PARTS.matcher(said);
        if (parts.matches()) {
            double first = Double.parseDouble(parts.group(1));
            double second = Double.parseDouble(parts.group(2));
            if (parts.group(3) != null) {
                return positive(first * MINUTES_IN_AN_HOUR + second + Double.parseDouble(parts.group(3)) / 60);
            }
            return positive(first == 0 ? second : first + second / 60);
        }
        Matcher mixed = MIXED.matcher(said);
        if (mixed.matches()) {
            return positive(Double.parseDouble(mixed.group(1)) + Double.parseDouble(mixed.group(2)) / 60);
        }
        Matcher seconds = SECONDS.matcher(said);
        if (seconds.matches()) {
            return positive(Double.parseDouble(seconds.group(1)) / 60);
        }
        Matcher number = NUMBER.matcher(said);
        return number.matches()
                ? positive(Double.parseDouble(number.group(1).replace(',', '.')))
                : OptionalDouble.empty();
    }

    private static OptionalDouble positive(double minutes) {
        return minutes > 0 ? OptionalDouble.of(minutes) : OptionalDouble.empty();
    }
}
