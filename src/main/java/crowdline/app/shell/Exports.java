package crowdline.app.shell;

import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.ShowFileException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Lines of text written to a file of the user's. */
public final class Exports {
    private Exports() {}

    /**
     * Writes lines into a file of the user's.
     *
     * @throws ShowFileException if it cannot be written, with one sentence for the user; the file is then as it was
     */
    public static void write(Path file, List<String> lines) throws ShowFileException {
        new AtomicFile().write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
