package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.paint.Growth.Item;
import crowdline.console.theme.Zoom;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GrowthTest {
    private static final List<Item> TWO = List.of(Item.stays(10, 40), Item.leaves(10, 20));

    private static double[] at(int zoom, double room) {
        return Growth.sizes(TWO, s -> s[0] + s[1] <= room, new Zoom(zoom));
    }

    @Test
    void whereThereIsRoomAllGrowWithTheZoom() {
        assertThat(at(150, 1000)).containsExactly(60, 30);
    }

    @Test
    void whereItEndsTheMostImportantGoesFirst() {
        assertThat(at(110, 65)[0]).isEqualTo(44);
        assertThat(at(110, 65)[1]).isCloseTo(21, within(0.5));
    }

    @Test
    void theLeastImportantLeavesWholeForOneThatFallsTooFarBehind() {
        assertThat(at(140, 60)).containsExactly(40, 20);
        assertThat(at(200, 60)[1]).isZero();
        assertThat(at(200, 60)[0]).isGreaterThan(56);
    }

    @Test
    void nothingLeavesWhereThatGivesNoRoom() {
        double[] sizes = Growth.sizes(TWO, s -> s[0] <= 40 && s[1] <= 20, new Zoom(200));
        assertThat(sizes).containsExactly(40, 20);
    }

    @Test
    void noTextIsSmallerAtALargerZoomAndNoneComesBack() {
        Random random = new Random(7);
        for (int trial = 0; trial < 300; trial++) {
            List<Item> items = List.of(
                    Item.stays(8, 20 + random.nextInt(60)),
                    Item.stays(8, 10 + random.nextInt(30)).growingBy(0.4),
                    Item.leaves(8, 10 + random.nextInt(30)),
                    Item.more(),
                    Item.leaves(8, 10 + random.nextInt(30)));
            double room = 30 + random.nextInt(200);
            double[] before = null;
            for (int zoom = 100; zoom <= 200; zoom += 10) {
                double[] sizes = Growth.sizes(
                        items, s -> Math.ceil(s[0]) + s[1] + Math.max(s[2], s[4]) + 20 * s[3] <= room, new Zoom(zoom));
                for (int i = 0; before != null && i < sizes.length; i++) {
                    assertThat(sizes[i] == 0 || (before[i] > 0 && sizes[i] >= before[i]))
                            .as("trial %d, text %d at %d %%", trial, i, zoom)
                            .isTrue();
                }
                before = sizes;
            }
        }
    }
}
