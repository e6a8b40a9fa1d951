package crowdline.storage.file;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What a file is that was given in place of a text, told by how it begins. */
public enum OtherKind {
    PNG("a picture", 0x89, 'P', 'N', 'G'),
    JPEG("a picture", 0xFF, 0xD8, 0xFF),
    GIF("a picture", 'G', 'I', 'F', '8'),
    TIFF("a picture", 'I', 'I', 0x2A, 0x00),
    WEB_OR_SOUND("a picture or a recording", 'R', 'I', 'F', 'F'),
    PDF("a PDF", '%', 'P', 'D', 'F'),
    ARCHIVE("an archive, a spreadsheet or a text document", 'P', 'K', 0x03, 0x04),
    OLD_OFFICE("a spreadsheet or a text document", 0xD0, 0xCF, 0x11, 0xE0),
    COMPRESSED("a compressed file", 0x1F, 0x8B),
    PROGRAM("a program", 0x7F, 'E', 'L', 'F'),
    MP3("a recording", 'I', 'D', '3');

    private final String inWords;
    private final String begins;

    OtherKind(String inWords, int... begins) {
        this.inWords = inWords;
        StringBuilder letters = new StringBuilder();
        for (int each : begins) {
            letters.append((char) each);
        }
        this.begins = letters.toString();
    }

    /** What bytes are, in words such as "a picture"; empty if they may be text. */
    public static Optional<String> of(byte[] bytes) {
        String first = new String(bytes, 0, Math.min(8, bytes.length), StandardCharsets.ISO_8859_1);
        for (OtherKind kind : values()) {
            if (first.startsWith(kind.begins)) {
                return Optional.of(kind.inWords);
            }
        }
        return Optional.empty();
    }
}
