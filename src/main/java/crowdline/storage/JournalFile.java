package crowdline.storage;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;

/** The few things the journal does with a file. */
interface JournalFile extends Closeable {

    /** Length in bytes. */
    long length() throws IOException;

    /** Cuts the file to {@code length} bytes, writes {@code bytes} after them and waits until the disk has them. */
    void put(long length, byte[] bytes) throws IOException;

    /** Opens journal files. */
    @FunctionalInterface
    interface Opener {
        /**
         * Opens or creates the file, with its folder, and keeps every other writer out.
         *
         * @throws JournalInUseException if somebody else is writing it
         */
        JournalFile open(Path file) throws IOException;
    }
}
