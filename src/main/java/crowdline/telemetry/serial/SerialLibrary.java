package crowdline.telemetry.serial;

import java.io.File;
import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Loads the serial library. It unpacks its native part into the folder for temporary files, which is everybody's, and
 * loads what it finds there; so while it does, that folder is a fresh one in which this user alone can write.
 */
final class SerialLibrary {
    private static final Logger LOG = System.getLogger(SerialLibrary.class.getName());
    /** The library reads it once, when its class is made ready. */
    private static final String UNPACKED_IN = "java.io.tmpdir";

    private static final String PREFIX = "serial-";
    private static final Set<PosixFilePermission> OWNER_ALONE = PosixFilePermissions.fromString("rwx------");

    private final Path folder;
    private boolean ready;

    /** @param folder of this program and this user; made when it is needed */
    SerialLibrary(Path folder) {
        this.folder = folder;
    }

    /**
     * Makes the library ready, once.
     *
     * @throws LinkException where this machine does not let it load
     */
    synchronized void load() throws LinkException {
        if (ready) {
            return;
        }
        refuseWhatLiesHere();
        Path fresh = fresh();
        String before = System.getProperty(UNPACKED_IN);
        System.setProperty(UNPACKED_IN, fresh.toString());
        try {
            Class.forName("com.fazecast.jSerialComm.SerialPort", true, SerialLibrary.class.getClassLoader());
            ready = true;
        } catch (ClassNotFoundException | LinkageError e) {
            LOG.log(Level.WARNING, "The serial library does not load", e);
            throw new LinkException(
                    "Serial ports cannot be used on this machine: their library does not load ("
                            + e.getClass().getSimpleName() + "); let the folder " + fresh.getParent()
                            + " hold programs",
                    true);
        } finally {
            if (before == null) {
                System.clearProperty(UNPACKED_IN);
            } else {
                System.setProperty(UNPACKED_IN, before);
            }
            // Where a loaded library may be deleted, nothing is left; elsewhere a later start clears up.
            delete(fresh);
        }
    }

    /** Java looks for libraries in the folder it was started from too where the system's list says so, as on Windows. */
    private static void refuseWhatLiesHere() throws LinkException {
        String name = System.mapLibraryName("jSerialComm");
        for (String entry : System.getProperty("java.library.path", "").split(File.pathSeparator, -1)) {
            try {
                Path planted = Path.of(entry).resolve(name);
                if (!planted.isAbsolute() && Files.exists(planted)) {
                    throw new LinkException(
                            "Serial ports are not used: " + planted.toAbsolutePath()
                                    + " would be loaded, and nobody knows what it is; delete it, or start Crowdline"
                                    + " from another folder",
                            true);
                }
            } catch (InvalidPathException e) {
                LOG.log(Level.DEBUG, "no folder: {0}", entry);
            }
        }
    }

    /** A folder that nobody else can have put anything into. */
    private Path fresh() throws LinkException {
        try {
            return freshIn(folder);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "The serial library is unpacked among the temporary files", e);
        }
        try {
            return Files.createTempDirectory("crowdline-" + PREFIX);
        } catch (IOException e) {
            throw new LinkException(
                    "Serial ports cannot be used: nothing can be written to " + folder + " (" + e.getMessage()
                            + "); check the disk and its permissions",
                    false);
        }
    }

    private static Path freshIn(Path folder) throws IOException {
        Files.createDirectories(folder.toAbsolutePath().getParent());
        boolean posix = Files.getFileStore(folder.toAbsolutePath().getParent()).supportsFileAttributeView("posix");
        try {
            if (posix) {
                Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(OWNER_ALONE));
            } else {
                Files.createDirectory(folder);
            }
        } catch (FileAlreadyExistsException e) {
            LOG.log(Level.DEBUG, "{0} is there", folder);
        }
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(folder + " is no folder of its own");
        }
        if (posix) {
            Files.setPosixFilePermissions(folder, OWNER_ALONE);
        }
        clear(folder);
        Path fresh = Files.createTempDirectory(folder, PREFIX);
        if (!Files.getOwner(fresh).equals(Files.getOwner(folder, LinkOption.NOFOLLOW_LINKS))) {
            Files.delete(fresh);
            throw new IOException(folder + " belongs to somebody else");
        }
        return fresh;
    }

    /** Deletes what earlier starts could not; one that is in use cannot be deleted, and one just made is left. */
    private static void clear(Path folder) throws IOException {
        try (DirectoryStream<Path> earlier = Files.newDirectoryStream(folder, PREFIX + "*")) {
            for (Path one : earlier) {
                Instant made = Files.getLastModifiedTime(one, LinkOption.NOFOLLOW_LINKS)
                        .toInstant();
                if (made.isBefore(Files.getLastModifiedTime(folder).toInstant().minus(Duration.ofDays(1)))) {
                    delete(one);
                }
            }
        }
    }

    private static void delete(Path fresh) {
        try {
            Files.walkFileTree(fresh, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path visited, @Nullable IOException e) throws IOException {
                    Files.delete(visited);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "left for a later start: {0}", fresh);
        }
    }
}
