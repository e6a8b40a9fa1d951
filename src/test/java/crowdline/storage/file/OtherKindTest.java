package crowdline.storage.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class OtherKindTest {
    private static byte[] picture(String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    @Test
    void picturesAsTheyAreWrittenAreTold() throws IOException {
        for (String format : new String[] {"png", "jpg", "gif"}) {
            assertThat(OtherKind.of(picture(format))).as(format).contains("a picture");
        }
    }

    @Test
    void archivesAreTold() throws IOException {
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(zip)) {
            out.putNextEntry(new ZipEntry("a"));
            out.write(1);
        }
        assertThat(OtherKind.of(zip.toByteArray())).contains("an archive, a spreadsheet or a text document");
        ByteArrayOutputStream gz = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(gz)) {
            out.write(1);
        }
        assertThat(OtherKind.of(gz.toByteArray())).contains("a compressed file");
    }

    @Test
    void whatMayBeTextIsLeftToWhoeverReadsIt() {
        for (String text : new String[] {"", "{", "{\"crowdline\": 1}", "loop, roll, spin", "\uFEFF{}"}) {
            assertThat(OtherKind.of(text.getBytes(StandardCharsets.UTF_8)))
                    .as(text)
                    .isEmpty();
        }
    }
}
