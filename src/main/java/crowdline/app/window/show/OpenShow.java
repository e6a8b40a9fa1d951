package crowdline.app.window.show;

import crowdline.running.RunningShow;
import crowdline.storage.journal.JournalShow;
import java.io.IOException;
import java.nio.file.Path;

/**
 * The show that is open.
 *
 * @param file as it was named
 * @param identity which show that is, and what was in its file when it was read
 */
record OpenShow(Path file, JournalShow identity, RunningShow running) {

    /** True if this file is that of the open show, however it is named. */
    boolean is(Path other) {
        return file.equals(other) || real(file).equals(real(other));
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }
}
