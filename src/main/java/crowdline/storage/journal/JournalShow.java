package crowdline.storage.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Which show a journal belongs to.
 *
 * @param path real path of the show file
 * @param sha256 hash of its content, in hexadecimal
 */
public record JournalShow(String path, String sha256) {

    /** The show read from {@code file} with this content. */
    public static JournalShow of(Path file, byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            return new JournalShow(real(file).toString(), HexFormat.of().formatHex(digest));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
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
