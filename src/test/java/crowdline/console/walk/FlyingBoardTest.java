package crowdline.console.walk;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.walk.WalkView.Flying;
import crowdline.console.walk.WalkView.Value;
import crowdline.sight.SideView;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlyingBoardTest {
    private static final int WIDE = 720;
    private static final int TALL = 520;
    private static final Value NOTHING = new Value("", "");

    @ParameterizedTest
    @ValueSource(ints = {100, 150, 200})
    void whatTheCrowdWouldSayOverOneNumberEndsWellBeforeTheNext(int zoom) {
        LookAndFeel.loadType();
        int speedEnds = inked(zoom, List.of(new Value("Speed: 160 mph", "137 kt")))
                .max()
                .orElseThrow();
        int heightBegins = inked(zoom, List.of(NOTHING, new Value("Height: 310 m", "1,020 ft")))
                .min()
                .orElseThrow();

        assertThat(heightBegins - speedEnds).isGreaterThan(18);
    }

    /** The columns with ink in the lowest fifth. */
    private static IntStream inked(int zoom, List<Value> values) {
        FlyingBoard board = new FlyingBoard(new Appearance(Themes.DAY, new Zoom(zoom)));
        board.show(new Flying("", "", "", "", values, SideView.NONE, SkyView.NONE));
        board.setSize(WIDE, TALL);
        BufferedImage image = new BufferedImage(WIDE, TALL, BufferedImage.TYPE_INT_RGB);
        board.paint(image.getGraphics());
        int ground = image.getRGB(1, TALL - 1);
        return IntStream.range(0, WIDE)
                .filter(x -> IntStream.range(TALL * 4 / 5, TALL).anyMatch(y -> image.getRGB(x, y) != ground));
    }
}
