package crowdline.measure;

import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** Hours of the day as clocks at an aerodrome show them: 24 hours, two digits each, whatever the machine's own language is. */
public final class Hour {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private Hour() {}

    /** As 14:05. */
    public static String toTheMinute(TemporalAccessor at) {
        return MINUTE.format(at);
    }

    /** As 14:05:09. */
    public static String toTheSecond(TemporalAccessor at) {
        return SECOND.format(at);
    }
}
