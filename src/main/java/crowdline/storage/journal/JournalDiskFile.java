package crowdline.storage.journal;

import crowdline.storage.file.OwnerOnly;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A journal on the disk. */
final class JournalDiskFile implements JournalFile {
    private static final System.Logger LOG = System.getLogger(JournalDiskFile.class.getName());

    private final Path path;
    private final FileChannel channel;
    /** What the file is to the system, whatever its name; null where the system does not tell. */
    private final @Nullable Object key;

    /** True until the folder that names a new file is on the disk. */
    private boolean nameless;

    private JournalDiskFile(Path path, FileChannel channel, boolean nameless) throws IOException {
        this.path = path;
        this.channel = channel;
        this.nameless = nameless;
        this.key = key(path);
    }

    /** The opener of real files. */
    static Opener opener() {
        return new Opener() {
            @Override
            public JournalFile open(Path file) throws IOException {
                return opened(file, Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE));
            }

            @Override
            public JournalFile create(Path file) throws IOException {
                OwnerOnly.folderOf(file);
                return opened(
                        file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE));
            }
        };
    }

    private static JournalFile opened(Path file, Set<StandardOpenOption> options) throws IOException {
        FileChannel channel = OwnerOnly.open(file, options);
        try {
            return new JournalDiskFile(file, channel, options.contains(StandardOpenOption.CREATE_NEW));
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    private static @Nullable Object key(Path path) throws IOException {
        return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
    }

    @Override
    public long length() throws IOException {
        return channel.size();
    }

    @Override
    public boolean inPlace() {
        try {
            Object now = key(path);
            return now == null || now.equals(key);
        } catch (AccessDeniedException unseen) {
            // It cannot be looked at, which does not move it; writing shows whether it can be written.
            return true;
        } catch (IOException gone) {
            return false;
        }
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
        if (nameless) {
            forceFolder();
            nameless = false;
        }
    }

    /** Waits until the disk has the name of the file, too; where a folder cannot be forced it has it all the same. */
    private void forceFolder() {
        try (FileChannel folder = FileChannel.open(path.resolveSibling("."), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException notHere) {
            LOG.log(System.Logger.Level.DEBUG, "Forcing the folder of " + path, notHere);
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
