package crowdline.app.window.walk;

import crowdline.console.walk.Notes;
import crowdline.show.FigureNote;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.FigureNotesFile;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** The notes on a show's figures: in memory to be read at once, and written to their file on another thread. */
final class ShowNotes implements Notes {
    private final FigureNotesFile file;
    private final Executor io;
    private final Consumer<String> complain;
    private volatile List<FigureNote> notes = List.of();
    /** False if the file there cannot be read: it is then left alone. */
    private volatile boolean writable = true;

    /**
     * Reads the file.
     *
     * @param complain told a sentence when notes cannot be read or kept
     */
    ShowNotes(FigureNotesFile file, Executor io, Consumer<String> complain) {
        this.file = file;
        this.io = io;
        this.complain = complain;
        try {
            notes = file.read();
        } catch (ShowFileException e) {
            writable = false;
            complain.accept(e.getMessage() + "; notes are kept until the program ends");
        }
    }

    @Override
    public List<FigureNote> all() {
        return notes;
    }

    @Override
    public void keep(List<FigureNote> next) {
        notes = List.copyOf(next);
        if (writable) {
            io.execute(() -> {
                try {
                    file.write(notes);
                } catch (ShowFileException e) {
                    complain.accept(e.getMessage() + "; the note is kept until the program ends");
                }
            });
        }
    }
}
