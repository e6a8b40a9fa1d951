package crowdline.storage.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Set;

/**
 * Saves that never harm what was there. The bytes go to a temporary file in the same folder and are forced to the disk;
 * the file before is kept as {@code NAME.previous}; then one move puts the new one in its place. Whenever this fails or
 * the machine stops, the file is either the old one or the new one, whole.
 */
public final class AtomicFile {
    /** Virus scanners and indexers hold a file for a moment after it is written; common practice, no source. */
    private static final int TRIES = 5;

    private static final Set<PosixFilePermission> WRITING =
            Set.of(PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private final Disk disk;
    private final Pause pause;
    private final boolean ownerOnly;

    /** What saving asks of the disk; a test can let it be full. */
    interface Disk {
        void write(Path file, byte[] bytes) throws IOException;

        void move(Path from, Path to) throws IOException;
    }

    /** Waits before a move is tried again. */
    interface Pause {
        void before(int attempt);
    }

    public AtomicFile() {
        this(new RealDisk(FileChannel::open), AtomicFile::wait);
    }

    AtomicFile(Disk disk, Pause pause) {
        this(disk, pause, false);
    }

    private AtomicFile(Disk disk, Pause pause, boolean ownerOnly) {
        this.disk = disk;
        this.pause = pause;
        this.ownerOnly = ownerOnly;
    }

    /** Saves of the program's own files, which nobody but the user may read. */
    public static AtomicFile ownerOnly() {
        return new AtomicFile(new RealDisk(OwnerOnly::open), AtomicFile::wait, true);
    }

    /**
     * Writes a whole file. A link is followed, so that it stays a link.
     *
     * @throws ShowFileException if it cannot be written, with one sentence for the user; the file is then as it was
     */
    public void write(Path file, byte[] bytes) throws ShowFileException {
        Path fresh = file;
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                // Reading a pipe, to keep it, would wait for whoever writes into it, perhaps for ever.
                throw new IOException("it is a folder, a pipe or a device and not a file");
            }
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            if (isReadOnly(target)) {
                throw new IOException("it is marked as read-only");
            }
            fresh = beside(target, ".saving");
            Files.deleteIfExists(fresh); // left by a save the machine did not survive
            disk.write(fresh, bytes);
            if (Files.exists(target)) {
                keepPrevious(target);
                keepPermissions(target, fresh);
            }
            move(fresh, target);
        } catch (IOException e) {
            if (!fresh.equals(file)) {
                discard(fresh, e);
            }
            throw new ShowFileException(
                    file + " could not be saved: " + reason(e, file) + "; the file is as it was", e);
        }
    }

    /**
     * Puts other bytes in a file's place, whatever size the file has, and keeps it under another name.
     *
     * @param kept a name in the same folder that nothing has yet
     */
    public void replace(Path file, byte[] bytes, Path kept) throws IOException {
        Path fresh = beside(file, ".saving");
        try {
            Files.deleteIfExists(fresh);
            disk.write(fresh, bytes);
            try {
                Files.createLink(kept, file);
            } catch (IOException | UnsupportedOperationException noLinks) {
                Files.copy(file, kept, StandardCopyOption.COPY_ATTRIBUTES);
            }
            move(fresh, file);
        } catch (IOException e) {
            discard(fresh, e);
            throw e;
        }
    }

    /** Another file could be put in its place all the same; whoever marked it so did not mean that. */
    private boolean isReadOnly(Path target) throws IOException {
        return !ownerOnly
                && Files.exists(target)
                && (!Files.isWritable(target)
                        || (Files.getFileStore(target).supportsFileAttributeView("posix")
                                && Files.getPosixFilePermissions(target).stream()
                                        .noneMatch(WRITING::contains)));
    }

    private void keepPrevious(Path target) throws IOException {
        Path copy = beside(target, ".keeping");
        try {
            Files.deleteIfExists(copy);
            disk.write(copy, Files.readAllBytes(target));
            keepPermissions(target, copy);
            move(copy, beside(target, ".previous"));
        } catch (IOException e) {
            discard(copy, e);
            throw e;
        }
    }

    private void move(Path from, Path to) throws IOException {
        for (int attempt = 1; ; attempt++) {
            try {
                disk.move(from, to);
                return;
            } catch (IOException e) {
                if (attempt == TRIES) {
                    throw e;
                }
                pause.before(attempt + 1);
            }
        }
    }

    private static void discard(Path file, IOException because) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            because.addSuppressed(e);
        }
    }

    private static Path beside(Path target, String ending) {
        return target.resolveSibling(target.getFileName() + ending);
    }

    private void keepPermissions(Path from, Path to) throws IOException {
        if (!ownerOnly && Files.getFileStore(to).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
    }

    private static String reason(IOException e, Path file) {
        if (e instanceof AccessDeniedException) {
            return "it or its folder may not be written to";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no folder " + file.toAbsolutePath().getParent();
        }
        String said = e.getMessage();
        return said == null ? "the disk refused" : said;
    }

    private static void wait(int attempt) {
        try {
            Thread.sleep(20L << attempt);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Opens a file that is written. */
    @FunctionalInterface
    private interface Opener {
        FileChannel open(Path file, Set<? extends OpenOption> options) throws IOException;
    }

    private record RealDisk(Opener opener) implements Disk {
        @Override
        public void write(Path file, byte[] bytes) throws IOException {
            try (FileChannel channel =
                    opener.open(file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            } catch (FileAlreadyExistsException e) {
                throw new IOException("it is already being saved", e);
            }
        }

        @Override
        public void move(Path from, Path to) throws IOException {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
