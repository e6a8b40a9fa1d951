package crowdline.storage.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 hashes, by which contents and names are told apart. */
public final class Sha256 {
    /** So many digits tell any names apart that one machine will see. */
    private static final int NAME_DIGITS = 12;

    private Sha256() {}

    /** Of a content, in 64 hexadecimal digits. */
    public static String of(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Of a name or a path, short enough for the name of a file: the first 12 digits. Such files are found by it for ever. */
    public static String ofName(String name) {
        return of(name.getBytes(StandardCharsets.UTF_8)).substring(0, NAME_DIGITS);
    }
}
