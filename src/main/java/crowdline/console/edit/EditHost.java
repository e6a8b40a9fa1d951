package crowdline.console.edit;

import crowdline.show.Show;
import java.nio.file.Path;

/** What the editing of a show asks of the rest of the program. Each returns at once and answers through the window. */
public interface EditHost {
    /** Answers nothing. */
    EditHost NONE = new EditHost() {
        @Override
        public void open() {}

        @Override
        public void edited(Show show) {}

        @Override
        public void save(Show show) {}

        @Override
        public void saveAs(Show show, Path file) {}

        @Override
        public void intoLive(Show show) {}
    };

    /** Opens the show that is open for editing, unless it is already; answers through the window or with a message. */
    void open();

    /** The show was edited: what depends on it is wanted anew. Only the newest counts. */
    void edited(Show show);

    /** Saves over the file the show came from, unless that was changed meanwhile. */
    void save(Show show);

    /** Saves into another file and goes on with that. */
    void saveAs(Show show, Path file);

    /** Saves, and then lets Live run the show as it is now. */
    void intoLive(Show show);

    /** Begins an empty show, in place of the one that is open. */
    default void begin() {}

    /** What was done since the last save is given up. */
    default void giveUp() {}

    /** Whether nothing is flown and the incident page is closed, so that something may be asked. */
    default boolean isCalm() {
        return true;
    }

    /** Unsaved changes that were kept are in the edited show now, if there is a file for them; else they become a show. */
    default void broughtBack(UnsavedOffer offer) {}

    /** Unsaved changes that were kept are not wanted. */
    default void leave(UnsavedOffer offer) {}

    /** Looks whether the file was changed by somebody else; answers through the window if it was. */
    default void lookOutside(Show show) {}

    /** The file may be written over as it stands now, whoever changed it. */
    default void keepMine() {}

    /** Takes the show as its file has it now. */
    default void reload() {}
}
