package crowdline.console.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.SampleScreens;
import crowdline.console.pictures.Pictures.Setting;
import crowdline.console.theme.Themes;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturesTest {
    @Tag("slow")
    @Test
    void everyScreenIsDrawnWithoutAWindow(@TempDir Path out) throws IOException {
        List<Path> files = Pictures.renderAll(
                out, SampleScreens.all(), List.of(Themes.NIGHT), List.of(new Setting(1280, 800, 200)));
        List<String> names = Pictures.names(SampleScreens.all());
        assertThat(names)
                .doesNotHaveDuplicates()
                .contains("prepare", "words", "glossary", "pace-key", "pace-microphone");
        assertThat(files)
                .extracting(file -> String.valueOf(file.getFileName()))
                .containsExactlyElementsOf(
                        names.stream().map(n -> n + "-night-1280x800-200.png").toList());
        for (Path file : files) {
            BufferedImage image = ImageIO.read(file.toFile());
            boolean ownWindow = String.valueOf(file.getFileName()).startsWith("pace-");
            assertThat(image.getWidth()).isEqualTo(1280);
            assertThat(image.getHeight()).isLessThanOrEqualTo(800).isGreaterThan(ownWindow ? 700 : 799);
            Set<Integer> colours = new HashSet<>();
            for (int x = 0; x < 1280; x += 3) {
                for (int y = 60; y < 700; y += 3) {
                    colours.add(image.getRGB(x, y));
                }
            }
            assertThat(colours.size())
                    .as("%s shows something", file.getFileName())
                    .isGreaterThan(10);
        }
    }
}
