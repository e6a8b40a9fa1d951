package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.console.words.WordsView.RemarkRow;
import java.awt.Component;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import javax.swing.JList;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsCellsTest {
    /** As wide as the list is in a window of 1280. */
    private static final int WIDTH = 368;

    @ParameterizedTest
    @ValueSource(ints = {100, 110, 120, 130, 140, 150, 170, 200})
    void theTimeThereIsIsNotCutOffAtAnyZoom(int zoom) {
        LookAndFeel.loadType();
        assertThat(Arrays.equals(painted(zoom, "17.0 s"), painted(zoom, "19.0 s")))
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 120, 150, 200})
    void thatItIsADraftIsNotCutOffAtAnyZoom(int zoom) {
        LookAndFeel.loadType();
        assertThat(Arrays.equals(
                        painted(zoom, "9 s", new Mark(Form.RING, Tone.CALM, "Draft")),
                        painted(zoom, "9 s", new Mark(Form.RING, Tone.CALM, "Drafx"))))
                .isFalse();
    }

    private static int[] painted(int zoom, String room) {
        return painted(zoom, room, null);
    }

    private static int[] painted(int zoom, String room, @Nullable Mark draft) {
        Mark verdict = new Mark(Form.DISC, Tone.GOOD, "On a good day: 13.8 s of " + room);
        Component cell = WordsCells.remarks(new Appearance(Themes.DAY, new Zoom(zoom)))
                .getListCellRendererComponent(
                        new JList<>(),
                        new RemarkRow("Explanation", "Watch the wheels.", verdict, draft),
                        0,
                        false,
                        false);
        int height = cell.getPreferredSize().height;
        cell.setSize(WIDTH, height);
        BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
        cell.paint(image.getGraphics());
        return image.getRGB(0, 0, WIDTH, height, null, 0, WIDTH);
    }
}
