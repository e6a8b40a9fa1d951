package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.debrief.DebriefDesk;
import crowdline.console.edit.WordsHost;
import crowdline.console.keys.Command;
import crowdline.console.live.LiveView;
import crowdline.console.live.SampleLiveViews;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.walk.SmallTour;
import crowdline.console.walk.Walk;
import crowdline.show.DayAir;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
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
                host.given.clear();
                whenMs += 1000;
                press(component, KeyEvent.VK_SPACE, ' ', whenMs);
                assertThat(host.given).as("from %s", component.getClass()).containsExactly(Command.NEXT);
            }
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
            assertThat(host.given).isEmpty();
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
            host.view = SampleLiveViews.incident();
            frame().go(Place.LIVE);
            press(frame(), KeyEvent.VK_SPACE, ' ', 1000);
            press(frame(), KeyEvent.VK_ESCAPE, '\u001b', 2000);
            press(frame(), KeyEvent.VK_F5, KeyEvent.CHAR_UNDEFINED, 3000);
            press(frame(), KeyEvent.VK_F2, KeyEvent.CHAR_UNDEFINED, 4000);
            assertThat(host.given).isEmpty();
            assertThat(host.resumed).isZero();
            long whenMs = 5000;
            for (int i = 0; i < "resume".length(); i++) {
                char letter = "resume".charAt(i);
                whenMs += 200;
                press(frame(), KeyEvent.getExtendedKeyCodeForChar(letter), letter, whenMs);
            }
            assertThat(host.resumed).isEqualTo(1);
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

    private static final class FakeHost implements Host {
        private final List<Command> given = new ArrayList<>();
        private LiveView view = SampleLiveViews.flying();
        private int resumed;
        private final Walk walk = new SmallTour().walk();

        @Override
        public void command(Command command) {
            given.add(command);
        }

        @Override
        public void resume() {
            resumed++;
        }

        @Override
        public LiveView live() {
            return view;
        }

        @Override
        public Walk walk() {
            return walk;
        }

        @Override
        public @Nullable DebriefDesk debrief() {
            return null;
        }

        @Override
        public double nowS() {
            return 0;
        }

        @Override
        public WordsHost words() {
            return new SilentWords();
        }

        @Override
        public void open(Path file) {}

        @Override
        public void openDemo() {}

        @Override
        public DayAir air() {
            return DayAir.STANDARD;
        }

        @Override
        public void useAir(DayAir air) {}

        @Override
        public void findReceivers(Consumer<List<ReceiverChoice>> found) {}

        @Override
        public void useReceiver(String where) {}

        @Override
        public List<Path> recent() {
            return List.of();
        }

        @Override
        public void keep(Appearance appearance) {}

        @Override
        public void quit() {}
    }
}
