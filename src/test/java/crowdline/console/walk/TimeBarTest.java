package crowdline.console.walk;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.walk.WalkView.Bar;
import crowdline.console.walk.WalkView.Segment;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimeBarTest {
    /** Seven seconds of seven minutes are 20 pixels of 1240, and four letters need more. */
    @ParameterizedTest
    @ValueSource(ints = {100, 200})
    void aShortFigureHasItsNameAboveTheWayBehindItAndNoneWhereAFigureFollows(int zoom) {
        assertThat(painted(zoom, "loop", true)).isNotEqualTo(painted(zoom, "spin", true));
        assertThat(painted(zoom, "loop", false)).isEqualTo(painted(zoom, "spin", false));
    }

    private static int[] painted(int zoom, String name, boolean wayBehind) {
        TimeBar bar = new TimeBar(new Appearance(Themes.DAY, new Zoom(zoom)), share -> {});
        bar.show(new Bar(
                List.of(
                        new Segment(0, 0.5, "take-off", false, true, false),
                        new Segment(0.5, 0.516, name, false, false, false),
                        new Segment(0.516, 0.6, "turning back", wayBehind, false, false),
                        new Segment(0.6, 1, "landing", false, false, false)),
                List.of(),
                0.1));
        bar.setSize(1280, 110);
        BufferedImage image = new BufferedImage(1280, 110, BufferedImage.TYPE_INT_RGB);
        bar.paint(image.getGraphics());
        return image.getRGB(0, 0, 1280, 110, null, 0, 1280);
    }
}
