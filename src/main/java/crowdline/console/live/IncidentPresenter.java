package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.incident.IncidentView.ContactView;
import crowdline.console.live.strip.StripPresenter;
import crowdline.console.paint.Seconds;
import crowdline.show.Incident;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands on the incident page. Where nobody has agreed on words there are none: nothing is made up in their place. */
public final class IncidentPresenter {
    private static final double NANOS_PER_S = 1e9;
    private static final List<String> WITHOUT_WORDS =
            List.of("Stop talking.", "Look to the display director.", "Say only what the director gives you.");

    private IncidentPresenter() {}

    /**
     * The page of a show.
     *
     * @param incident what the organiser wrote, or null if nothing was written
     * @param hour the clock at the venue now
     * @param openS how long the page has been open, seconds
     */
    public static IncidentView of(@Nullable Incident incident, LocalTime hour, double openS) {
        if (incident == null) {
            return empty("Nobody has written this page for the show", noted(hour, openS), since(openS));
        }
        return new IncidentView(
                incident.agreement(),
                noted(hour, openS),
                since(openS),
                incident.firstSteps(),
                incident.words(),
                incident.contacts().stream()
                        .map(c -> new ContactView(c.role(), c.how()))
                        .toList());
    }

    /**
     * The page while no show is open.
     *
     * @param hour the clock here now
     * @param openS how long the page has been open, seconds
     */
    public static IncidentView withoutShow(LocalTime hour, double openS) {
        return empty("No show is open", noted(hour, openS), since(openS));
    }

    /** The same where nobody knows the hour. */
    public static IncidentView withoutShow() {
        return empty("No show is open", "", "");
    }

    private static IncidentView empty(String why, String noted, String since) {
        return new IncidentView(why, noted, since, WITHOUT_WORDS, List.of(), List.of());
    }

    private static String noted(LocalTime hour, double openS) {
        return "Noted " + StripPresenter.hour(hour.minusNanos((long) (openS * NANOS_PER_S)));
    }

    private static String since(double openS) {
        return Seconds.left(openS) + " ago";
    }
}
