package crowdline.storage.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts lines at the end of a file that other programs add to as well: nothing in it is ever changed, and each line is on
 * the disk before this returns. Whoever writes holds a lock for that moment, which dies with the process.
 */
public final class AppendingFile {
    /** Two seconds in all; adding a line takes some milliseconds. */
    private static final int TRIES = 100;

    private static final long PAUSE_MS = 20;

    private static final Set<StandardOpenOption> OPTIONS =
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);

    private AppendingFile() {}

    /**
     * Adds to a file whose readers are its folder's business, as of one that lies beside a show.
     *
     * @param line without its line feed
     * @throws IOException if the disk does not have it
     */
    public static void append(Path file, byte[] line) throws IOException {
        append(file, FileChannel.open(file, OPTIONS), line);
    }

    /** Adds to a file of the program's own, which nobody but the user may read. */
    public static void appendOwn(Path file, byte[] line) throws IOException {
        append(file, OwnerOnly.open(file, OPTIONS), line);
    }

    private static void append(Path file, FileChannel opened, byte[] line) throws IOException {
        try (FileChannel channel = opened;
                FileLock held = locked(channel, file)) {
            long end = held.isValid() ? channel.size() : 0;
            // What a write the machine did not survive left stays a line of its own.
            boolean torn = end > 0 && byteAt(channel, end - 1) != '\n';
            ByteBuffer buffer = ByteBuffer.allocate(line.length + 2);
            if (torn) {
                buffer.put((byte) '\n');
            }
            buffer.put(line).put((byte) '\n').flip();
            long position = end;
            while (buffer.hasRemaining()) {
                position += channel.write(buffer, position);
            }
            channel.force(true);
        }
    }

    private static byte byteAt(FileChannel channel, long position) throws IOException {
        ByteBuffer one = ByteBuffer.allocate(1);
        channel.read(one, position);
        return one.get(0);
    }

    private static FileLock locked(FileChannel channel, Path file) throws IOException {
        for (int attempt = 1; attempt <= TRIES; attempt++) {
            FileLock lock = lock(channel);
            if (lock != null) {
                return lock;
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        throw new IOException("another program is writing " + file + " and has not finished");
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            // Far behind the content, because on some systems nobody else can read a locked region.
            return channel.tryLock(Long.MAX_VALUE - 1, 1, false);
        } catch (OverlappingFileLockException byThisProcess) {
            return null;
        }
    }
}
