package crowdline.app.command;

import crowdline.app.shell.Folders;
import crowdline.show.bounds.Nearest;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.PaceFile;
import crowdline.storage.settings.PaceShelf;
import crowdline.storage.settings.SettingsFile;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Whose pace a command uses: {@code --pace} or {@code --speaker}; the console's speaker if neither is given. */
final class PaceOption {
    @ArgGroup(exclusive = true, multiplicity = "0..1")
    private @Nullable Whose whose;

    /** One speaker. */
    static final class Whose {
        @Option(
                names = "--pace",
                paramLabel = "FILE",
                description = "The pace of the speaker, as the command pace saves it.")
        private @Nullable Path file;

        @Option(
                names = "--speaker",
                paramLabel = "NAME",
                description = "A speaker timed in the window. If neither is given, the speaker last chosen there,"
                        + " or 160 words a minute if there is none.")
        private @Nullable String name;
    }

    /**
     * The pace to use, and those of everybody timed in the window.
     *
     * @throws ShowFileException if it cannot be read, or if nobody of that name was timed
     */
    Paces paces(Folders folders) throws ShowFileException {
        Whose given = whose;
        if (given != null && given.file != null) {
            return new PaceShelf(folders.paces()).read().with(PaceFile.read(given.file));
        }
        PaceShelf shelf = new PaceShelf(folders.paces());
        if (given == null || given.name == null) {
            String last = new SettingsFile(folders.settings()).read().settings().speaker();
            return shelf.pacesOf(last);
        }
        String name = given.name;
        PaceShelf.Reading known = shelf.read();
        List<String> names = known.paces().stream().map(Pace::name).toList();
        return known.of(name)
                .map(known::with)
                .orElseThrow(() -> new ShowFileException("there is no speaker " + name + "; "
                        + (names.isEmpty()
                                ? "none has been timed in the window yet"
                                : "there are " + String.join(", ", names))
                        + Nearest.hint(name, names)));
    }

    /** Whose pace it is, as a sentence for a page. */
    static String sentence(Pace pace) {
        return pace.equals(Pace.DEFAULT)
                ? "Remarks are timed at 160 words a minute, as no speaker was chosen."
                : "Remarks are timed at the pace of " + pace.name() + ".";
    }
}
