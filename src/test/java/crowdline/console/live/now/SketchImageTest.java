package crowdline.console.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextFit;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.aircraft.Outline;
import crowdline.sight.sketch.Sketches;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SketchImageTest {
    private static final int WIDE = 400;
    private static final int TALL = 200;

    private final SketchImage kept = new SketchImage();

    private static SkyView sketch(String figure) {
        return SkyView.whole(Sketches.of(figure).orElseThrow(), Outline.HELICOPTER);
    }

    private int[] painted(SkyView sketch, Appearance worn, double scale) {
        int wide = (int) (WIDE * scale);
        int tall = (int) (TALL * scale);
        BufferedImage image = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        kept.paint(new Pen(g, worn, 1, new TextFit()), sketch, new Box(10, 10, WIDE - 20, TALL - 20));
        g.dispose();
        return image.getRGB(0, 0, wide, tall, null, 0, wide);
    }

    private static long covered(int[] pixels) {
        return Arrays.stream(pixels).filter(p -> (p & 0xffffff) != 0).count();
    }

    @Test
    void whatIsKeptLooksLikeWhatWasPaintedAndIsPaintedAnewForAnother() {
        Appearance day = new Appearance(Themes.DAY, Zoom.NONE);
        int[] hover = painted(sketch("hover"), day, 1);
        assertThat(covered(hover)).isGreaterThan(500);
        assertThat(painted(sketch("hover"), day, 1)).isEqualTo(hover);
        assertThat(painted(sketch("quick stop"), day, 1)).isNotEqualTo(hover);
        assertThat(painted(sketch("hover"), new Appearance(Themes.NIGHT, Zoom.NONE), 1))
                .isNotEqualTo(hover);
        assertThat(painted(sketch("hover"), day, 1)).isEqualTo(hover);
        assertThat(covered(painted(sketch("hover"), day, 2))).isGreaterThan(3 * covered(hover));
    }
}
