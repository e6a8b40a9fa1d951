package crowdline.console.words;

import crowdline.show.Show;
import java.nio.file.Path;

/** What the Words place asks of the rest of the program. Each returns at once and answers through the window. */
public interface WordsHost {
    /** Answers nothing. */
    WordsHost NONE = new WordsHost() {
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

    /** Opens the words of the show that is open; answers with a {@link WordsOpened} or a message. */
    void open();

    /** The show was edited: what depends on it is wanted anew. Only the newest counts. */
    void edited(Show show);

    /** Saves over the file the words came from, unless that was changed meanwhile. */
    void save(Show show);

    /** Saves into another file and goes on with that. */
    void saveAs(Show show, Path file);

    /** Saves, and then lets the running show say these words. */
    void intoLive(Show show);
}
