package crowdline.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** A journal on the disk, locked against a second writer for as long as it is open. The lock dies with the process. */
final class JournalDiskFile implements JournalFile {
    private final FileChannel channel;

    private JournalDiskFile(FileChannel channel) {
        this.channel = channel;
    }

    static JournalFile open(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            if (lock(channel) == null) {
                throw new JournalInUseException("another Crowdline is writing " + file);
            }
            return new JournalDiskFile(channel);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            // Far behind the content, because on some systems nobody else can read a locked region.
            return channel.tryLock(Long.MAX_VALUE - 1, 1, false);
        } catch (OverlappingFileLockException byThisProcess) {
            return null;
        }
    }

    @Override
    public long length() throws IOException {
        return channel.size();
    }

    @Override
    public void put(long length, byte[] bytes) throws IOException {
        if (channel.size() > length) {
            channel.truncate(length);
        }
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        long position = length;
        while (buffer.hasRemaining()) {
            position += channel.write(buffer, position);
        }
        channel.force(false);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
