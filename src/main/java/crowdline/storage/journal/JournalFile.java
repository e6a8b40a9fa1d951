package crowdline.storage.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;

/** The few things the journal does with a file. */
interface JournalFile extends Closeable {

    /** Length in bytes. */
    long length() throws IOException;

    /** False if the file was deleted, or another was put in its place: what is written here nobody would find. */
    boolean inPlace();

    /** Cuts the file to {@code length} bytes, writes {@code bytes} after them and waits until the disk has them. */
    void put(long length, byte[] bytes) throws IOException;

    /** Opens journal files; {@link JournalLocks} keep others out. */
    interface Opener {
        /** Opens a file that is there, to be written on. */
        JournalFile open(Path file) throws IOException;

        /**
         * Makes a new file, with its folder.
         *
         * @throws java.nio.file.FileAlreadyExistsException if there is one of this name
         */
        JournalFile create(Path file) throws IOException;
    }
}
