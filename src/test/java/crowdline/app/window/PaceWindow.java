package crowdline.app.window;

import crowdline.console.pace.IdlePaceHost;
import crowdline.console.pace.Microphone;
import crowdline.console.pace.PaceHost;
import crowdline.console.pace.PacePanel;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.speech.say.SpokenText;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Objects;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** What is in the pace window, worked by keys without a screen. */
public final class PaceWindow {
    private static final long KEY_EVERY_MS = 1500;

    private final Microphone microphone;
    private final List<SpokenText> remarks;
    private @Nullable PacePanel panel;
    private long whenMs = 10_000;

    public PaceWindow(Microphone microphone, List<SpokenText> remarks) {
        this.microphone = microphone;
        this.remarks = List.copyOf(remarks);
    }

    /** Opens it and begins to time a speaker. */
    public void begin() throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(() -> {
            PacePanel made = new PacePanel(
                    new Appearance(Themes.DAY, Zoom.NONE),
                    new PaceHost.Found(List.of(), "Wenna", remarks, ""),
                    new IdlePaceHost(microphone),
                    () -> {});
            panel = made;
            ((JTextField) named(made, "Name of a speaker to time")).postActionEvent();
        });
    }

    public void press(int key) throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(() -> {
            Component remark = named(panel(), "Say this");
            whenMs += KEY_EVERY_MS;
            for (KeyListener listener : remark.getKeyListeners()) {
                listener.keyPressed(event(remark, KeyEvent.KEY_PRESSED, key, whenMs));
                listener.keyReleased(event(remark, KeyEvent.KEY_RELEASED, key, whenMs + 100));
            }
        });
    }

    private static KeyEvent event(Component on, int id, int key, long whenMs) {
        return new KeyEvent(on, id, whenMs, 0, key, KeyEvent.CHAR_UNDEFINED);
    }

    /** As a window does when it goes. */
    public void close() throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(panel()::removeNotify);
    }

    private PacePanel panel() {
        return Objects.requireNonNull(panel);
    }

    private static Component named(Container in, String name) {
        Component found = find(in, name);
        return Objects.requireNonNull(found, name);
    }

    private static @Nullable Component find(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (name.equals(each.getAccessibleContext().getAccessibleName())) {
                return each;
            }
            Component inside = each instanceof Container container ? find(container, name) : null;
            if (inside != null) {
                return inside;
            }
        }
        return null;
    }
}
