package crowdline.storage.journal;

import crowdline.storage.file.NameLocks;
import java.io.IOException;
import java.nio.file.Path;

/**
 * A file that a journal is written to, and what keeps others out of it.
 *
 * @param path where it is
 */
record JournalPlace(Path path, JournalFile file, NameLocks.Held lock) implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(JournalPlace.class.getName());

    /** True if what is written here would be found by the next start, and nobody else writes it. */
    boolean holds() {
        return file.inPlace() && lock.seen();
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "Closing " + path, e);
        }
        lock.close();
    }
}
