package crowdline.app;

import crowdline.storage.AtomicFile;
import crowdline.storage.ShowFileException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Lines of text written to a file of the user's. */
final class Exports {
    private Exports() {}

    /** @throws ShowFileException if it cannot be written, with one sentence for the user; the file is then as it was */
    static void write(Path file, List<String> lines) throws ShowFileException {
        new AtomicFile().write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
