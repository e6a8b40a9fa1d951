package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Insets;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class PlainTextTest {
    /** Or the words would move away from what they stand under. */
    @Test
    void textStaysAtItsEdgeInAnotherTheme() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE));
            JTextArea area = PlainText.wrapped("Heading", "The day");
            LookAndFeel.wear(new Appearance(Themes.NIGHT, Zoom.NONE));
            SwingUtilities.updateComponentTreeUI(area);
            assertThat(area.getInsets()).isEqualTo(new Insets(0, 0, 0, 0));
        });
    }
}
