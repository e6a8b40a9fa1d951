package crowdline.console.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextFit;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import crowdline.sight.SideView.Stretch;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ActPainterTest {
    private static final Appearance DAY = new Appearance(Themes.DAY, Zoom.NONE);
    private static final int WIDE = 440;
    private static final int TALL = 560;

    private static SideView circle(@Nullable Craft craft) {
        List<Spot> spots = IntStream.rangeClosed(0, 60)
                .mapToObj(i ->
                        new Spot(400 * Math.cos(i * Math.PI / 30), 200 + 200 * Math.sin(i * Math.PI / 30), 5 * i))
                .toList();
        return new SideView(List.of(new Stretch(spots)), 0, craft, 150.0);
    }

    private static BufferedImage painted(SideView view) {
        BufferedImage image = new BufferedImage(WIDE, TALL, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Pen pen = new Pen(g, DAY, 1, new TextFit());
        Box box = new Box(0, 0, WIDE, TALL);
        pen.fill(box, DAY.palette().ground());
        ActPainter.paint(pen, view, box);
        g.dispose();
        return image;
    }

    /** The middles of what an aircraft adds to the picture below the words: from the crowd, then from above. */
    private static List<double[]> middles(Craft craft) {
        BufferedImage without = painted(circle(null));
        BufferedImage with = painted(circle(craft));
        List<double[]> middles = new ArrayList<>();
        double x = 0;
        double y = 0;
        int count = 0;
        int empty = 0;
        for (int row = 28; row < TALL; row++) {
            int before = count;
            for (int column = 0; column < WIDE; column++) {
                if (without.getRGB(column, row) != with.getRGB(column, row)) {
                    x += column;
                    y += row;
                    count++;
                }
            }
            empty = count == before ? empty + 1 : 0;
            if (count > 0 && (empty > 3 || row == TALL - 1)) {
                middles.add(new double[] {x / count, y / count});
                x = 0;
                y = 0;
                count = 0;
            }
        }
        return middles;
    }

    @Test
    void theAircraftIsShownFromTheCrowdAndFromAboveItOneOverTheOther() {
        List<double[]> seen = middles(Craft.predicted(new Spot(300, 340, 150), 0, 0));
        assertThat(seen).hasSize(2);
        // To one scale what is at the same place along the line is at the same place across both.
        assertThat(seen.get(0)[0]).isCloseTo(seen.get(1)[0], within(2.0));
    }

    @Test
    void furtherFromTheCrowdIsHigherInTheViewFromAboveOnly() {
        List<double[]> near = middles(Craft.predicted(new Spot(0, 50, 150), 0, 0));
        List<double[]> far = middles(Craft.predicted(new Spot(0, 350, 150), 0, 0));
        assertThat(far.get(1)[1]).isLessThan(near.get(1)[1] - 20);
        assertThat(far.get(0)[1]).isCloseTo(near.get(0)[1], within(0.1));
    }

    @Test
    void aReadPlaceIsAFullShapeAndAPredictedOneHollow() {
        Spot at = new Spot(0, 200, 150);
        for (double[] middle : middles(Craft.predicted(at, 0, 0))) {
            int x = (int) Math.round(middle[0]);
            int y = (int) Math.round(middle[1]);
            assertThat(painted(circle(Craft.read(at, 0, 0, List.of(), 0))).getRGB(x, y))
                    .isEqualTo(DAY.palette().text().getRGB());
            assertThat(painted(circle(Craft.predicted(at, 0, 0))).getRGB(x, y))
                    .isEqualTo(DAY.palette().ground().getRGB());
        }
    }

    @Test
    void anAircraftBeyondThePictureStaysAtItsEdge() {
        for (double[] middle : middles(Craft.read(new Spot(90_000, 90_000, 9000), 0, 0, List.of(), 0))) {
            assertThat(middle[0]).isBetween(WIDE - 40.0, (double) WIDE);
        }
    }

    @Test
    void whereItWasInTheLastSecondsIsDrawnBehindIt() {
        Spot at = new Spot(0, 200, 150);
        Craft alone = Craft.read(at, 0, 0, List.of(), 0);
        Craft trailed = Craft.read(at, 0, 0, List.of(new Spot(-300, 200, 150)), 0);
        assertThat(middles(trailed).get(1)[0]).isLessThan(middles(alone).get(1)[0] - 5);
    }

    @Test
    void aDeepActInLittleRoomShowsBothWaysAllTheSame() {
        List<Spot> deep = List.of(new Spot(-900, 0, 20), new Spot(0, 2500, 150), new Spot(900, 0, 20));
        SideView view = new SideView(List.of(new Stretch(deep)), 0, null, 150.0);
        BufferedImage image = painted(view);
        int rows = 0;
        int first = TALL;
        int last = 0;
        for (int row = 0; row < TALL; row++) {
            for (int column = 0; column < WIDE; column++) {
                if (image.getRGB(column, row) == DAY.palette().pathNow().getRGB()) {
                    first = Math.min(first, row);
                    last = Math.max(last, row);
                    rows++;
                    break;
                }
            }
        }
        assertThat(first).isLessThan(TALL / 2);
        assertThat(last).isGreaterThan(TALL / 2);
        assertThat(rows).isGreaterThan(TALL / 3);
    }

    @Test
    void theAgeOfAReadingIsAWordOnceItMatters() {
        Spot at = new Spot(0, 0, 100);
        assertThat(Craft.read(at, 0, 0, List.of(), 0.9).word()).isEqualTo("read");
        assertThat(Craft.read(at, 0, 0, List.of(), 2.4).word()).isEqualTo("read 2 s ago");
        assertThat(Craft.predicted(at, 0, 0).word()).isEqualTo("predicted");
    }
}
