package crowdline.console.practice;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.MarkLine;
import crowdline.console.path.CrowdView;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.practice.Level;
import crowdline.sight.PathExtent;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** The keys of a flight that is only watched. */
class SpotPanelTest {
    private static final Spotted ASKED = new Spotted(
            "An act, flight 4",
            new PracticeChoice("a", Level.TWO, 4),
            new CrowdView(SkyView.NONE, new PathExtent(0, 1, 0, 1)),
            10,
            70,
            List.of("loop", "spin"),
            List.of("The loop is left out", "The spin is left out"),
            1);

    private double clockS = 100;
    private final List<PracticeChoice> next = new ArrayList<>();
    private final SpotPanel panel;

    SpotPanelTest() throws InvocationTargetException, InterruptedException {
        SpotPanel[] made = new SpotPanel[1];
        SwingUtilities.invokeAndWait(
                () -> made[0] = new SpotPanel(new Appearance(Themes.DAY, Zoom.NONE), ASKED, () -> clockS, next::add));
        panel = Objects.requireNonNull(made[0]);
    }

    private void press(String key) throws InvocationTargetException, InterruptedException {
        SwingUtilities.invokeAndWait(() -> panel.getActionForKeyStroke(KeyStroke.getKeyStroke(key))
                .actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, "")));
    }

    private static Stream<Component> all(Container in) {
        return Stream.of(in.getComponents());
    }

    private String text(String name) {
        return all(panel)
                .filter(JTextArea.class::isInstance)
                .filter(c -> name.equals(c.getAccessibleContext().getAccessibleName()))
                .map(c -> ((JTextArea) c).getText())
                .findFirst()
                .orElseThrow();
    }

    private String verdict() {
        return all(panel)
                .filter(MarkLine.class::isInstance)
                .map(c -> Objects.requireNonNull(((MarkLine) c).shown()).word())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void nothingTellsTheAnswerBeforeItIsGiven() {
        assertThat(verdict()).isEqualTo("What did the pilot change?");
        assertThat(text("Answer 2")).isEqualTo("2  The spin is left out");
        assertThat(text("The plan")).isEqualTo("Planned: loop, spin.");
    }

    @Test
    void theFirstAnswerCounts() throws InvocationTargetException, InterruptedException {
        press("1");
        assertThat(verdict()).isEqualTo("No: it was 2");
        assertThat(text("Answer 2")).isEqualTo("2  The spin is left out (this one)");
        press("2");
        assertThat(verdict()).isEqualTo("No: it was 2");
    }

    @Test
    void itIsFlownAtTheSpeedOneChoosesAndStoppedBySpace() throws InvocationTargetException, InterruptedException {
        assertThat(text("How fast")).startsWith("0 s of 60 s");
        clockS += 10;
        press("typed +");
        assertThat(text("How fast")).startsWith("10 s of 60 s, 2");
        clockS += 5;
        press("SPACE");
        assertThat(text("How fast")).startsWith("20 s of 60 s").endsWith("stopped");
        clockS += 50;
        press("LEFT");
        assertThat(text("How fast")).startsWith("15 s of 60 s");
    }

    @Test
    void nIsTheNextFlight() throws InvocationTargetException, InterruptedException {
        press("N");
        assertThat(next).containsExactly(new PracticeChoice("a", Level.TWO, 5));
    }
}
