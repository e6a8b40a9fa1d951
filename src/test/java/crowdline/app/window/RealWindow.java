package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.command.CaughtTerminal;
import crowdline.app.shell.Folders;
import crowdline.app.shell.WindowOpener;
import crowdline.console.ConsoleFrame;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.SwingUtilities;
import javax.swing.event.MenuEvent;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** The whole program in its window, worked as a user does: by keys, menus and what is read on the screen. */
final class RealWindow {
    private static final int LONGEST_WAIT_MS = 10_000;

    private final ConsoleFrame frame;
    private long whenMs = System.currentTimeMillis();
    /** Everything that was ever read, to say what must never have been. */
    private final List<String> everRead = new ArrayList<>();

    private RealWindow(ConsoleFrame frame) {
        this.frame = frame;
    }

    /** Opens the window on a show, or on the one that was open last. */
    static RealWindow open(Folders folders, @Nullable Path show) throws Exception {
        List<ConsoleFrame> before = frames();
        CaughtTerminal terminal = new CaughtTerminal();
        assertThat(new ConsoleOpener(folders).open(show, terminal.terminal())).isEqualTo(WindowOpener.STAYS_OPEN);
        for (int waited = 0; waited < LONGEST_WAIT_MS; waited += 5) {
            for (ConsoleFrame frame : frames()) {
                if (!before.contains(frame)) {
                    return new RealWindow(frame);
                }
            }
            TimeUnit.MILLISECONDS.sleep(5);
        }
        throw new AssertionError("no window was opened");
    }

    static Folders folders(Path root, Path demo) {
        return new Folders(root.resolve("config"), root.resolve("state").resolve("journals"), demo);
    }

    private static List<ConsoleFrame> frames() {
        return Stream.of(Frame.getFrames())
                .filter(f -> f instanceof ConsoleFrame && f.isShowing())
                .map(f -> (ConsoleFrame) f)
                .toList();
    }

    public ConsoleFrame frame() {
        return frame;
    }

    /** What stands on the screen, the foot line last. */
    String read() throws Exception {
        String now = onScreen(() -> String.join("\n", texts(frame.getContentPane())));
        everRead.add(now);
        return now;
    }

    List<String> everRead() {
        return everRead;
    }

    /** In the foot line, and as large as what any key does. */
    void untilSaidLarge(String words) throws Exception {
        Pattern twice = Pattern.compile(Pattern.quote(words) + ".*" + Pattern.quote(words), Pattern.DOTALL);
        for (int waited = 0; waited < LONGEST_WAIT_MS && !twice.matcher(read()).find(); waited += 10) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        assertThat(read()).containsPattern(twice);
    }

    void until(String words) throws Exception {
        for (int waited = 0; waited < LONGEST_WAIT_MS && !read().contains(words); waited += 10) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        assertThat(read()).contains(words);
    }

    void untilGone(String words) throws Exception {
        for (int waited = 0; waited < LONGEST_WAIT_MS && read().contains(words); waited += 10) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        assertThat(read()).doesNotContain(words);
    }

    void untilClosed() throws InterruptedException {
        for (int waited = 0; waited < LONGEST_WAIT_MS && frame.isDisplayable(); waited += 10) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        assertThat(frame.isDisplayable()).isFalse();
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals("io")) {
                thread.join(LONGEST_WAIT_MS);
                assertThat(thread.isAlive())
                        .as("the thread io ends with its window")
                        .isFalse();
            }
        }
    }

    void press(int code, int modifiers, char typed) throws Exception {
        onScreen(() -> {
            pressNow(code, modifiers, typed);
            return "";
        });
    }

    private void pressNow(int code, int modifiers, char typed) {
        whenMs += 1000;
        KeyboardFocusManager keys = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        keys.dispatchEvent(new KeyEvent(frame, KeyEvent.KEY_PRESSED, whenMs, modifiers, code, typed));
        keys.dispatchEvent(new KeyEvent(frame, KeyEvent.KEY_RELEASED, whenMs + 50, modifiers, code, typed));
    }

    /** On the event thread. */
    void spaceNow() {
        pressNow(KeyEvent.VK_SPACE, 0, ' ');
    }

    void press(int code) throws Exception {
        press(code, 0, code >= KeyEvent.VK_A && code <= KeyEvent.VK_Z ? (char) (code + 32) : KeyEvent.CHAR_UNDEFINED);
    }

    void space() throws Exception {
        press(KeyEvent.VK_SPACE, 0, ' ');
    }

    /** Opens a file that was opened before, from the menu. */
    void openAgain(Path file) throws Exception {
        onScreen(() -> {
            openAgainNow(file);
            return "";
        });
    }

    /** On the event thread. */
    void openAgainNow(Path file) {
        for (Component component : all(frame.getJMenuBar())) {
            if (component instanceof JMenu menu && menu.getText().equals("Open recent")) {
                Stream.of(menu.getMenuListeners()).forEach(l -> l.menuSelected(new MenuEvent(menu)));
                for (Component item : menu.getMenuComponents()) {
                    if (item instanceof JMenuItem entry && file.toString().equals(entry.getToolTipText())) {
                        entry.doClick(0);
                        return;
                    }
                }
            }
        }
        throw new AssertionError("not in the menu: " + file);
    }

    /** The window's own button. */
    void closeButton() throws Exception {
        onScreen(() -> {
            frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING));
            return "";
        });
    }

    private static List<String> texts(Container container) {
        List<String> found = new ArrayList<>();
        for (Component c : container.getComponents()) {
            if (!c.isShowing()) {
                continue;
            }
            if (c instanceof JLabel label && label.getText() != null) {
                found.add(label.getText());
            } else if (c instanceof JTextComponent text) {
                found.add(text.getText());
            }
            String said = c.getAccessibleContext() == null
                    ? null
                    : c.getAccessibleContext().getAccessibleDescription();
            if (said != null) {
                found.add(said);
            }
            if (c instanceof Container inner) {
                found.addAll(texts(inner));
            }
        }
        return found;
    }

    private static List<Component> all(Container container) {
        List<Component> found = new ArrayList<>();
        Component[] inner = container instanceof JMenu menu ? menu.getMenuComponents() : container.getComponents();
        for (Component child : inner) {
            found.add(child);
            if (child instanceof Container more) {
                found.addAll(all(more));
            }
        }
        return found;
    }

    static String onScreen(Callable<String> work) throws Exception {
        FutureTask<String> task = new FutureTask<>(work);
        SwingUtilities.invokeLater(task);
        return task.get();
    }

    /** Closes it, in the middle of an act too. */
    void close() throws Exception {
        closeButton();
        if (frame.isDisplayable()) {
            closeButton();
        }
        untilClosed();
    }
}
