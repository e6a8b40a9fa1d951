package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.keys.Command;
import crowdline.console.live.SampleLiveViews;
import crowdline.console.live.SampleOnAir;
import crowdline.console.pedals.PedalHost;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.walk.SmallTour;
import crowdline.console.walk.Walk;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonSignal;
import crowdline.telemetry.serial.ButtonStatus;
import crowdline.telemetry.serial.ControlLine;
import crowdline.telemetry.serial.HeardSignal;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("window")
class ConsoleFrameTest {
    private final FakeHost host = new FakeHost();
    private @Nullable ConsoleFrame frame;

    @BeforeEach
    void open() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
        SwingUtilities.invokeAndWait(() -> {
            LookAndFeel.loadType();
            Appearance appearance = new Appearance(Themes.DAY, Zoom.NONE);
            LookAndFeel.wear(appearance);
            ConsoleFrame opened = new ConsoleFrame(host, appearance);
            opened.setVisible(true);
            opened.onAir(host.onAir);
            opened.walk(host.walk);
            opened.showPrepare(SampleScreens.prepare());
            opened.showGlossary(SampleScreens.glossary());
            opened.go(Place.LIVE);
            frame = opened;
        });
        SwingUtilities.invokeAndWait(() -> {});
    }

    @AfterEach
    void close() throws Exception {
        ConsoleFrame opened = frame;
        if (opened != null) {
            SwingUtilities.invokeAndWait(opened::dispose);
        }
    }

    private ConsoleFrame frame() {
        ConsoleFrame opened = frame;
        assertThat(opened).isNotNull();
        return opened;
    }

    private void press(Component on, int code, char typed, long whenMs) {
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        manager.dispatchEvent(new KeyEvent(on, KeyEvent.KEY_PRESSED, whenMs, 0, code, typed));
        manager.dispatchEvent(new KeyEvent(on, KeyEvent.KEY_RELEASED, whenMs + 50, 0, code, typed));
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

    @Test
    void spaceStepsFromEveryComponentOfTheWindow() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            long whenMs = 10_000;
            for (Component component : all(frame().getRootPane())) {
                host.onAir.given.clear();
                whenMs += 1000;
                press(component, KeyEvent.VK_SPACE, ' ', whenMs);
                assertThat(host.onAir.given).as("from %s", component.getClass()).containsExactly(Command.NEXT);
            }
        });
    }

    @Test
    void aThemeDressesTheWindowsThatAreThereAndNoneThatIsGone() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            AtomicInteger dressed = new AtomicInteger();
            JDialog dialog = new JDialog(frame(), "A box");
            dialog.add(new JLabel("words") {
                @Override
                public void updateUI() {
                    super.updateUI();
                    // Called by the constructor as well, before there is anything to count with.
                    if (isDisplayable() || getParent() != null) {
                        dressed.incrementAndGet();
                    }
                }
            });
            dialog.pack();
            LookAndFeel.wear(new Appearance(Themes.NIGHT, Zoom.NONE));
            assertThat(dressed).hasValue(1);
            dialog.dispose();
            LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE));
            assertThat(dressed).hasValue(1);
        });
    }

    @Test
    void spacePlaysTheWalkFromEveryComponentOfTheWindow() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            frame().go(Place.WALK);
            long whenMs = 10_000;
            for (Component component : all(frame().getRootPane())) {
                whenMs += 1000;
                press(component, KeyEvent.VK_SPACE, ' ', whenMs);
                assertThat(host.walk.view(0).top().state().word())
                        .as("from %s", component.getClass())
                        .isEqualTo("Playing");
                press(component, KeyEvent.VK_SPACE, ' ', whenMs + 500);
            }
            assertThat(host.onAir.given).isEmpty();
        });
    }

    @Test
    void noteTakesLettersAndEscapeLeavesIt() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            frame().go(Place.WALK);
            press(frame(), KeyEvent.VK_N, 'n', 1000);
            assertThat(all(frame().getRootPane()))
                    .filteredOn(c -> c instanceof javax.swing.JTextField && c.isShowing())
                    .hasSize(1);
            press(frame(), KeyEvent.VK_ESCAPE, (char) 27, 2000);
            assertThat(all(frame().getRootPane()))
                    .filteredOn(c -> c instanceof javax.swing.JTextField && c.isShowing())
                    .isEmpty();
        });
    }

    @Test
    void theIncidentPageIsLeftOnlyByTypingTheWord() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            host.onAir.view = SampleLiveViews.incident();
            frame().go(Place.LIVE);
            press(frame(), KeyEvent.VK_SPACE, ' ', 1000);
            press(frame(), KeyEvent.VK_ESCAPE, '\u001b', 2000);
            press(frame(), KeyEvent.VK_F5, KeyEvent.CHAR_UNDEFINED, 3000);
            press(frame(), KeyEvent.VK_F2, KeyEvent.CHAR_UNDEFINED, 4000);
            assertThat(host.onAir.given).isEmpty();
            assertThat(host.onAir.resumed).isZero();
            long whenMs = 5000;
            for (int i = 0; i < "resume".length(); i++) {
                char letter = "resume".charAt(i);
                whenMs += 200;
                press(frame(), KeyEvent.getExtendedKeyCodeForChar(letter), letter, whenMs);
            }
            assertThat(host.onAir.resumed).isEqualTo(1);
        });
    }

    @Test
    void everythingThatTakesTheFocusHasAName() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            for (Place place : Place.values()) {
                frame().go(place);
                frame().validate();
                for (Component component : all(frame().getContentPane())) {
                    boolean reached = component.isFocusable()
                            && component.isShowing()
                            && component.getFocusTraversalKeysEnabled()
                            && (component instanceof javax.swing.JList
                                    || component instanceof javax.swing.JTable
                                    || component instanceof javax.swing.AbstractButton
                                    || component instanceof javax.swing.text.JTextComponent);
                    if (reached && !component.getClass().getName().contains("ScrollBar")) {
                        assertThat(component.getAccessibleContext().getAccessibleName())
                                .as("name of %s in %s", component.getClass(), place)
                                .isNotBlank();
                    }
                }
            }
        });
    }

    @Test
    void aPedalGivesTheSameCommandAsAKeyAndOnlyInLive() throws Exception {
        ButtonSignal pedal = new ButtonSignal.Sent('1');
        host.buttons.learned = LearnedButtons.NONE.with(pedal, "next");
        reopen();
        frame().pedal(new HeardSignal(pedal, 1));
        frame().pedal(new HeardSignal(pedal, 1.02)); // a contact that bounces
        SwingUtilities.invokeAndWait(() -> {
            assertThat(host.onAir.given).containsExactly(Command.NEXT);
            frame().go(Place.PREPARE);
        });
        frame().pedal(new HeardSignal(pedal, 2));
        SwingUtilities.invokeAndWait(() -> {
            assertThat(host.onAir.given).containsExactly(Command.NEXT);
            host.onAir.view = SampleLiveViews.incident();
            frame().go(Place.LIVE);
        });
        frame().pedal(new HeardSignal(pedal, 3));
        SwingUtilities.invokeAndWait(() -> assertThat(host.onAir.given).containsExactly(Command.NEXT));
    }

    @Test
    void aPedalLearnedInItsWindowWorksOnceThatIsClosed() throws Exception {
        ButtonSignal pedal = new ButtonSignal.Turned(ControlLine.CTS, true);
        SwingUtilities.invokeLater(() -> {
            KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
            manager.dispatchEvent(new KeyEvent(
                    frame(), KeyEvent.KEY_PRESSED, 1000, KeyEvent.CTRL_DOWN_MASK, KeyEvent.VK_B, '\u0002'));
        });
        JDialog dialog = dialog();
        SwingUtilities.invokeAndWait(() -> all(dialog.getContentPane()).stream()
                .filter(c -> c instanceof JButton b && b.getText().startsWith("Learn"))
                .forEach(c -> ((JButton) c).doClick()));
        frame().pedal(new HeardSignal(pedal, 10));
        frame().pedal(new HeardSignal(pedal, 11));
        SwingUtilities.invokeAndWait(() -> {
            assertThat(host.buttons.learned).isEqualTo(LearnedButtons.NONE.with(pedal, "next"));
            assertThat(host.onAir.given).isEmpty();
        });
        frame().pedal(new HeardSignal(pedal, 12));
        SwingUtilities.invokeAndWait(() -> {
            assertThat(host.onAir.given)
                    .as("only shown while the window is open")
                    .isEmpty();
            dialog.dispose();
        });
        SwingUtilities.invokeAndWait(() -> {});
        frame().pedal(new HeardSignal(pedal, 13));
        SwingUtilities.invokeAndWait(() -> assertThat(host.onAir.given).containsExactly(Command.NEXT));
    }

    private void reopen() throws Exception {
        close();
        open();
    }

    /** The dialog that was asked for; it is shown by an event behind those already posted. */
    private JDialog dialog() throws Exception {
        List<JDialog> found = new ArrayList<>();
        for (int i = 0; i < 100 && found.isEmpty(); i++) {
            SwingUtilities.invokeAndWait(() -> Stream.of(frame().getOwnedWindows())
                    .filter(w -> w instanceof JDialog && w.isShowing())
                    .forEach(w -> found.add((JDialog) w)));
        }
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    /** Buttons that are heard when a test says so. */
    private static final class FakeButtons implements PedalHost {
        private LearnedButtons learned = LearnedButtons.NONE;

        @Override
        public void findPorts(Consumer<Found> found) {
            found.accept(new Found(List.of(), null));
        }

        @Override
        public LearnedButtons learned() {
            return learned;
        }

        @Override
        public void keep(LearnedButtons next) {
            learned = next;
        }

        @Override
        public ButtonStatus status() {
            return new ButtonStatus(ButtonStatus.State.READY, "buttons ready");
        }
    }

    private static final class FakeHost extends IdleHost {
        private final FakeButtons buttons = new FakeButtons();
        private final SampleOnAir onAir = new SampleOnAir();
        private final Walk walk = new SmallTour().walk();

        @Override
        public PedalHost pedals() {
            return buttons;
        }
    }
}
