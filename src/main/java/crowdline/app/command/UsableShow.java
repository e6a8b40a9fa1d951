package crowdline.app.command;

import crowdline.app.shell.Terminal;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.show.Show;
import crowdline.show.check.LocatedFinding;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import java.nio.file.Path;
import java.util.List;

/** How every command gets the show it works on: a show that can be used, or everything in its way, printed. */
final class UsableShow {
    private final Terminal terminal;

    UsableShow(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * Reads a show.
     *
     * @throws ShowFileException if the file cannot be read, or if it has errors; these are printed first, a line each
     */
    Show read(Path file) throws ShowFileException {
        ShowReading reading = new ShowFile().read(file);
        Show show = reading.show();
        if (show == null) {
            throw refused(file, reading.findings());
        }
        return show;
    }

    /**
     * Reads a show, predicts it and has it learn from its passes.
     *
     * @param flights varied flights behind each band, 1 or more
     * @throws ShowFileException as {@link #read}, or if its acts cannot be computed
     */
    LoadedShow load(Path file, ShowLoader loader, int flights) throws ShowFileException {
        LoadedShow loaded;
        try {
            loaded = loader.load(file, flights).loaded();
        } catch (IllegalArgumentException e) {
            throw new ShowFileException(e.getMessage() + "; crowdline check " + file + " says where");
        }
        if (loaded == null) {
            throw refused(file, new ShowFile().read(file).findings());
        }
        return loaded;
    }

    private ShowFileException refused(Path file, List<LocatedFinding> findings) {
        findings.forEach(found -> terminal.err().println(found.asLine()));
        return new ShowFileException("the show " + file + " has errors and cannot be used until they are fixed;"
                + " crowdline check " + file + " lists them");
    }
}
