package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.sight.picture.Flown;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The head of a drill: what is asked at the left, how far one is at the right, and neither over the other. */
class DrillHeadTest {
    private static final String ASKS = "Say aloud what it is, and what to look for: half loop with roll out on top";
    private static final int TALL = 330;

    private static BufferedImage painted(int wide, int percent, String asks, String score) {
        DrillPage page = new DrillPage(new Appearance(Themes.DAY, new Zoom(percent)));
        page.show(new Drill.View(asks, Flown.NONE, List.of(), -1, "", null, score, "", false));
        page.setSize(wide, TALL);
        BufferedImage image = new BufferedImage(wide, TALL, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        page.paint(g);
        g.dispose();
        return image;
    }

    /** The first and the last column of the head with ink; {@code {wide, -1}} if there is none. */
    private static int[] inked(BufferedImage image) {
        int ground = image.getRGB(1, TALL - 1);
        int[] ends = {image.getWidth(), -1};
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < TALL * 0.3; y++) {
                if (image.getRGB(x, y) != ground) {
                    ends[0] = Math.min(ends[0], x);
                    ends[1] = x;
                }
            }
        }
        return ends;
    }

    @ParameterizedTest
    @CsvSource({"1280, 100", "1280, 200", "1920, 150", "800, 200"})
    void theQuestionEndsBeforeTheScoreBegins(int wide, int percent) {
        String score = "Answered 12, of these 9 right. Due today: 86 of 86";
        int[] question = inked(painted(wide, percent, ASKS, ""));
        int[] count = inked(painted(wide, percent, "", score));

        assertThat(question[0]).as("at the left").isLessThan(wide / 10);
        assertThat(question[1]).isPositive();
        assertThat(count[1]).as("at the right").isGreaterThan(wide - wide / 10);
        int[] beside = inked(painted(wide, percent, ASKS, score));
        assertThat(beside[0]).isCloseTo(question[0], within(4));
        assertThat(beside[1]).isEqualTo(count[1]);
        assertThat(isBlankBetween(painted(wide, percent, ASKS, score), count[0] - 12, count[0] - 2))
                .as("room between the two")
                .isTrue();
    }

    /** Who learns sits back from the screen, and looks at the flight between two answers. */
    @Test
    void answersAreAsLargeAsWhatIsReadOut() {
        BufferedImage image = new BufferedImage(1280, TALL, BufferedImage.TYPE_INT_RGB);
        DrillPage page = new DrillPage(new Appearance(Themes.DAY, Zoom.NONE));
        page.show(new Drill.View("", Flown.NONE, List.of("loop"), -1, "", null, "", "", false));
        page.setSize(1280, TALL);
        page.paint(image.getGraphics());
        int ground = image.getRGB(1, TALL - 1);
        long inked = IntStream.range(0, TALL)
                .filter(y -> IntStream.range(0, 1280).anyMatch(x -> image.getRGB(x, y) != ground))
                .count();

        assertThat(inked).isGreaterThan(19);
    }

    private static boolean isBlankBetween(BufferedImage image, int fromX, int toX) {
        int ground = image.getRGB(1, TALL - 1);
        for (int x = fromX; x < toX; x++) {
            for (int y = 0; y < TALL * 0.2; y++) {
                if (image.getRGB(x, y) != ground) {
                    return false;
                }
            }
        }
        return true;
    }
}
