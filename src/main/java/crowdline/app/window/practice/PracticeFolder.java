package crowdline.app.window.practice;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where a practice writes down what happens in it. It is locked as long as the practice runs, so that one left behind by a
 * program that was killed can be told from one in use.
 */
final class PracticeFolder {
    private static final System.Logger LOG = System.getLogger(PracticeFolder.class.getName());
    private static final String PREFIX = "crowdline-practice";
    private static final String LOCK = "in-use";

    private final Path path;
    private final FileChannel lock;

    private PracticeFolder(Path path, FileChannel lock) {
        this.path = path;
        this.lock = lock;
    }

    /**
     * A new one.
     *
     * @param within the folder for what is temporary
     */
    static PracticeFolder make(Path within) throws IOException {
        Path path = Files.createTempDirectory(within, PREFIX);
        FileChannel lock =
                FileChannel.open(path.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        PracticeFolder made = new PracticeFolder(path, lock);
        try {
            if (lock.tryLock() == null) {
                throw new IOException("the lock of " + path + " is another's");
            }
        } catch (IOException e) {
            made.delete();
            throw e;
        }
        return made;
    }

    Path path() {
        return path;
    }

    /** Leaves nothing behind. */
    void delete() {
        try {
            lock.close();
            delete(path);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.INFO, "A practice left something behind in " + path, e);
        }
    }

    /** Deletes what practices left behind that run no more; those that run are left alone, and so is whatever else is there. */
    static void sweep(Path within) {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(within, PREFIX + "*")) {
            for (Path each : all) {
                if (Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS) && isLeft(each)) {
                    delete(each);
                }
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.INFO, "What practices left behind in " + within + " stays there", e);
        }
    }

    /** Whether nobody uses it. One without a lock is just being made, or was made by something else. */
    private static boolean isLeft(Path folder) {
        try (FileChannel channel =
                        FileChannel.open(folder.resolve(LOCK), StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock free = channel.tryLock()) {
            return free != null;
        } catch (IOException | OverlappingFileLockException e) {
            return false;
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path each : deepestFirst) {
                Files.delete(each);
            }
        }
    }
}
