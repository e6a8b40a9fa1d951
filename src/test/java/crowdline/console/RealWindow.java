package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.incident.IncidentPanel;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The console's window on a real screen, worked by keys that come from the system as any keyboard's do. */
public final class RealWindow implements AutoCloseable {
    private static final long PATIENCE_NS = 20_000_000_000L;
    /** How long a written word is waited for before it is written again, in nanoseconds. */
    private static final long HEARD_NS = 3_000_000_000L;

    public final StageHost host;
    public final ConsoleFrame frame;
    private final SystemKeys keys;
    private final Robot robot;
    private final Watch watch = new Watch();
    private long whenMs = System.currentTimeMillis();

    RealWindow(StageHost host) throws AWTException {
        this.host = host;
        frame = onEventThread(() -> {
            LookAndFeel.loadType();
            Appearance appearance = new Appearance(Themes.DAY, Zoom.NONE);
            LookAndFeel.wear(appearance);
            ConsoleFrame opened = new ConsoleFrame(host, appearance);
            host.answer(opened);
            opened.showPrepare(SampleScreens.prepare());
            opened.showGlossary(SampleScreens.glossary());
            opened.setVisible(true);
            return opened;
        });
        keys = new SystemKeys(watch);
        robot = keys.robot();
        await("the window has the keys", frame::isFocused);
    }

    @Override
    public void close() {
        keys.close();
        onEventThread(() -> {
            for (Window window : Window.getWindows()) {
                window.dispose();
            }
            return 0;
        });
    }

    public static <T> T onEventThread(Callable<T> work) {
        AtomicReference<@Nullable T> done = new AtomicReference<>();
        Runnable doing = () -> {
            try {
                done.set(work.call());
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        };
        try {
            if (SwingUtilities.isEventDispatchThread()) {
                doing.run();
            } else {
                SwingUtilities.invokeAndWait(doing);
            }
        } catch (InterruptedException | InvocationTargetException e) {
            throw new AssertionError(e);
        }
        return Objects.requireNonNull(done.get());
    }

    /** Does what may open a dialog that stays open; returns at once. */
    public void begin(Runnable work) {
        SwingUtilities.invokeLater(work);
    }

    /** Waits for what the screen and its server bring about in their own time. */
    public void await(String what, BooleanSupplier seen) {
        long giveUpNs = System.nanoTime() + PATIENCE_NS;
        while (!onEventThread(seen::getAsBoolean)) {
            assertThat(System.nanoTime()).as("%s in time", what).isLessThan(giveUpNs);
            robot.delay(2);
        }
    }

    void press(int key, int... modifiers) {
        keys.press(key, modifiers);
    }

    void type(String word) {
        for (int i = 0; i < word.length(); i++) {
            press(KeyEvent.getExtendedKeyCodeForChar(word.charAt(i)));
        }
    }

    Robot robot() {
        return robot;
    }

    void focus(Component component) {
        // Again and again, as a window that has just come up puts the focus where it wants to begin.
        await("the focus is on " + component.getClass(), () -> {
            component.requestFocusInWindow();
            return component.isFocusOwner();
        });
    }

    public Stream<Window> otherWindows() {
        return Stream.of(Window.getWindows()).filter(w -> w != frame && w.isShowing());
    }

    /** The newest window in front of the console's. */
    public Window inFront() {
        await("a window is open", () -> otherWindows().findAny().isPresent());
        await("it has the keys", () -> otherWindows().anyMatch(Window::isFocused));
        return inFrontNow();
    }

    public Window inFrontNow() {
        return otherWindows().reduce((a, b) -> b).orElseThrow();
    }

    public static List<Component> all(Container container) {
        List<Component> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    /** What in a window can have the keys, in the order it is found. */
    static List<Component> focusable(Container container) {
        return onEventThread(() -> all(container).stream()
                .filter(c -> c.isFocusable() && c.isShowing() && c.isEnabled())
                .filter(Component::requestFocusInWindow)
                .toList());
    }

    List<JComboBox<?>> boxes(Container container) {
        return onEventThread(() -> all(container).stream()
                .filter(Component::isShowing)
                .<JComboBox<?>>mapMulti((c, found) -> {
                    if (c instanceof JComboBox<?> box) {
                        found.accept(box);
                    }
                })
                .toList());
    }

    /** Presses until that has come about: a screen without a window manager loses keys while windows change. */
    public void pressUntil(String what, BooleanSupplier seen, int key, int... modifiers) {
        for (int i = 0; i < 20 && !onEventThread(seen::getAsBoolean); i++) {
            press(key, modifiers);
            for (int wait = 0; wait < 100 && !onEventThread(seen::getAsBoolean); wait++) {
                robot.delay(5);
            }
        }
        await(what, seen);
    }

    <C extends Component> List<C> shown(Container container, Class<C> kind) {
        return onEventThread(() -> all(container).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(Component::isShowing)
                .toList());
    }

    /** Presses F12 and says in milliseconds how long the event thread took until the page was painted. */
    double incident(String from) {
        watch.begin();
        press(KeyEvent.VK_F12);
        return incidentCame(from);
    }

    /** The same by a key that comes from the queue of events and not through the system, which is quicker. */
    double incidentAtOnce(String from) {
        watch.begin();
        onEventThread(() -> {
            Component focus =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            Component on = focus == null ? frame : focus;
            EventQueue queue = Toolkit.getDefaultToolkit().getSystemEventQueue();
            whenMs += 1000;
            for (int id : new int[] {KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED}) {
                queue.postEvent(new KeyEvent(on, id, whenMs, 0, KeyEvent.VK_F12, KeyEvent.CHAR_UNDEFINED));
            }
            return 0;
        });
        return incidentCame(from);
    }

    private double incidentCame(String from) {
        await("F12 was heard: " + from, watch::isSeen);
        await("the incident page comes: " + from, this::isPageShowing);
        await("nothing else is open: " + from, () -> otherWindows().findAny().isEmpty());
        onEventThread(() -> {
            assertThat(covered()).as("what covers the page: %s", from).isEmpty();
            assertThat(MenuSelectionManager.defaultManager().getSelectedPath())
                    .as(from)
                    .isEmpty();
            return 0;
        });
        return watch.tookMs();
    }

    boolean isPageShowing() {
        return page() != null;
    }

    private @Nullable IncidentPanel page() {
        return all(frame.getContentPane()).stream()
                .filter(c -> c instanceof IncidentPanel && c.isShowing())
                .map(IncidentPanel.class::cast)
                .findFirst()
                .orElse(null);
    }

    /** What a press of the mouse anywhere on the page would meet instead of it. */
    private List<String> covered() {
        IncidentPanel page = page();
        List<String> found = new ArrayList<>();
        if (page == null) {
            found.add("everything");
            return found;
        }
        Rectangle bounds = SwingUtilities.convertRectangle(page.getParent(), page.getBounds(), frame.getRootPane());
        for (int x = bounds.x + 3; x < bounds.x + bounds.width; x += 40) {
            for (int y = bounds.y + 3; y < bounds.y + bounds.height; y += 40) {
                Component there = SwingUtilities.getDeepestComponentAt(frame.getRootPane(), x, y);
                if (there != page) {
                    found.add(String.valueOf(there));
                }
            }
        }
        return found;
    }

    /** Types the word, after which Live must be in front. */
    void leave(String from) {
        await("the keys are here again: " + from, () -> frame.isFocused());
        type("resume");
        await("the page is gone: " + from, () -> !isPageShowing());
    }

    /**
     * The same by keys that do not take their way through the system, which is quicker. While a window that closes gives the
     * focus back, the toolkit keeps or drops such keys, so the word is written again until it is heard, as a hand would.
     */
    void leaveAtOnce() {
        await("the keys are here again", frame::isFocused);
        long giveUpNs = System.nanoTime() + PATIENCE_NS;
        long writtenNs = System.nanoTime() - HEARD_NS;
        while (onEventThread(this::isPageShowing)) {
            assertThat(System.nanoTime()).as("the page is gone in time").isLessThan(giveUpNs);
            if (System.nanoTime() - writtenNs >= HEARD_NS) {
                writtenNs = System.nanoTime();
                onEventThread(() -> {
                    write("resume");
                    return 0;
                });
            }
            robot.delay(2);
        }
    }

    private void write(String word) {
        KeyboardFocusManager here = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        for (int i = 0; i < word.length(); i++) {
            char letter = word.charAt(i);
            int code = KeyEvent.getExtendedKeyCodeForChar(letter);
            whenMs += 100;
            here.dispatchEvent(new KeyEvent(frame, KeyEvent.KEY_PRESSED, whenMs, 0, code, letter));
            here.dispatchEvent(new KeyEvent(frame, KeyEvent.KEY_RELEASED, whenMs + 50, 0, code, letter));
        }
    }

    /** Sees when F12 reaches the event thread and when all that it asked for has been painted. */
    private static final class Watch extends SystemKeys.Heard {
        private long startNs;
        private long endNs;

        void begin() {
            onEventThread(() -> {
                startNs = 0;
                endNs = 0;
                return 0;
            });
        }

        boolean isSeen() {
            return endNs > 0;
        }

        double tookMs() {
            return (endNs - startNs) / 1e6;
        }

        @Override
        protected void dispatchEvent(AWTEvent event) {
            boolean key = event.getID() == KeyEvent.KEY_PRESSED
                    && event instanceof KeyEvent press
                    && press.getKeyCode() == KeyEvent.VK_F12;
            if (key) {
                startNs = System.nanoTime();
            }
            super.dispatchEvent(event);
            if (key) {
                // Behind the painting that the key asked for.
                SwingUtilities.invokeLater(() -> endNs = System.nanoTime());
            }
        }
    }
}
