package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.SystemKeys;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPopupMenu;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Keys of the system in what is in front of a running act: they belong to it, and the journal of the show hears none. */
@Tag("window")
@Timeout(300)
class KeysInFrontTest {
    private static final Path FENMARSH = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");
    private static final long PATIENCE_NS = 20_000_000_000L;
    /** A screen without a window manager loses keys while windows change, so that some are pressed again. */
    private static final int TRIES = 8;

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    @Test
    void keysBelongToWhatIsInFrontOfARunningAct() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, FENMARSH, BEFORE);
                SystemKeys pressed = new SystemKeys()) {
            Keys keys = new Keys(pressed);
            screen.at(61);
            screen.press("SPACE");
            screen.at(64);
            menus(screen, keys);
            popup(keys);
            dialog(screen, keys, "a question", () -> JOptionPane.showConfirmDialog(keys.frame, "Is that so?"));
            dialog(screen, keys, "a box", () -> {
                JDialog dialog = new JDialog(keys.frame, "A box", true);
                dialog.add(new JComboBox<>(new String[] {"one", "space", "hold"}));
                dialog.pack();
                dialog.setVisible(true);
            });
            for (int ctrl : new int[] {KeyEvent.VK_M, KeyEvent.VK_R, KeyEvent.VK_B, KeyEvent.VK_U}) {
                String name = "Ctrl+" + KeyEvent.getKeyText(ctrl);
                if (ctrl == KeyEvent.VK_M) {
                    screen.press("F2");
                }
                keys.until(
                        name + " opens a window",
                        () -> keys.pressed.press(ctrl, KeyEvent.VK_CONTROL),
                        () -> keys.dialogs().findAny().isPresent());
                typed(screen, keys, name);
            }
        }
    }

    private void menus(ConsoleOnScreen screen, Keys keys) throws Exception {
        JMenuBar bar = keys.frame.getJMenuBar();
        for (int menu = 0; menu < 5; menu++) {
            Map<String, String> before = journals();
            keys.until("the menu bar has the keys", () -> keys.press(KeyEvent.VK_F10), Keys::menuIsOpen);
            for (int i = 0; i < menu; i++) {
                keys.press(KeyEvent.VK_RIGHT);
            }
            for (int key : new int[] {
                KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_UP, KeyEvent.VK_LEFT, KeyEvent.VK_RIGHT, KeyEvent.VK_H
            }) {
                if (keys.see(Keys::menuIsOpen)) {
                    keys.press(key);
                }
            }
            String name = "menu " + menu + " of " + bar.getMenuCount();
            assertThat(journals()).as(name).isEqualTo(before);
            calledAndLeft(screen, keys, name);
        }
    }

    private void popup(Keys keys) throws Exception {
        int[] chosen = {0};
        keys.see(() -> {
            JPopupMenu popup = new JPopupMenu();
            JMenuItem harmless = new JMenuItem("Harmless");
            harmless.addActionListener(e -> chosen[0]++);
            popup.add(harmless);
            popup.add(new JMenuItem("Another"));
            popup.show(keys.frame.getContentPane(), 20, 20);
            return true;
        });
        Map<String, String> before = journals();
        keys.press(KeyEvent.VK_DOWN);
        keys.press(KeyEvent.VK_ENTER);
        keys.await("the item is chosen", () -> chosen[0] == 1);
        assertThat(journals()).as("a popup").isEqualTo(before);
    }

    private void dialog(ConsoleOnScreen screen, Keys keys, String name, Runnable opening) throws Exception {
        SwingUtilities.invokeLater(opening);
        keys.await(name, () -> keys.dialogs().findAny().isPresent());
        typed(screen, keys, name);
    }

    /** Presses what would work the show into each component of a window, then calls the page. */
    private void typed(ConsoleOnScreen screen, Keys keys, String name) throws Exception {
        keys.await(name + " has the keys", () -> keys.dialogs().anyMatch(Window::isFocused));
        Map<String, String> before = journals();
        for (int key : new int[] {
            KeyEvent.VK_S,
            KeyEvent.VK_H,
            KeyEvent.VK_D,
            KeyEvent.VK_I,
            KeyEvent.VK_DOWN,
            KeyEvent.VK_RIGHT,
            KeyEvent.VK_UP
        }) {
            if (keys.see(() -> keys.dialogs().anyMatch(Window::isFocused))) {
                keys.press(key);
            }
        }
        assertThat(journals()).as(name).isEqualTo(before);
        calledAndLeft(screen, keys, name);
    }

    private void calledAndLeft(ConsoleOnScreen screen, Keys keys, String name) throws Exception {
        keys.until("the page: " + name, () -> keys.press(KeyEvent.VK_F12), keys::isPage);
        keys.await("nothing in front: " + name, () -> keys.dialogs().findAny().isEmpty() && !Keys.menuIsOpen());
        keys.await("the keys are here: " + name, keys.frame::isFocused);
        keys.until("the page is gone: " + name, keys::resume, () -> !keys.isPage());
        assertThat(screen.now().left()).as(name).isEqualTo("held");
        screen.press("H");
        assertThat(screen.now().name()).as(name).isEqualTo("take-off and climb away");
        assertThat(screen.strip().timeInAct()).as(name).isEqualTo("0:03, slot 12:00");
    }

    private Map<String, String> journals() throws Exception {
        Map<String, String> all = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(folder.resolve("journals"))) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                all.put(String.valueOf(file.getFileName()), Files.readString(file));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        assertThat(all).isNotEmpty();
        return all;
    }

    /** A keyboard, and what can be seen of the window. */
    private static final class Keys {
        final SystemKeys pressed;
        final JFrame frame;

        Keys(SystemKeys pressed) {
            this.pressed = pressed;
            frame = (JFrame) Stream.of(Frame.getFrames())
                    .filter(Window::isShowing)
                    .findFirst()
                    .orElseThrow();
            await("the window has the keys", frame::isFocused);
        }

        void press(int key) {
            pressed.press(key);
        }

        void resume() {
            IntStream.of(KeyEvent.VK_R, KeyEvent.VK_E, KeyEvent.VK_S, KeyEvent.VK_U, KeyEvent.VK_M, KeyEvent.VK_E)
                    .forEach(this::press);
        }

        void until(String what, Runnable keys, BooleanSupplier seen) {
            for (int i = 0; i < TRIES && !see(seen); i++) {
                keys.run();
                for (int wait = 0; wait < 100 && !see(seen); wait++) {
                    pressed.robot().delay(5);
                }
            }
            await(what, seen);
        }

        static boolean menuIsOpen() {
            return MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
        }

        Stream<Window> dialogs() {
            return Stream.of(Window.getWindows()).filter(w -> w instanceof JDialog && w.isShowing());
        }

        boolean isPage() {
            return shows(frame.getContentPane());
        }

        private static boolean shows(Container in) {
            for (Component each : in.getComponents()) {
                boolean page = each instanceof JComponent
                        && each.isShowing()
                        && "Incident page".equals(each.getAccessibleContext().getAccessibleName());
                if (page || (each instanceof Container inner && shows(inner))) {
                    return true;
                }
            }
            return false;
        }

        boolean see(BooleanSupplier seen) {
            FutureTask<Boolean> task = new FutureTask<>((Callable<Boolean>) seen::getAsBoolean);
            SwingUtilities.invokeLater(task);
            try {
                return Objects.requireNonNull(task.get());
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        }

        void await(String what, BooleanSupplier seen) {
            long giveUpNs = System.nanoTime() + PATIENCE_NS;
            while (!see(seen)) {
                assertThat(System.nanoTime()).as("%s in time", what).isLessThan(giveUpNs);
                pressed.robot().delay(2);
            }
        }
    }
}
