package crowdline.measure;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Hours of the day as clocks at an aerodrome show them: 24 hours, two digits each, whatever the machine's own language is. */
public final class Hour {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    /** Hours, minutes, and whether it is before noon or after, with whatever people write between them. */
    private static final Pattern TYPED =
            Pattern.compile("(\\d{1,2})(?:\\s*[:.,h]\\s*|\\s+)?(\\d\\d)\\s*(?:([ap])\\.?\\s*m\\.?|h|hrs|hours)?");

    private Hour() {}

    /** An hour as people type it: 14:05, 14.05, 14h05, 1405, 9:05, 2.05 pm; nothing if it is none. */
    public static Optional<LocalTime> typed(String text) {
        Matcher matcher = TYPED.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(matcher.group(1));
        int minute = Integer.parseInt(matcher.group(2));
        String half = matcher.group(3);
        if (hour > (half == null ? 23 : 12) || (half != null && hour == 0) || minute > 59) {
            return Optional.empty();
        }
        return Optional.of(LocalTime.of(half == null ? hour : hour % 12 + (half.equals("p") ? 12 : 0), minute));
    }

    /** As 14:05. */
    public static String toTheMinute(TemporalAccessor at) {
        return MINUTE.format(at);
    }

    /** As 14:05:09. */
    public static String toTheSecond(TemporalAccessor at) {
        return SECOND.format(at);
    }
}
