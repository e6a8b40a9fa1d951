package crowdline.storage.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/**
 * Names that one window has for itself, in this process or another. The locks are on one file of their own, a byte for each
 * name, and this one channel to it is never closed: a system of the POSIX kind drops every lock a process has on a file as
 * soon as the process closes any channel to it. The locks die with the process.
 */
public final class NameLocks {
    private static final System.Logger LOG = System.getLogger(NameLocks.class.getName());

    private final Path file;
    private @Nullable FileChannel channel;
    /** What the channel's file is to the system: another one of the same name is not it. */
    private @Nullable Object key;

    /** @param file where the locks are; it is made when the first is taken */
    public NameLocks(Path file) {
        this.file = file;
    }

    /** A name kept from others. */
    public interface Held extends AutoCloseable {
        /** False if the file with the locks is gone, so that others no longer see this one. */
        boolean seen();

        @Override
        void close();
    }

    /**
     * Keeps a name from everybody else; empty if somebody has it, in this process or in another. Where the system knows no
     * locks, or none may be put here, nobody is kept out.
     */
    public synchronized Optional<Held> take(String name) {
        FileLock lock;
        try {
            lock = opened().tryLock(place(name), 1, false);
        } catch (OverlappingFileLockException byThisProcess) {
            lock = null;
        } catch (IOException e) {
            LOG.log(System.Logger.Level.DEBUG, "Without locks in " + file, e);
            return Optional.of(new Unlocked());
        }
        return lock == null ? Optional.empty() : Optional.of(new Locked(this, lock));
    }

    /** True if somebody has a name, in this process or another. */
    public boolean taken(String name) {
        Optional<Held> held = take(name);
        held.ifPresent(Held::close);
        return held.isEmpty();
    }

    private FileChannel opened() throws IOException {
        FileChannel now = channel;
        if (now != null && now.isOpen() && isThere()) {
            return now;
        }
        OwnerOnly.folderOf(file);
        FileChannel opened = OwnerOnly.open(
                file, Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE));
        channel = opened;
        key = attributes().fileKey();
        return opened;
    }

    private BasicFileAttributes attributes() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }

    private synchronized boolean isThere() {
        try {
            Object now = attributes().fileKey();
            return now == null || now.equals(key);
        } catch (NoSuchFileException gone) {
            return false;
        } catch (IOException e) {
            // It cannot be looked at, as when the folder may not be used any more; the lock holds on.
            return true;
        }
    }

    /** A byte for each name; two names that share one would only keep each other out. */
    private static long place(String name) {
        CRC32 crc = new CRC32();
        crc.update(name.getBytes(StandardCharsets.UTF_8));
        return crc.getValue();
    }

    private record Locked(NameLocks locks, FileLock lock) implements Held {
        @Override
        public boolean seen() {
            return lock.isValid() && locks.channel == lock.acquiredBy() && locks.isThere();
        }

        @Override
        public void close() {
            try {
                lock.release();
            } catch (IOException e) {
                LOG.log(System.Logger.Level.DEBUG, "Letting go of a lock in " + locks.file, e);
            }
        }
    }

    private record Unlocked() implements Held {
        @Override
        public boolean seen() {
            return true;
        }

        @Override
        public void close() {}
    }
}
