package crowdline.console.second;

import crowdline.console.live.SecondView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.window.FullScreen;
import crowdline.console.window.NamedAction;
import crowdline.storage.settings.SecondLook;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;

/**
 * A window for a co-commentator or interpreter, on another screen. It shows the running show and changes nothing in it; it
 * never takes the keys, so that they stay with the commentator. On the event thread.
 */
public final class SecondWindow extends JFrame {
    private static final int FRAME_MS = 100;
    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 800;

    private final transient Function<@Nullable String, @Nullable SecondView> running;
    private final transient SecondHost host;
    private final SecondPanel panel;
    private final transient FullScreen fullScreen = new FullScreen(this);
    private final Timer ticker = new Timer(FRAME_MS, e -> refresh());
    private transient Appearance appearance;
    private boolean isFull;
    private @Nullable String speaker;
    private transient @Nullable SecondView shown;

    private SecondWindow(
            Function<@Nullable String, @Nullable SecondView> running, SecondHost host, Appearance ofTheConsole) {
        super("Crowdline – second window");
        this.running = running;
        this.host = host;
        SecondLook look = host.look();
        speaker = look.speaker();
        appearance = ofTheConsole.with(Themes.byId(look.theme())).with(zoom(look));
        panel = new SecondPanel(appearance);
        setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        setContentPane(panel);
        setSize(WIDTH_PX, HEIGHT_PX);
        SecondLook.Place place = look.place();
        if (place != null && isOnAScreen(place)) {
            setBounds(place.x(), place.y(), place.width(), place.height());
        } else {
            // Not by the platform: where that puts a window Java is not always told, and it would be kept wrongly.
            setLocationRelativeTo(null);
        }
    }

    private static Zoom zoom(SecondLook look) {
        int percent = (int) Math.round(look.zoom() * 100);
        return new Zoom(Math.max(Zoom.NONE.percent(), Math.min(Zoom.LARGEST.percent(), percent)));
    }

    /** The screen on which it was left may not be connected any more. */
    private static boolean isOnAScreen(SecondLook.Place place) {
        Rectangle left = new Rectangle(place.x(), place.y(), place.width(), place.height());
        return Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
                .anyMatch(screen -> screen.getDefaultConfiguration().getBounds().intersects(left));
    }

    /**
     * Opens it beside the console, as it was left.
     *
     * @param running what it shows now to somebody of that name, or null if no show runs
     */
    public static SecondWindow open(
            Function<@Nullable String, @Nullable SecondView> running, SecondHost host, Appearance ofTheConsole) {
        SecondWindow window = new SecondWindow(running, host, ofTheConsole);
        window.setFocusableWindowState(false);
        window.setAutoRequestFocus(false);
        window.begin();
        return window;
    }

    /**
     * Opens it by itself, with keys for its look: there is no console in this process that they could be taken from.
     *
     * @param closed told once it is closed
     */
    public static SecondWindow alone(
            Function<@Nullable String, @Nullable SecondView> running,
            SecondHost host,
            Appearance appearance,
            Runnable closed) {
        SecondWindow window = new SecondWindow(running, host, appearance);
        window.on("T", window::nextTheme);
        window.on("S", window::nextSpeaker);
        window.on("F11", window::turnFullScreen);
        window.on("ctrl PLUS", window::larger);
        window.on("ctrl EQUALS", window::larger);
        window.on("ctrl shift EQUALS", window::larger);
        window.on("ctrl ADD", window::larger);
        window.on("ctrl MINUS", window::smaller);
        window.on("ctrl SUBTRACT", window::smaller);
        window.on("ctrl Q", window::dispose);
        window.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                closed.run();
            }
        });
        window.begin();
        return window;
    }

    private void on(String key, Runnable action) {
        getRootPane().getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(key), key);
        getRootPane().getActionMap().put(key, new NamedAction(key, action));
    }

    private void begin() {
        refresh();
        setVisible(true);
        ticker.start();
    }

    private void refresh() {
        shown = running.apply(speaker);
        panel.show(shown);
    }

    public void nextTheme() {
        wear(appearance.with(Themes.after(appearance.theme())));
    }

    /** The next of the speakers of the show sits before it; after the last of them anybody does. */
    public void nextSpeaker() {
        SecondView now = shown;
        if (now == null) {
            return;
        }
        int next = now.reader() == null ? 0 : now.speakers().indexOf(now.reader()) + 1;
        speaker = next < now.speakers().size() ? now.speakers().get(next) : null;
        keep();
        refresh();
    }

    public void larger() {
        wear(appearance.with(appearance.zoom().larger()));
    }

    public void smaller() {
        wear(appearance.with(appearance.zoom().smaller()));
    }

    private void wear(Appearance next) {
        appearance = next;
        panel.wear(next);
        keep();
    }

    /** Fills the screen it is on, or goes back to a window. */
    public void turnFullScreen() {
        if (!isFull) {
            keep();
        }
        isFull = !isFull;
        fullScreen.turn();
    }

    private void keep() {
        Rectangle at = getBounds();
        SecondLook look = new SecondLook(
                appearance.theme().id(),
                appearance.zoom().factor(),
                isFull ? host.look().place() : place(at),
                speaker);
        host.keep(look);
    }

    private static SecondLook.@Nullable Place place(Rectangle at) {
        return at.width > 0 && at.height > 0 ? new SecondLook.Place(at.x, at.y, at.width, at.height) : null;
    }

    @Override
    public void dispose() {
        if (ticker.isRunning()) {
            ticker.stop();
            keep();
        }
        super.dispose();
    }
}
