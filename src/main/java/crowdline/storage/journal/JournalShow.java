package crowdline.storage.journal;

import crowdline.storage.file.Sha256;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Which show a journal belongs to.
 *
 * @param path real path of the show file
 * @param sha256 hash of its content, in hexadecimal
 */
public record JournalShow(String path, String sha256) {

    /** The show read from {@code file} with this content. */
    public static JournalShow of(Path file, byte[] content) {
        return new JournalShow(real(file).toString(), Sha256.of(content));
    }

    /** However a file is named, through links or from another folder, it is one show. */
    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }

    /** True if this is the same show, even if its file was changed or moved since. */
    boolean same(JournalShow other) {
        return path.equals(other.path) || sha256.equals(other.sha256);
    }
}
