package crowdline.console.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextFit;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import crowdline.sight.SideView.Stretch;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FigurePainterTest {
    private static final Appearance DAY = new Appearance(Themes.DAY, Zoom.NONE);
    private static final int WIDE = 440;
    private static final int TALL = 210;
    private static final Color NOW = DAY.palette().pathNow();
    private static final Color OTHER = DAY.palette().path();

    private static Stretch loop(double alongM) {
        return new Stretch(IntStream.rangeClosed(0, 60)
                .mapToObj(i ->
                        new Spot(alongM + 100 * Math.sin(i * Math.PI / 30), 250 - 100 * Math.cos(i * Math.PI / 30)))
                .toList());
    }

    /** A loop, a loop beside it, and one far off. */
    private static SideView act(@Nullable Craft craft) {
        return new SideView(List.of(loop(0), loop(150), loop(900)), 0, craft, 150.0);
    }

    private static BufferedImage painted(SideView view) {
        BufferedImage image = new BufferedImage(WIDE, TALL, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Pen pen = new Pen(g, DAY, 1, new TextFit());
        Box box = new Box(0, 0, WIDE, TALL);
        pen.fill(box, DAY.palette().ground());
        FigurePainter.paint(pen, view, SkyView.NONE, new SketchImage(), box);
        g.dispose();
        return image;
    }

    private static Rectangle covered(BufferedImage image, Color colour) {
        Rectangle all = new Rectangle(-1, -1);
        for (int x = 0; x < WIDE; x++) {
            for (int y = 0; y < TALL; y++) {
                if (image.getRGB(x, y) == colour.getRGB()) {
                    all.add(x, y);
                }
            }
        }
        return all;
    }

    /** A level circle is a line from the crowd: what there is to see of it is seen from above. */
    @Test
    void aFlatFigureLeavesRoomForTheViewFromAbove() {
        List<Spot> circle = IntStream.rangeClosed(0, 60)
                .mapToObj(i -> new Spot(200 * Math.sin(i * Math.PI / 30), 200 - 200 * Math.cos(i * Math.PI / 30), 100))
                .toList();
        Rectangle drawn = covered(painted(new SideView(List.of(new Stretch(circle)), 0, null, 150.0)), NOW);
        assertThat(drawn.height).isGreaterThan((int) (0.3 * TALL));
    }

    @Test
    void theFigureBeingFlownFillsItsPlace() {
        assertThat(covered(painted(act(null)), NOW).height).isGreaterThan((int) (0.7 * TALL));
    }

    @Test
    void ofTheRestOnlyHowTheNextBeginsIsDrawn() {
        SideView act = act(null);
        assertThat(covered(painted(act), OTHER).isEmpty()).isFalse();
        assertThat(covered(painted(act.withNext(-1)), OTHER).isEmpty()).isTrue();
        List<Stretch> upsideDown = new ArrayList<>(act.stretches());
        List<Spot> spots = new ArrayList<>(loop(900).spots());
        Collections.reverse(spots);
        upsideDown.set(2, new Stretch(spots));
        BufferedImage other = painted(new SideView(upsideDown, 0, null, 150.0));
        assertThat(difference(other, painted(act)).isEmpty()).isTrue();
    }

    /** Where another figure begins that comes instead, nobody knows; an eye that looked up finds the one being flown where it was. */
    @Test
    void whatIsDroppedOrSwappedMovesNothingAndNothingElseIsDrawnForIt() {
        SideView act = act(null);
        BufferedImage changed = painted(act.withNext(2));
        assertThat(covered(changed, NOW)).isEqualTo(covered(painted(act), NOW));
        assertThat(covered(changed, OTHER).isEmpty()).isTrue();
    }

    /** A next figure that goes 200 m to the right below the loop, then back over it or straight up. */
    private static SideView withNext(Spot... end) {
        List<Spot> spots = new ArrayList<>(List.of(new Spot(-100, 200), new Spot(0, 200), new Spot(100, 200)));
        spots.addAll(List.of(end));
        return new SideView(List.of(loop(0), new Stretch(spots)), 0, null, 150.0);
    }

    @Test
    void theNextFigureIsDrawnNoFurtherThanItsBeginning() {
        BufferedImage over = painted(withNext(new Spot(-80, 330)));
        BufferedImage past = painted(withNext(new Spot(90, 330)));
        assertThat(covered(over, OTHER).isEmpty()).isFalse();
        assertThat(difference(over, past).isEmpty())
                .as("%s", difference(over, past))
                .isTrue();
    }

    @Test
    void theFiguresAfterTheNextAreNotDrawn() {
        SideView two = act(null);
        List<Stretch> more = new ArrayList<>(List.of(loop(0), loop(150), loop(-60), loop(40)));
        BufferedImage without = painted(new SideView(two.stretches().subList(0, 2), 0, null, 150.0));
        BufferedImage with = painted(new SideView(more, 0, null, 150.0));
        assertThat(difference(with, without).isEmpty())
                .as("%s", difference(with, without))
                .isTrue();
    }

    /** Where two pictures differ. */
    private static Rectangle difference(BufferedImage one, BufferedImage other) {
        Rectangle all = new Rectangle(-1, -1);
        for (int x = 0; x < WIDE; x++) {
            for (int y = 0; y < TALL; y++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    all.add(x, y);
                }
            }
        }
        return all;
    }

    @Test
    void beforeTheActTheFirstFigureIsLarge() {
        SideView before = new SideView(act(null).stretches(), -1, null, 150.0);
        assertThat(covered(painted(before), NOW).height).isGreaterThan((int) (0.7 * TALL));
    }

    @Test
    void aFigureThatIsOnlyTimedHasNoDrawing() {
        SideView timed = new SideView(List.of(new Stretch(List.of()), loop(150)), 0, null, 150.0);
        BufferedImage image = painted(timed);
        assertThat(covered(image, NOW).isEmpty()).isTrue();
        assertThat(covered(image, OTHER).isEmpty()).isTrue();
    }

    @Test
    void anAircraftFarOffStandsAtTheEdgeWithItsDistance() {
        Craft far = Craft.read(new Spot(9000, 0, 300), 0, 0, List.of(), 0);
        int right = covered(painted(act(far)), DAY.palette().text()).x
                + covered(painted(act(far)), DAY.palette().text()).width;
        assertThat(right).isGreaterThan(WIDE / 2);
        assertThat(act(far).craftWord(false)).isEqualTo("read, 9.0 km away");
        assertThat(act(far).craftWord(true)).isEqualTo("read");
    }

    @Test
    void aFlatPassIsDrawnInTheMiddleOfItsPlace() {
        SideView pass =
                new SideView(List.of(new Stretch(List.of(new Spot(-400, 60), new Spot(400, 60)))), 0, null, null);
        Rectangle covered = covered(painted(pass), NOW);
        assertThat(covered.width).isGreaterThan((int) (0.7 * WIDE));
        assertThat(covered.y).isBetween(TALL / 5, TALL * 4 / 5);
    }
}
