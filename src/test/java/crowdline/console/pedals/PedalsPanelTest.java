package crowdline.console.pedals;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Mark;
import crowdline.console.pedals.PedalHost.Found;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonStatus;
import crowdline.telemetry.serial.PortName;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class PedalsPanelTest {
    private final List<LearnedButtons> kept = new ArrayList<>();
    private final PedalsPanel panel = new PedalsPanel(new Appearance(Themes.DAY, Zoom.NONE), new Host(), () -> {});
    private long whenMs = 1000;

    private final class Host implements PedalHost {
        @Override
        public void findPorts(Consumer<Found> found) {}

        @Override
        public LearnedButtons learned() {
            return LearnedButtons.NONE;
        }

        @Override
        public void keep(LearnedButtons learned) {
            kept.add(learned);
        }

        @Override
        public ButtonStatus status() {
            return new ButtonStatus(ButtonStatus.State.LOOKING, "");
        }
    }

    private boolean press(int code) {
        whenMs += 500;
        boolean taken = panel.key(new KeyEvent(panel, KeyEvent.KEY_PRESSED, whenMs, 0, code, KeyEvent.CHAR_UNDEFINED));
        panel.key(new KeyEvent(panel, KeyEvent.KEY_RELEASED, whenMs + 50, 0, code, KeyEvent.CHAR_UNDEFINED));
        return taken;
    }

    private static List<Component> all(Container container) {
        List<Component> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    private void click(String words) {
        all(panel).stream()
                .filter(c -> c instanceof JButton b && b.getText().startsWith(words))
                .map(JButton.class::cast)
                .findFirst()
                .orElseThrow()
                .doClick();
    }

    @Test
    void escapeOfARemoteIsLearnedAndDoesNotCloseTheWindow() {
        assertThat(press(KeyEvent.VK_ESCAPE))
                .as("closes while nothing is learned")
                .isFalse();
        click("Learn");
        assertThat(press(KeyEvent.VK_ESCAPE)).isTrue();
        assertThat(press(KeyEvent.VK_ESCAPE)).isTrue();
        assertThat(kept).containsExactly(LearnedButtons.NONE.with("ESCAPE", "next"));
    }

    @Test
    void aKeyHeldDownIsOnePress() {
        click("Learn");
        for (int i = 0; i < 5; i++) {
            panel.key(new KeyEvent(
                    panel, KeyEvent.KEY_PRESSED, 1000 + i * 30, 0, KeyEvent.VK_F9, KeyEvent.CHAR_UNDEFINED));
        }
        assertThat(kept).isEmpty();
    }

    @Test
    void tabStopsLearning() {
        click("Learn");
        assertThat(press(KeyEvent.VK_TAB)).isTrue();
        press(KeyEvent.VK_F9);
        press(KeyEvent.VK_F9);
        assertThat(kept).isEmpty();
    }

    @Test
    void enterMovesAKeyThatWasAskedFor() {
        click("Learn");
        press(KeyEvent.VK_PERIOD);
        assertThat(kept).isEmpty();
        press(KeyEvent.VK_ENTER);
        assertThat(kept).containsExactly(LearnedButtons.NONE.with("PERIOD", "next"));
    }

    @Test
    void aPortTypedByHandIsUsed() {
        JTextField field = all(panel).stream()
                .filter(JTextField.class::isInstance)
                .map(JTextField.class::cast)
                .findFirst()
                .orElseThrow();
        field.setText(" /dev/pts/7 ");
        field.postActionEvent();
        assertThat(kept).containsExactly(LearnedButtons.NONE.withPort("/dev/pts/7"));
    }

    @Test
    void aSpeedThatIsChosenIsUsed() {
        JComboBox<?> speeds = all(panel).stream()
                .filter(JComboBox.class::isInstance)
                .map(c -> (JComboBox<?>) c)
                .findFirst()
                .orElseThrow();
        assertThat(String.valueOf(speeds.getSelectedItem())).isEqualTo("9,600 baud, the usual");
        speeds.setSelectedIndex(speeds.getSelectedIndex() + 1);
        assertThat(kept).containsExactly(LearnedButtons.NONE.withBaud(19_200));
    }

    @Test
    void howThePortStandsIsSaid() {
        Found none = new Found(List.of(), null);
        Found one = new Found(List.of(new PortName("/dev/ttyUSB0", "Switch (ttyUSB0)")), null);
        ButtonStatus nothing = new ButtonStatus(ButtonStatus.State.LOOKING, "");
        assertThat(PortPart.mark(none, nothing, null).word())
                .startsWith("No serial port was found. Plug the pedal in; it appears here by itself.");
        assertThat(PortPart.mark(one, nothing, null).word()).startsWith("No port chosen");
        assertThat(PortPart.mark(new Found(List.of(), "No library; do this"), nothing, null)
                        .word())
                .isEqualTo("No library; do this");
        Mark refused = PortPart.mark(
                none,
                new ButtonStatus(ButtonStatus.State.GONE, "Linux does not let you use /dev/ttyUSB0; run this"),
                "/dev/ttyUSB0");
        assertThat(refused.word()).isEqualTo("Not connected: Linux does not let you use /dev/ttyUSB0; run this");
        assertThat(PortPart.mark(none, new ButtonStatus(ButtonStatus.State.READY, "ready"), "COM3")
                        .word())
                .isEqualTo("Connected: pedals at COM3");
    }
}
