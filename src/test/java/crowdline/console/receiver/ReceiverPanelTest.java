package crowdline.console.receiver;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class ReceiverPanelTest {
    private static final List<ReceiverChoice> PORTS = List.of(
            new ReceiverChoice("Receiver (ttyUSB0)", "/dev/ttyUSB0"),
            new ReceiverChoice("Modem (ttyS0)", "/dev/ttyS0"));

    private final List<String> told = new ArrayList<>();

    private ReceiverPanel panel(Receivers found) {
        return new ReceiverPanel(
                new Appearance(Themes.DAY, Zoom.NONE),
                found,
                (where, faster) -> told.add(where + " × " + faster),
                () -> Optional.of(Path.of("/logs/flight.igc")),
                () -> told.add("closed"));
    }

    private static void enter(ReceiverPanel panel) {
        panel.choices()
                .getActionForKeyStroke(KeyStroke.getKeyStroke("ENTER"))
                .actionPerformed(new ActionEvent(panel.choices(), ActionEvent.ACTION_PERFORMED, "Enter"));
    }

    @Test
    void portInUseIsMarkedAndChosenFirst() {
        ReceiverPanel panel = panel(new Receivers(PORTS, "/dev/ttyS0", "no valid data"));
        assertThat(ReceiverRow.of(new Receivers(PORTS, "/dev/ttyS0", "")))
                .filteredOn(ReceiverRow::inUse)
                .extracting(ReceiverRow::where)
                .containsExactly("/dev/ttyS0");
        assertThat(panel.choices().getSelectedValue().where()).isEqualTo("/dev/ttyS0");
        assertThat(said(panel, 1)).isEqualTo("Modem (ttyS0), in use");
        assertThat(said(panel, 0)).isEqualTo("Receiver (ttyUSB0)");
    }

    private static String said(ReceiverPanel panel, int index) {
        return panel.choices()
                .getCellRenderer()
                .getListCellRendererComponent(
                        panel.choices(), panel.choices().getModel().getElementAt(index), index, false, false)
                .getAccessibleContext()
                .getAccessibleName();
    }

    @Test
    void whatIsInUseIsListedEvenIfNoPortOfThatNameWasFound() {
        Receivers found = new Receivers(PORTS, "/dev/pts/7", "receiving");
        ReceiverRow first = ReceiverRow.of(found).get(0);
        assertThat(first.name()).isEqualTo("/dev/pts/7");
        assertThat(first.inUse()).isTrue();
        assertThat(ReceiverRow.said(found)).startsWith("In use: /dev/pts/7: receiving. ");
    }

    @Test
    void noneIsMarkedWhereNothingIsInUse() {
        List<ReceiverRow> rows = ReceiverRow.of(new Receivers(PORTS, "", ""));
        assertThat(rows)
                .filteredOn(ReceiverRow::inUse)
                .singleElement()
                .satisfies(row -> assertThat(row.name()).startsWith("None"));
        assertThat(panel(new Receivers(PORTS, "", "")).choices().getSelectedIndex())
                .isZero();
    }

    @Test
    void typedPortIsUsedAsTyped() {
        ReceiverPanel panel = panel(new Receivers(List.of(), "", ""));
        panel.typed().setText("  /dev/pts/7 ");
        panel.typed().postActionEvent();
        assertThat(told).containsExactly("closed", "/dev/pts/7 × 1.0");
    }

    @Test
    void enterInAnEmptyFieldChangesNothing() {
        ReceiverPanel panel = panel(new Receivers(PORTS, "", ""));
        panel.typed().setText("  ");
        panel.typed().postActionEvent();
        assertThat(told).isEmpty();
    }

    @Test
    void enterUsesTheChosenRow() {
        ReceiverPanel panel = panel(new Receivers(PORTS, "/dev/ttyS0", ""));
        panel.choices().setSelectedIndex(0);
        enter(panel);
        panel.choices().setSelectedIndex(3);
        enter(panel);
        panel.choices().setSelectedIndex(4);
        enter(panel);
        assertThat(told)
                .containsExactly(
                        "closed", "/dev/ttyUSB0 × 1.0", "closed", "/logs/flight.igc × 4.0", "closed", " × 1.0");
    }
}
