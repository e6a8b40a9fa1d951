package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Insets;
import java.awt.Point;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.Test;

class PlainTextTest {
    /** What is told of a figure changes with it, and the head of its act stays in sight. */
    @Test
    void wordsThatChangeScrollNothing() throws Exception {
        JViewport around = new JViewport();
        SwingUtilities.invokeAndWait(() -> {
            LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE));
            JTextArea area = PlainText.wrapped("Told", "");
            JPanel tall = new JPanel(null);
            tall.setSize(200, 1000);
            area.setBounds(0, 800, 200, 60);
            tall.add(area);
            around.setView(tall);
            around.setSize(200, 300);
            LookAndFeel.wear(new Appearance(Themes.NIGHT, Zoom.NONE));
            SwingUtilities.updateComponentTreeUI(tall);
            area.setText("Flown between two figures, so it follows from them.");
        });
        // Swing scrolls a moment later.
        for (int i = 0; i < 3; i++) {
            SwingUtilities.invokeAndWait(() -> {});
        }
        assertThat(around.getViewPosition()).isEqualTo(new Point(0, 0));
    }

    @Test
    void theKeysPassByWhatHasNoWords() {
        JTextArea area = PlainText.wrapped("Told", "");
        assertThat(area.isFocusable()).isFalse();
        area.setText("It fits.");
        assertThat(area.isFocusable()).isTrue();
        area.setFocusable(false);
        assertThat(area.isFocusable()).isFalse();
    }

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

    @Test
    void wordsOfAConstructorAreNoHtmlEither() {
        String words = "<html><b>low</b>";
        assertThat(List.of(
                        PlainText.plain(new JLabel(words)),
                        PlainText.plain(new JButton(words)),
                        PlainText.plain(new JToggleButton(words))))
                .allSatisfy(c -> assertThat(c.getClientProperty(BasicHTML.propertyKey))
                        .as(c.getClass().getSimpleName())
                        .isNull());
    }

    @Test
    void aTipOfWordsFromAFileShowsThemAsTheyStand() {
        assertThat(PlainText.tip("<html><img src='x'> & more"))
                .contains("&lt;html&gt;&lt;img src='x'&gt; &amp; more")
                .doesNotContain("<img");
    }
}
