package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.now.NowRow;
import crowdline.console.live.now.NowView;
import crowdline.console.live.now.SeenView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line of what is to be seen has a place of its own. */
class SeenLineTest {
    private static final int SIDE_FROM_SHARE = 60;

    private static NowView with(SeenView seen) {
        NowView v = SampleLiveViews.flying().now();
        return new NowView(v.caption(), v.state(), v.name(), v.look(), v.leftShare(), v.left(), v.side(), seen);
    }

    private static BufferedImage painted(NowView view, int zoom, int width, int height) {
        NowRow row = new NowRow(new Appearance(Themes.DAY, new Zoom(zoom)));
        row.setSize(width, height);
        row.room(height);
        row.rescale(width / 1280.0);
        row.show(view);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        row.paint(g);
        g.dispose();
        return image;
    }

    @ParameterizedTest
    @CsvSource({"100, 1280, 270", "200, 1280, 270", "100, 1920, 360", "200, 1920, 360"})
    void aMomentThatComesOrGoesMovesNothingElse(int zoom, int width, int height) {
        BufferedImage without = painted(with(SeenView.NOTHING), zoom, width, height);
        BufferedImage with = painted(with(new SeenView("Over the top", "pulls out")), zoom, width, height);
        int first = -1;
        int last = -1;
        int mostRight = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (with.getRGB(x, y) != without.getRGB(x, y)) {
                    first = first < 0 ? y : first;
                    last = y;
                    mostRight = Math.max(mostRight, x);
                }
            }
        }
        assertThat(first).as("something is said").isNotNegative();
        assertThat(last - first).as("in one line").isLessThan(height / 5);
        assertThat(mostRight).as("beside the figure").isLessThan(width * SIDE_FROM_SHARE / 100);
    }
}
