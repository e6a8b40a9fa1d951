package crowdline.loaded;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.FlightLog;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Consumer;

/** The bytes of a flight log, from a file or a pipe; never more of them than a flight log has. */
public final class LogFile {
    private static final int MIB = 1 << 20;

    private LogFile() {}

    /**
     * Reads all there is.
     *
     * @param waiting told, before the first byte, where it may take long: of a pipe nobody knows when it ends
     * @throws ShowFileException if it cannot be read, with what to do
     */
    public static byte[] bytes(Path file, Consumer<String> waiting) throws ShowFileException {
        try {
            if (Files.isDirectory(file)) {
                throw new ShowFileException(file + " is a folder; name one flight log in it");
            }
            if (Files.size(file) > FlightLog.LARGEST) {
                throw tooLarge(file, "has " + Files.size(file) / MIB + " MB");
            }
            sayIfItWaits(file, waiting);
            return upToLargest(file);
        } catch (ShowFileException e) {
            throw e;
        } catch (NoSuchFileException e) {
            throw new ShowFileException("there is no file " + file + "; check its name", e);
        } catch (AccessDeniedException e) {
            throw new ShowFileException("you may not read " + file + "; change its permissions or copy it", e);
        } catch (IOException e) {
            throw new ShowFileException(file + " cannot be read; copy it somewhere else and try again", e);
        }
    }

    /** Says that a file is a pipe or a device, whose end nobody knows; says nothing of one that is not there. */
    static void sayIfItWaits(Path file, Consumer<String> waiting) {
        if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
            waiting.accept(file + " is not an ordinary file and is read until it ends; Ctrl+C gives up");
        }
    }

    private static byte[] upToLargest(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(FlightLog.LARGEST + 1);
            if (bytes.length > FlightLog.LARGEST) {
                throw tooLarge(file, "does not end within " + FlightLog.LARGEST / MIB + " MB");
            }
            return bytes;
        }
    }

    private static ShowFileException tooLarge(Path file, String how) {
        return new ShowFileException(file + " " + how + "; a flight log has at most " + FlightLog.LARGEST / MIB
                + " MB, so cut it to the flight");
    }
}
