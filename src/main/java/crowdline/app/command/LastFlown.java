package crowdline.app.command;

import crowdline.app.shell.Folders;
import crowdline.app.shell.MonotonicTicker;
import crowdline.live.debrief.Debrief;
import crowdline.loaded.DayShow;
import crowdline.loaded.LoadedShow;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalReading;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** What was flown of a show last, from the journal of it. */
record LastFlown(JournalReading reading, Debrief debrief, LoadedShow loaded) {

    /** Empty if there is no journal of the show. */
    static Optional<LastFlown> of(Path file, LoadedShow loaded, Folders folders) throws ShowFileException {
        JournalShelf shelf = new JournalShelf(folders.journals(), JournalMachine.here(new MonotonicTicker()), 0);
        return shelf.last(JournalShow.of(file, ShowFile.bytes(file)))
                .map(reading -> of(
                        reading,
                        loaded.with(
                                DayShow.of(loaded.show(), reading.state().day().added()))));
    }

    private static LastFlown of(JournalReading reading, LoadedShow ofTheDay) {
        return new LastFlown(
                reading,
                Debrief.of(
                        ofTheDay.show(),
                        reading.state(),
                        ofTheDay.debriefSources(reading.zero(), (actId, variant) -> List.of())),
                ofTheDay);
    }

    /** What a journal says that somebody names, against the same show. */
    static LastFlown in(Path journal, LoadedShow loaded, Folders folders) throws ShowFileException {
        JournalReading reading =
                new JournalShelf(folders.journals(), JournalMachine.here(new MonotonicTicker()), 0).read(journal);
        return of(
                reading,
                loaded.with(DayShow.of(loaded.show(), reading.state().day().added())));
    }

    /** That there is none, and what to do. */
    static String none(Path file, Folders folders) {
        return "there is no journal of " + file + " in " + folders.journals()
                + "; run the show in Live first, or name the file it was run from";
    }

    /** The clock at the venue at a second of the session. */
    LocalTime hour(double atS) {
        return LocalTime.ofInstant(
                reading.zero().plusNanos(Math.round(atS * 1e9)),
                loaded.show().venue().timeZone());
    }
}
