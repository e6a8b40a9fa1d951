package crowdline.live.event;

import crowdline.measure.Must;
import java.util.List;

/** What becomes of the organiser's words for an occasion that nobody can plan. The act goes on meanwhile. */
public sealed interface AnnouncementEvent extends LiveEvent {

    /** The id of the announcement. */
    String announcementId();

    /**
     * Its page was opened.
     *
     * @param occasion what it is for, so that the journal needs no show file to be read again
     */
    record AnnouncementShown(double atS, String announcementId, String occasion) implements AnnouncementEvent {
        public AnnouncementShown {
            Must.beTime("atS", atS);
            Must.beSaid("announcement id", announcementId);
            Must.beSaid("occasion", occasion);
        }
    }

    /**
     * A blank in it was filled in; it stays so for the rest of the day.
     *
     * @param blank what it asks for, as between its brackets
     * @param said what is said in its place
     */
    record BlankFilled(double atS, String announcementId, String blank, String said) implements AnnouncementEvent {
        public BlankFilled {
            Must.beTime("atS", atS);
            Must.beSaid("announcement id", announcementId);
            Must.beSaid("blank", blank);
            Must.beSaid("words for a blank", said);
        }
    }

    /**
     * It was read out.
     *
     * @param words what was said, paragraph by paragraph
     */
    record AnnouncementRead(double atS, String announcementId, String occasion, List<String> words)
            implements AnnouncementEvent {
        public AnnouncementRead {
            Must.beTime("atS", atS);
            Must.beSaid("announcement id", announcementId);
            Must.beSaid("occasion", occasion);
            words = List.copyOf(words);
        }
    }
}
