package crowdline.storage.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;

/**
 * Files and folders of the program's own that nobody but the user may read: notes and journals name people. Where the file
 * system knows no such permissions these are made as the system makes them.
 */
public final class OwnerOnly {
    private static final System.Logger LOG = System.getLogger(OwnerOnly.class.getName());
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");

    private OwnerOnly() {}

    /** Makes the folder with those above it, or takes from everybody else the use of one that is there. */
    public static void folder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            tighten(folder);
            return;
        }
        Files.createDirectories(folder, posix(folder) ? with(FOLDER) : new FileAttribute<?>[0]);
        giveToOwnerOfParent(folder);
    }

    /** The same for the folder that a file is in. */
    public static void folderOf(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            folder(folder);
        }
    }

    /** Opens a file as {@link FileChannel#open}; a new one is the user's alone from its first moment, an old one from now on. */
    public static FileChannel open(Path file, Set<? extends OpenOption> options) throws IOException {
        boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        FileChannel channel = FileChannel.open(file, options, posix(file) ? with(FILE) : new FileAttribute<?>[0]);
        if (there) {
            tighten(file);
        } else {
            giveToOwnerOfParent(file);
        }
        return channel;
    }

    /** Takes from everybody else the use of a file and of its folder. */
    public static void withFolder(Path file) {
        tighten(file);
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            tighten(folder);
        }
    }

    /** Takes from everybody else the use of what is there; if that is not allowed it stays as it is. */
    public static void tighten(Path there) {
        if (!posix(there)) {
            return;
        }
        try {
            tighten(there, Files.readAttributes(there, PosixFileAttributes.class));
        } catch (IOException | UnsupportedOperationException e) {
            LOG.log(System.Logger.Level.DEBUG, "Who may read " + there, e);
        }
    }

    private static void tighten(Path there, PosixFileAttributes attributes) throws IOException {
        Set<PosixFilePermission> own = EnumSet.copyOf(FOLDER);
        if (!own.containsAll(attributes.permissions())) {
            own.retainAll(attributes.permissions());
            Files.setPosixFilePermissions(there, own);
        }
    }

    /** What one run with the rights of the administrator leaves in a user's folder is the user's, not locked away from them. */
    private static void giveToOwnerOfParent(Path made) {
        Path parent = made.toAbsolutePath().getParent();
        if (parent == null || !posix(made)) {
            return;
        }
        try {
            var owner = Files.getOwner(parent);
            if (!owner.equals(Files.getOwner(made))) {
                Files.setOwner(made, owner);
            }
        } catch (IOException | UnsupportedOperationException e) {
            LOG.log(System.Logger.Level.DEBUG, "Whose " + made + " is", e);
        }
    }

    private static boolean posix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static FileAttribute<?>[] with(Set<PosixFilePermission> permissions) {
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)};
    }
}
