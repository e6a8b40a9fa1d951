package crowdline.console.passes;

import crowdline.timing.Pass;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * What a pass is called wherever it is shown: its number among those of its variant, how it was timed, and when, by the
 * hour of the venue.
 *
 * @param zone of the venue
 */
public record PassName(ZoneId zone) {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.UK);

    /**
     * Names a pass.
     *
     * @param number from 1, among the passes of the variant
     */
    public String of(int number, Pass pass) {
        String how = switch (pass.how()) {
            case WALKED -> "walked";
            case BY_HAND -> "by hand";
            case BY_LOG -> "from a log";
            case LIVE -> "live";
        };
        return "Pass " + number + ", " + how + ", " + WHEN.withZone(zone).format(pass.begunAt());
    }
}
