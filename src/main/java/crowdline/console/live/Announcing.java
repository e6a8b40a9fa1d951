package crowdline.console.live;

import crowdline.console.incident.AnnouncementView;
import java.util.List;

/** The announcements of the running show as the Live place knows them. On the event thread; nothing here waits. */
public interface Announcing {
    /** All of the show, in its order, as they are at this moment. */
    List<AnnouncementView> all();

    /** Its page was opened. */
    void shown(String id);

    /**
     * A blank is filled in, for the rest of the day.
     *
     * @param asks what it asks for
     * @param said what is said for it, not blank
     */
    void fill(String id, String asks, String said);

    /** It was read out. Refused while something is to be filled in. */
    void readOut(String id);
}
