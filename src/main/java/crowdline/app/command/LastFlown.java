package crowdline.app.command;

import crowdline.app.shell.Folders;
import crowdline.app.shell.MonotonicTicker;
import crowdline.loaded.FlownDay;
import crowdline.loaded.LoadedShow;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.Optional;

/** What was flown of a show last, from the journal of it. */
final class LastFlown {
    private LastFlown() {}

    /** Empty if there is no journal of the show. */
    static Optional<FlownDay> of(Path file, LoadedShow loaded, Folders folders) throws ShowFileException {
        return shelf(folders)
                .last(JournalShow.of(file, ShowFile.bytes(file)))
                .map(reading -> FlownDay.of(reading, loaded));
    }

    /** What a journal says that somebody names, against the same show. */
    static FlownDay in(Path journal, LoadedShow loaded, Folders folders) throws ShowFileException {
        return FlownDay.of(shelf(folders).read(journal), loaded);
    }

    private static JournalShelf shelf(Folders folders) {
        return new JournalShelf(folders.journals(), JournalMachine.here(new MonotonicTicker()), 0);
    }

    /** That there is none, and what to do. */
    static String none(Path file, Folders folders) {
        return "there is no journal of " + file + " in " + folders.journals()
                + "; run the show in Live first, or name the file it was run from";
    }
}
