package crowdline.storage.journal;

import crowdline.storage.file.NameLocks;
import java.nio.file.Path;

/**
 * Which journals of a folder are being written, by this process or another. Nobody could read a journal that held its own
 * lock, so the locks are in a file beside them.
 */
final class JournalLocks {
    static final String NAME = "journals.lock";

    private final NameLocks locks;

    JournalLocks(Path folder) {
        locks = new NameLocks(folder.resolve(NAME));
    }

    /**
     * Keeps a journal from every other writer.
     *
     * @throws JournalInUseException if somebody writes it, in this process or in another
     */
    NameLocks.Held take(Path journal) throws JournalInUseException {
        return locks.take(name(journal))
                .orElseThrow(() -> new JournalInUseException("another Crowdline is writing " + journal));
    }

    /** True if somebody is writing it, in this process or another. */
    boolean taken(Path journal) {
        return locks.taken(name(journal));
    }

    private static String name(Path journal) {
        return String.valueOf(journal.getFileName());
    }
}
