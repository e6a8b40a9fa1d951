package crowdline.app.command;

import crowdline.app.shell.Terminal;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import java.nio.file.Files;
import java.nio.file.Path;

/** A show that a command writes, over its own file or into a new one. */
final class WrittenShow {
    private final Terminal terminal;

    WrittenShow(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * Writes it, with everything of the file it comes from that is not of the show.
     *
     * @param path the file it comes from
     * @throws ShowFileException if another file is there already, or it cannot be written
     */
    void write(Path path, Show taken, Path target) throws ShowFileException {
        ShowFile files = new ShowFile();
        ShowReading before = files.read(path);
        if (target.toAbsolutePath().normalize().equals(path.toAbsolutePath().normalize())) {
            files.write(target, taken, before.document());
        } else if (Files.exists(target)) {
            throw new ShowFileException(target + " is there already; name another file for --into, or the show itself");
        } else {
            files.write(target, taken, before.document());
        }
        terminal.line("Written to " + target + ".");
    }
}
