package crowdline.app.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The windows of the program that are on the screen, and which of them has the keys. On the event thread. */
final class OpenWindows {
    private OpenWindows() {}

    static Stream<Window> windows() {
        return Stream.of(Window.getWindows()).filter(Window::isShowing);
    }

    /** What has the keys, in whichever window. */
    static @Nullable Component focus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    static <C extends Component> Stream<C> shown(Container in, Class<C> type) {
        return Stream.of(in.getComponents())
                .filter(Component::isShowing)
                .flatMap(child -> type.isInstance(child)
                        ? Stream.of(type.cast(child))
                        : child instanceof Container inner ? shown(inner, type) : Stream.empty());
    }

    /** Gives the keys to the newest if none has them: a screen without a window manager leaves them nowhere when one closes. */
    static void giveKeysBack() {
        if (!(focus() instanceof JComponent)) {
            Window newest = windows().reduce((a, b) -> b).orElseThrow();
            newest.toFront();
            Component had = newest.getMostRecentFocusOwner();
            Component first = newest.getFocusTraversalPolicy().getDefaultComponent(newest);
            Objects.requireNonNullElse(had instanceof JComponent ? had : first, newest)
                    .requestFocus();
        }
    }
}
