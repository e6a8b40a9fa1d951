package crowdline.storage.unsaved;

import crowdline.show.Show;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.NameLocks;
import crowdline.storage.file.OwnerOnly;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.show.ShowFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Edits that are in no file of the user's yet, each in a file of its own in the program's folder. A line says which file it
 * belongs to and when it was kept, the show follows as in a show file. A window has a name on the shelf for itself as long as
 * it edits, so that nobody else offers or overwrites what is kept under it.
 */
public final class UnsavedShelf {
    private static final System.Logger LOG = System.getLogger(UnsavedShelf.class.getName());
    private static final String FORM = "crowdline-unsaved-1";
    private static final String ENDING = ".unsaved";
    private static final String DAMAGED = ".damaged";
    private static final String LOCKS = "editing.lock";
    private static final String NO_FILE = "-";
    private static final int NAME_LETTERS = 32;

    private final Path folder;
    private final AtomicFile saves;
    private final ShowFile shows = new ShowFile();
    private final NameLocks locks;

    /**
     * What is on the shelf.
     *
     * @param name under which it is kept
     */
    public record Kept(String name, UnsavedEdit edit) {}

    /**
     * What nobody edits at the moment, the newest first.
     *
     * @param notices what could not be read, a sentence each
     */
    public record Found(List<Kept> kept, List<String> notices) {
        public Found {
            kept = List.copyOf(kept);
            notices = List.copyOf(notices);
        }
    }

    /** @param folder where it is; it need not exist */
    public UnsavedShelf(Path folder) {
        this(folder, AtomicFile.ownerOnly());
    }

    UnsavedShelf(Path folder, AtomicFile saves) {
        this.folder = folder;
        this.saves = saves;
        locks = new NameLocks(folder.resolve(LOCKS));
    }

    /** The name of the edits of a file, however it is named. */
    public static String nameOf(Path file) {
        Path real;
        try {
            real = file.toRealPath();
        } catch (IOException e) {
            real = file.toAbsolutePath().normalize();
        }
        return Sha256.of(real.toString().getBytes(StandardCharsets.UTF_8)).substring(0, NAME_LETTERS);
    }

    /** Has a name for itself from now on; empty if another window has it. */
    public Optional<NameLocks.Held> take(String name) {
        return locks.take(name);
    }

    /**
     * Keeps an edit, in place of what was kept under the name.
     *
     * @throws ShowFileException if it cannot be written, with one sentence for the user; what was kept is then as it was
     */
    public void keep(String name, UnsavedEdit edit) throws ShowFileException {
        try {
            OwnerOnly.folder(folder);
        } catch (IOException e) {
            throw new ShowFileException("the folder " + folder + " cannot be made", e);
        }
        Path file = edit.file();
        String of = file == null ? NO_FILE : URLEncoder.encode(file.toString(), StandardCharsets.UTF_8);
        String head =
                FORM + " " + edit.at() + " " + (edit.sha256().isEmpty() ? NO_FILE : edit.sha256()) + " " + of + "\n";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        bytes.writeBytes(shows.bytes(edit.show()));
        saves.write(file(name), bytes.toByteArray());
    }

    /** Forgets what is kept under a name; nothing if there is nothing. */
    public void forget(String name) {
        for (Path each : List.of(file(name), folder.resolve(name + ENDING + ".previous"))) {
            try {
                Files.deleteIfExists(each);
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "Forgetting " + each, e);
            }
        }
    }

    /**
     * Puts what is kept under a name aside under another, so that it is still there when something else is kept.
     *
     * @param other a name that nobody has
     */
    public void setApart(String name, String other) {
        if (Files.exists(file(name))) {
            try {
                Files.move(file(name), file(other), StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "Setting " + file(name) + " apart", e);
            }
        }
    }

    /** What is kept and is not edited in any window now. What cannot be read is set aside, and said. */
    public Found found() {
        List<Kept> kept = new ArrayList<>();
        List<String> notices = new ArrayList<>();
        for (Path each : files()) {
            String fileName = String.valueOf(each.getFileName());
            String name = fileName.substring(0, fileName.length() - ENDING.length());
            if (locks.taken(name)) {
                continue;
            }
            try {
                UnsavedEdit edit = read(each);
                if (edit != null) {
                    kept.add(new Kept(name, edit));
                } else {
                    Path aside = each.resolveSibling(fileName + DAMAGED);
                    Files.move(each, aside, StandardCopyOption.REPLACE_EXISTING);
                    notices.add(
                            "Unsaved changes that were kept are damaged and cannot be brought back; they were set aside as "
                                    + aside);
                }
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "Reading " + each, e);
                notices.add("Unsaved changes that were kept cannot be read: " + each);
            }
        }
        kept.sort((a, b) -> b.edit().at().compareTo(a.edit().at()));
        return new Found(kept, notices);
    }

    private List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(p -> p.toString().endsWith(ENDING)).sorted().toList();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Looking into " + folder, e);
            return List.of();
        }
    }

    /** What was kept in a file, or null if it is damaged. */
    private static @Nullable UnsavedEdit read(Path file) throws IOException {
        byte[] bytes = ShowText.bytes(file);
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        String[] head = new String(bytes, 0, end, StandardCharsets.UTF_8).split(" ", -1);
        if (head.length != 4 || !head[0].equals(FORM) || end == bytes.length) {
            return null;
        }
        Show show = ShowFile.soundBefore(Arrays.copyOfRange(bytes, end + 1, bytes.length))
                .orElse(null);
        if (show == null) {
            return null;
        }
        try {
            Path of = head[3].equals(NO_FILE) ? null : Path.of(URLDecoder.decode(head[3], StandardCharsets.UTF_8));
            return new UnsavedEdit(of, head[2].equals(NO_FILE) ? "" : head[2], Instant.parse(head[1]), show);
        } catch (DateTimeException | InvalidPathException e) {
            return null;
        } catch (IllegalArgumentException notDecoded) {
            return null;
        }
    }

    private Path file(String name) {
        return folder.resolve(name + ENDING);
    }
}
