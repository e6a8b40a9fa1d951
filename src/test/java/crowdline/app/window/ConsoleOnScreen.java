package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.app.shell.WindowOpener;
import crowdline.console.ConsoleFrame;
import crowdline.console.ConsolePane;
import crowdline.console.edit.Editing;
import crowdline.console.live.next.NextView;
import crowdline.console.live.now.NowView;
import crowdline.console.live.say.SayView;
import crowdline.console.live.strip.StripView;
import crowdline.console.paint.Painted;
import crowdline.console.place.Place;
import crowdline.edit.Change;
import crowdline.live.state.Note;
import crowdline.loaded.LoadedShow;
import crowdline.running.RunningShow;
import crowdline.running.StoppableStream;
import crowdline.show.Show;
import crowdline.storage.journal.JournalMachine;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.event.WindowListener;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * The whole program in a real window, on clocks that a test moves, worked by keys as the system gives them and read by the
 * words on its screen.
 */
final class ConsoleOnScreen implements AutoCloseable {
    /** The plan is made anew at least so often while time passes, seconds: as the program does. */
    private static final double STEP_S = 1;

    private static final double OPENS_WITHIN_S = 60;
    private static final double NANOS_PER_S = 1e9;

    private final AtomicLong nanos = new AtomicLong(7_000_000_000L);
    private final long beganNanos = nanos.get();
    private final ConsoleWiring wiring;
    private final ConsoleFrame frame;
    private final StoppableStream receiver = new StoppableStream();
    private final Faults faults = new Faults();
    private long pressed;

    /**
     * Opens a copy of a show and shows Live.
     *
     * @param folder where the program keeps its files
     * @param wall the hour when it opens
     */
    ConsoleOnScreen(Path folder, Path show, Instant wall) throws Exception {
        this(folder, wall, Files.copy(show, folder.resolve(show.getFileName())));
        await("a show runs", () -> wiring.opening().running() != null);
        await("it is open", () -> !spoken("Messages").startsWith("Opening"));
        press("F5");
    }

    /** Opens what was open last, or nothing, as the program does when it is started without a show. */
    ConsoleOnScreen(Path folder, Instant wall) throws Exception {
        this(folder, wall, (Path) null);
    }

    private ConsoleOnScreen(Path folder, Instant wall, @Nullable Path show) throws Exception {
        InstantSource hour = () -> wall.plusNanos(nanos.get() - beganNanos);
        Folders folders =
                new Folders(folder.resolve("settings"), folder.resolve("journals"), folder.resolve("demo.json"));
        wiring =
                new ConsoleWiring(folders, new JournalMachine(nanos::get, hour, "this boot"), LoadedShow.FIRST_FLIGHTS);
        wiring.open(show, WindowOpener.Devices.NONE);
        frame = opened();
    }

    private static ConsoleFrame opened() throws Exception {
        long untilNanos = System.nanoTime() + (long) (OPENS_WITHIN_S * NANOS_PER_S);
        for (; System.nanoTime() < untilNanos; pause()) {
            ConsoleFrame shown = onScreen(OpenWindows::consoleWithKeys);
            if (shown != null) {
                return shown;
            }
        }
        throw new AssertionError("no window within " + OPENS_WITHIN_S + " s");
    }

    /** Between two looks; spinning would take the processor from what is waited for. */
    private static void pause() {
        LockSupport.parkNanos(1_000_000);
    }

    /** What the running show goes by. */
    LoadedShow loaded() {
        return running().loaded();
    }

    /** Changes the edited show, once it is there. */
    void edit(String name, UnaryOperator<Show> change) throws Exception {
        await("the show can be edited", () -> onScreen(() -> editing().isOpen()));
        onScreen(() -> {
            editing().change(Change.of(name, change.apply(editing().now())));
            return null;
        });
    }

    /** Whether this place is on the screen. */
    boolean isIn(Place place) throws Exception {
        return onScreen(() -> ((ConsolePane) frame.getContentPane()).place() == place);
    }

    private Editing editing() {
        return ((ConsolePane) frame.getContentPane()).editing();
    }

    /** The program is turned to again, as after another window was in front. */
    void turnTo() throws Exception {
        onScreen(() -> {
            WindowEvent turned = new WindowEvent(frame, WindowEvent.WINDOW_ACTIVATED);
            for (WindowListener listener : frame.getWindowListeners()) {
                listener.windowActivated(turned);
            }
            return null;
        });
    }

    /** What is chosen in the list or table of this name on the screen, its row from 0. */
    int chosen(String name) throws Exception {
        return onScreen(() -> OpenWindows.chosen(frame.getContentPane(), name));
    }

    /** Presses the button of this name in the question that is open. */
    void answer(String button) throws Exception {
        await(button + " can be pressed", () -> canPress(button));
        onScreen(() -> {
            OpenWindows.buttons(button).forEach(b -> SwingUtilities.invokeLater(b::doClick));
            return null;
        });
    }

    /** Whether this is what is edited. */
    boolean edits(Show show) throws Exception {
        return onScreen(() -> editing().isOpen() && editing().now().equals(show));
    }

    /** The show as edited. */
    Show edited() throws Exception {
        return onScreen(() -> editing().now());
    }

    /** Waits until something is so. */
    void await(String what, Callable<Boolean> isSo) throws Exception {
        for (long untilNanos = System.nanoTime() + (long) (OPENS_WITHIN_S * NANOS_PER_S); !isSo.call(); pause()) {
            if (System.nanoTime() >= untilNanos) {
                throw new AssertionError(
                        what + "; " + onScreen(() -> OpenWindows.asTheyAre((ConsolePane) frame.getContentPane())));
            }
        }
    }

    /** Whether Live runs this. */
    boolean runs(Show show) {
        RunningShow now = wiring.opening().running();
        return now != null && now.loaded().show().equals(show);
    }

    /** What is running. */
    RunningShow running() {
        return Objects.requireNonNull(wiring.opening().running());
    }

    /** Seconds since the window opened. */
    double nowS() {
        return (nanos.get() - beganNanos) / NANOS_PER_S;
    }

    /** Lets time pass to this moment; everything in the program has seen it, and the screen shows it. */
    void at(double seconds) throws Exception {
        while (seconds - nowS() > STEP_S) {
            move(nowS() + STEP_S);
            running().wake();
        }
        move(seconds);
        settle();
    }

    /** As {@link #at}, as if the machine had slept until then. */
    void jump(double seconds) throws Exception {
        move(seconds);
        settle();
    }

    private void move(double seconds) {
        assertThat(seconds).as("time goes on").isGreaterThanOrEqualTo(nowS() - 1e-6);
        nanos.set(beganNanos + Math.round(seconds * NANOS_PER_S));
    }

    /** Presses a key and lets it go; everything in the program has seen it. */
    void press(String key) throws Exception {
        give(key);
        settle();
    }

    /** Presses a key and lets it go, as one that may leave the running show and so is not waited for. */
    void give(String key) throws Exception {
        KeyStroke stroke = Objects.requireNonNull(KeyStroke.getKeyStroke(key), key);
        char typed = key.length() == 1
                ? Character.toLowerCase(key.charAt(0))
                : key.equals("SPACE") ? ' ' : KeyEvent.CHAR_UNDEFINED;
        int held = stroke.getModifiers()
                & (InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK | InputEvent.ALT_DOWN_MASK);
        pressed += 200;
        onScreen(() -> {
            Component focus = OpenWindows.focus();
            Component on = focus == null ? frame : focus;
            post(on, KeyEvent.KEY_PRESSED, stroke.getKeyCode(), typed, held);
            if (typed != KeyEvent.CHAR_UNDEFINED) {
                post(on, KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, typed, held);
            }
            post(on, KeyEvent.KEY_RELEASED, stroke.getKeyCode(), typed, held);
            return null;
        });
        onScreen(() -> null);
    }

    /** Types words into what has the focus. */
    void type(String words) throws Exception {
        onScreen(() -> {
            Component on = Objects.requireNonNull(OpenWindows.focus());
            for (int i = 0; i < words.length(); i++) {
                char letter = words.charAt(i);
                int code = KeyEvent.getExtendedKeyCodeForChar(letter);
                pressed += 200;
                post(on, KeyEvent.KEY_PRESSED, code, letter, 0);
                post(on, KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, letter, 0);
                post(on, KeyEvent.KEY_RELEASED, code, letter, 0);
            }
            return null;
        });
        onScreen(() -> null);
    }

    /** Whether a button on the screen that begins so can be pressed. */
    boolean canPress(String words) throws Exception {
        return onScreen(() -> OpenWindows.buttons(words).anyMatch(JButton::isEnabled));
    }

    /** Whether these words stand in a text on the screen, in whichever window. */
    boolean says(String words) throws Exception {
        return onScreen(() -> OpenWindows.say(words));
    }

    /** Waits until no window is open but the console's. */
    void awaitAlone() throws Exception {
        awaitOpen(1);
    }

    /**
     * Waits until so many windows are open. The newest gets the keys, as a window manager would have it; a screen without one
     * leaves them nowhere when a window closes.
     */
    void awaitOpen(int number) throws Exception {
        await(number + " windows", () -> onScreen(() -> OpenWindows.windows().count() == number));
        await(
                "the keys are back",
                () -> onScreen(() -> {
                    OpenWindows.giveKeysBack();
                    return OpenWindows.focus() instanceof JComponent;
                }));
    }

    /** Whether this stands in a field on the screen. */
    boolean stands(String words) throws Exception {
        return onScreen(() -> OpenWindows.shown(frame.getContentPane(), JTextField.class)
                .anyMatch(f -> f.getText().equals(words)));
    }

    /** Whether what has the focus is called so, or begins so. */
    boolean focusIs(String name) throws Exception {
        return onScreen(() -> OpenWindows.focusIs(name));
    }

    /** How many acts the edited show has; −1 if none is edited. */
    int acts() throws Exception {
        return onScreen(() -> editing().isOpen() ? editing().now().acts().size() : -1);
    }

    private void post(Component on, int id, int code, char typed, int held) {
        Toolkit.getDefaultToolkit().getSystemEventQueue().postEvent(new KeyEvent(on, id, pressed, held, code, typed));
    }

    private void settle() throws Exception {
        onScreen(() -> null);
        // The clock stands still meanwhile, so no disk is slow.
        running().desk().written().get();
        running().wake();
        frame.liveChanged();
        onScreen(() -> null);
    }

    /** A receiver is plugged in. */
    void plugIn() {
        wiring.aircraft().stream("receiver", receiver);
    }

    /** The receiver sends this at a moment; it has been taken in, but the screen may not yet show it. */
    void send(double seconds, byte[] sentences) throws Exception {
        if (Math.floor(seconds) > Math.floor(nowS())) {
            running().wake();
        }
        move(seconds);
        receiver.send(sentences);
        running().settle();
    }

    List<Note> notes() {
        return running().desk().snapshot().state().notes();
    }

    NowView now() throws Exception {
        return (NowView) shown("Flying now");
    }

    SayView say() throws Exception {
        return (SayView) shown("Say now");
    }

    NextView next() throws Exception {
        return (NextView) shown("Next");
    }

    StripView strip() throws Exception {
        return (StripView) shown("Strip");
    }

    /** Words of a row, as a screen reader says them. */
    String spoken(String row) throws Exception {
        return onScreen(() -> String.valueOf(row(row).getAccessibleContext().getAccessibleDescription()));
    }

    private Object shown(String row) throws Exception {
        return Objects.requireNonNull(onScreen(() -> row(row).shown()));
    }

    /** The row of this name, which must be on the screen and not behind something. */
    private Painted<?> row(String name) {
        Component found = OpenWindows.painted(frame.getContentPane(), name);
        assertThat(found).as(name).isInstanceOf(Painted.class);
        Painted<?> row = (Painted<?>) Objects.requireNonNull(found);
        assertThat(row.isShowing()).as(name + " is on the screen").isTrue();
        return row;
    }

    /** True if a row of this name is on the screen. */
    boolean shows(String name) throws Exception {
        return onScreen(() -> {
            Component found = OpenWindows.painted(frame.getContentPane(), name);
            return found != null && found.isShowing();
        });
    }

    private static <T extends @Nullable Object> T onScreen(Callable<T> asked) throws Exception {
        FutureTask<T> task = new FutureTask<>(asked);
        SwingUtilities.invokeLater(task);
        return task.get();
    }

    @Override
    public void close() throws InvocationTargetException {
        receiver.close();
        try {
            wiring.quit();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the program was not waited for", e);
        } finally {
            faults.close();
        }
        assertThat(faults.all()).as("what went wrong unseen").isEmpty();
    }
}
