package crowdline.console.prepare.cells;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.ListPageTest;
import crowdline.console.prepare.SampleTools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.Act;
import java.awt.event.ActionEvent;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Cells pasted from a spreadsheet, read at once and taken as one change. */
class CellsPanelTest {
    private final SampleTools sample =
            new SampleTools(ShowArranging.empty("Day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null));
    private boolean closed;
    private final CellsPanel panel =
            new CellsPanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools.editor(), sample, () -> closed = true);

    @Test
    void actsAreReadAndTakenAndOneUndoTakesThemBack() {
        int before = sample.tools.editor().now().acts().size();
        panel.paste("start\tact\taircraft\n19:00\tOwls\tformation of 4\n19:10\tLunch\t\n19:20\tHover\thelicopter\n");
        assertThat(panel.rows()).hasSize(3);
        assertThat(panel.rows().get(0)).startsWith("19:00  Owls (formation)");
        assertThat(panel.said()).isEqualTo("2 of 3 rows can be taken as acts. Undo takes all of them back.");
        panel.take();
        assertThat(closed).isTrue();
        assertThat(sample.tools.editor().now().acts()).extracting(Act::title).contains("Owls", "Hover");
        assertThat(sample.tools.editor().now().acts()).hasSize(before + 2);
        sample.editing.undo();
        assertThat(sample.tools.editor().now().acts()).hasSize(before);
    }

    /** Why a row is left out is longer than the list is wide. */
    @Test
    void theChosenRowIsSaidWhole() {
        panel.paste("start\tact\taircraft\n19:00\tOwls\tformation of 4\n\tLunch\t\n");
        ListPageTest.find(panel, JList.class, "Rows as they were understood").setSelectedIndex(1);
        assertThat(panel.said()).isEqualTo(panel.rows().get(1)).contains("Lunch");
    }

    @Test
    void whileTheyAreTakenItIsSaidHowMany() throws Exception {
        panel.paste("start\tact\taircraft\n19:00\tOwls\tformation of 4\n19:20\tHover\thelicopter\n");
        panel.take();
        SwingUtilities.invokeAndWait(() -> {});
        assertThat(panel.said()).isEqualTo("Taking them: 2 acts so far");
    }

    /** A day's order can take a while; whoever pasted the wrong one need not wait for it. */
    @Test
    void stoppedOnTheWayNothingIsTaken() throws Exception {
        List<Act> before = sample.tools.editor().now().acts();
        List<Runnable> elsewhere = new ArrayList<>();
        sample.making = elsewhere::add;
        panel.paste("start\tact\taircraft\n19:00\tOwls\tformation of 4\n19:20\tHover\thelicopter\n");
        Object escape =
                panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke("ESCAPE"));
        Action stop = panel.getActionMap().get(escape);
        assertThat(stop.isEnabled())
                .as("Escape is the window's while nothing is taken")
                .isFalse();
        panel.take();
        assertThat(stop.isEnabled()).isTrue();
        stop.actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, "stop"));
        SwingUtilities.invokeAndWait(elsewhere.get(0));
        assertThat(sample.tools.editor().now().acts()).isEqualTo(before);
        assertThat(sample.refused).containsExactly("Stopped after 1 act; none of them was taken");
        assertThat(panel.said()).isEqualTo("Stopped; nothing was taken.");
        assertThat(closed).isFalse();
        panel.take();
        SwingUtilities.invokeAndWait(elsewhere.get(1));
        assertThat(sample.tools.editor().now().acts()).hasSize(before.size() + 2);
    }

    @Test
    void aColumnOfWordsMeansRemarks() {
        panel.paste("kind;words\nduty;Mind the rope.\n");
        assertThat(panel.said()).startsWith("1 of 1 rows can be taken as remarks");
        panel.take();
        assertThat(sample.tools.editor().now().remarks()).anyMatch(r -> r.text().equals("Mind the rope."));
    }

    @Test
    void nonsenseIsASentenceAndTakesNothing() {
        panel.paste("\"never closed");
        assertThat(panel.rows()).isEmpty();
        assertThat(panel.said()).contains("the quote that opens here is never closed");
        panel.take();
        assertThat(closed).isFalse();
        panel.paste("");
        assertThat(panel.said()).contains("paste them here");
    }

    @Test
    void tenThousandRowsAreToldAtOnce() {
        panel.paste("start\tact\n" + "10:00\tx\n".repeat(10_000));
        assertThat(panel.said()).contains("10,000");
    }

    /** Read on the event thread, the window would be deaf as long, to F12 as well. */
    @Test
    void cellsAreReadElsewhere() {
        List<Runnable> elsewhere = new ArrayList<>();
        panel.paste("start\tact\n10:00\tOwls\n");
        sample.reading = elsewhere::add;
        panel.paste("start\tact\n10:00\tHerons\n");
        assertThat(panel.rows().get(0)).contains("Owls");
        panel.paste("start\tact\n10:00\tTerns\n");
        elsewhere.get(0).run();
        assertThat(panel.rows().get(0)).as("what was typed over meanwhile").contains("Owls");
        elsewhere.get(1).run();
        assertThat(panel.rows().get(0)).contains("Terns");
    }
}
