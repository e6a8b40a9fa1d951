package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScriptTest {
    private static final String HEBREW = "\u05d9\u05dc\u05d3\u05d4 \u05d1\u05ea \u05e9\u05e9";
    private static final Box BOX = new Box(0, 0, 600, 60);

    /** The middle of what is painted of words in a box 600 wide, across. */
    private static double middle(String words) {
        LookAndFeel.loadType();
        BufferedImage image = new BufferedImage(600, 60, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Pen pen = new Pen(g, new Appearance(Themes.DAY, new Zoom(100)), 1, new TextFit());
        pen.atTop(pen.block(List.of(words), pen.strong(), 30, 10, BOX, 1), BOX, Color.WHITE);
        g.dispose();
        double sum = 0;
        int count = 0;
        for (int x = 0; x < 600; x++) {
            for (int y = 0; y < 60; y++) {
                if (image.getRGB(x, y) != Color.BLACK.getRGB()) {
                    sum += x;
                    count++;
                }
            }
        }
        assertThat(count).isPositive();
        return sum / count;
    }

    @Test
    void whatRunsFromRightToLeftStandsAtTheRight() {
        assertThat(middle("a girl of six")).isLessThan(250);
        assertThat(middle(HEBREW)).isGreaterThan(350);
        assertThat(middle("[" + HEBREW + "]")).isGreaterThan(350);
        assertThat(middle("6 " + HEBREW)).isGreaterThan(350);
    }

    @Test
    void lettersTheTypeLacksAreTakenFromTheSystem() {
        LookAndFeel.loadType();
        Font strong = Themes.DAY.typeface().strong(20);
        assertThat(Script.type(strong, List.of("Zoë Łukasiewicz", "“–”"))).isSameAs(strong);
        assertThat(Script.type(strong, List.of("Ada", HEBREW)).getName()).isEqualTo(Font.SANS_SERIF);
        assertThat(Script.type(strong, List.of(HEBREW)).getSize2D()).isEqualTo(20);
    }
}
