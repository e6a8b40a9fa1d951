package crowdline.storage.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A file's bytes as text.
 *
 * @param text what could be decoded
 * @param fault where and why decoding stopped, or null
 */
public record ShowText(String text, @Nullable Fault fault) {
    private static final int MB = 1_000_000;

    /** 20 MB: a hundred times a large show, and more passes than anybody walks. */
    static final int MOST_BYTES = 20 * MB;

    /** For a pace or the settings, which are a few lines. */
    public static final int MOST_BYTES_OF_A_FEW_LINES = MB;

    /** Why bytes are not text. */
    public record Fault(String message, Where where) {}

    /**
     * Reads a file's bytes.
     *
     * @throws ShowFileException if there is no such file, it is a folder, a pipe or a device, it may not be read, or it is too large
     */
    public static byte[] bytes(Path file) throws ShowFileException {
        return bytes(file, MOST_BYTES);
    }

    /** The same of what is never as large as a show. */
    public static byte[] bytes(Path file, int mostBytes) throws ShowFileException {
        if (Files.isDirectory(file)) {
            throw new ShowFileException(file + " is a folder; name the file in it");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            // Opening a pipe waits for whoever writes into it, perhaps for ever.
            throw new ShowFileException(file + " is a pipe or a device and not a file; name a file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) {
                throw new ShowFileException(tooLarge(file, mostBytes));
            }
            return bytes;
        } catch (ShowFileException e) {
            throw e;
        } catch (NoSuchFileException e) {
            throw new ShowFileException("there is no file " + file + "; check its name and folder", e);
        } catch (AccessDeniedException e) {
            throw new ShowFileException(file + " may not be read; check its permissions", e);
        } catch (IOException e) {
            throw new ShowFileException(
                    file + " cannot be read (" + e.getMessage() + "); check the disk and try again", e);
        }
    }

    /** What is true of every file read here, whatever it was to be. */
    private static String tooLarge(Path file, int mostBytes) throws IOException {
        return String.format(
                Locale.UK,
                "%s is %.1f MB large; the limit is %d MB. Check that it is the right file, or split it into smaller ones",
                file,
                Math.ceil(Files.size(file) / 1e5) / 10,
                mostBytes / MB);
    }

    public static ShowText decode(byte[] bytes) {
        if (bytes.length >= 2 && ((bytes[0] == -1 && bytes[1] == -2) || (bytes[0] == -2 && bytes[1] == -1))) {
            return utf16();
        }
        // Without its mark it is told by every other byte being 0, as Latin letters have it.
        if (bytes.length >= 4 && isZeroAlternately(bytes)) {
            return utf16();
        }
        int start = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF
                ? 3
                : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length - start);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (!result.isError()) {
            return new ShowText(text, null);
        }
        int value = bytes[in.position()] & 0xFF;
        String message = "the byte 0x" + Integer.toHexString(value).toUpperCase(Locale.ROOT)
                + " here is not UTF-8; the file may be in an older encoding, so save it as UTF-8";
        return new ShowText(text, new Fault(message, end(text)));
    }

    private static boolean isZeroAlternately(byte[] bytes) {
        boolean first = bytes[0] == 0;
        return first != (bytes[1] == 0) && first == (bytes[2] == 0) && first != (bytes[3] == 0);
    }

    private static ShowText utf16() {
        return new ShowText("", new Fault("the file is UTF-16 text; save it as UTF-8", Where.START));
    }

    private static Where end(String text) {
        int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
        return new Where(line, text.length() - text.lastIndexOf('\n'));
    }
}
