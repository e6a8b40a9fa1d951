package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderView;
import crowdline.loaded.Found;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The running show as the Live place knows it. On the event thread; nothing here waits. */
public interface OnAir {
    /** What Live shows at this moment. It follows from what was last told and from the clocks; asking changes nothing. */
    LiveView view();

    /** Whether what is planned to be said is on a screen: what nobody can read is not taken to be said. */
    void inSight(boolean now);

    /**
     * Its incident page, which it has not opened itself yet.
     *
     * @param openS how long ago the page was called for, seconds
     */
    IncidentView incident(double openS);

    /**
     * Carries out a command of Live.
     *
     * @param handles what the keys took hold of in the view in which it was given
     */
    void carryOut(Command command, Handles handles);

    /** The running order at this moment. */
    OrderView order();

    /** The duties of the day at this moment. */
    DutiesView duties();

    /**
     * An act is put in that nobody planned.
     *
     * @param words its name and its minutes, as they were typed
     * @param afterId the act it comes after, or null if it comes first
     * @return false if the words name none, which is then told
     */
    boolean putIn(String words, @Nullable String afterId);

    /** Whether an act is in the air. */
    boolean inTheAir();

    /**
     * What the second window shows at this moment.
     *
     * @param reader the name of who sits before it, or null for anybody who is not at the console
     */
    SecondView second(@Nullable String reader);

    /** Anything of the day that has these words, the best first. */
    List<Found> find(String words);

    /** Its announcements. */
    Announcing announcing();

    /** Words for the newest note, not blank. */
    void write(String words);

    /** The commentator has typed the word that leaves the incident page. */
    void resume();
}
