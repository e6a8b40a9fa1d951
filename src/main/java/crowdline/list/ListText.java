package crowdline.list;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The text of a file that somebody saved a pilot's list in: UTF-8, UTF-16 with its mark, or the older encoding of
 * western Windows, which cannot be told from others and is taken for what is neither.
 */
public final class ListText {
    private static final Charset WESTERN = Charset.forName("windows-1252");
    private static final char MARK = '\ufeff';
    private static final Pattern PAGE =
            Pattern.compile("(?is)\\s*<(?:!doctype html|html|head|body|meta|div|table|p|ul|ol)\\b.*");
    private static final Pattern CONTROL = Pattern.compile("[\\x00-\\x08\\x0e-\\x1f]");

    /** How files begin that hold text and are none. */
    private static final Map<String, String> KINDS = Map.of(
            "%PDF", "a PDF",
            "PK\u0003\u0004", "a document of a word processor or a spreadsheet",
            "\u00d0\u00cf\u0011\u00e0", "a document of a word processor or a spreadsheet",
            "{\\rtf", "rich text");

    private ListText() {}

    /**
     * The text.
     *
     * @throws NoText if these are no letters, with what they are instead
     */
    public static String of(byte[] bytes) throws NoText {
        String begins = new String(bytes, 0, Math.min(bytes.length, 8), StandardCharsets.ISO_8859_1);
        for (Map.Entry<String, String> kind : KINDS.entrySet()) {
            if (begins.startsWith(kind.getKey())) {
                throw new NoText(kind.getValue());
            }
        }
        String text = decoded(bytes);
        if (CONTROL.matcher(text).find()) {
            throw new NoText("no text");
        }
        if (PAGE.matcher(text).matches()) {
            throw new NoText("a web page");
        }
        return text;
    }

    private static String decoded(byte[] bytes) throws NoText {
        boolean isWide = bytes.length >= 2
                && ((bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe)
                        || (bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff));
        String text = decoded(bytes, isWide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8)
                .or(() -> isWide ? Optional.empty() : decoded(bytes, WESTERN))
                .orElseThrow(() -> new NoText("no text"));
        return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
    }

    private static Optional<String> decoded(byte[] bytes, Charset charset) {
        try {
            return Optional.of(
                    charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** A file that is no text; its message says what it is, such as "a PDF". */
    public static final class NoText extends Exception {
        private static final long serialVersionUID = 1;

        /** @param what it is instead, such as "a PDF" */
        public NoText(String what) {
            super(what);
        }

        /** In a sentence, with what to do. */
        public String inPlaceOf(String file) {
            return file + " is " + getMessage() + "; save the list itself as plain text";
        }
    }
}
