package crowdline.app.window;

import crowdline.console.ConsoleFrame;
import crowdline.console.ConsolePane;
import crowdline.console.paint.Painted;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;

/** The windows of the program that are on the screen, and which of them has the keys. On the event thread. */
final class OpenWindows {
    private OpenWindows() {}

    static Stream<Window> windows() {
        return Stream.of(Window.getWindows()).filter(Window::isShowing);
    }

    /**
     * The window of the program, once something in it has the keys: what is pressed before is lost, as on any screen. One
     * that was just closed may still be said to have them.
     */
    static @Nullable ConsoleFrame consoleWithKeys() {
        ConsoleFrame console = console();
        Component focus = focus();
        return console != null && focus != null && SwingUtilities.isDescendingFrom(focus, console.getContentPane())
                ? console
                : null;
    }

    /** The window of the program, once it is there. */
    static @Nullable ConsoleFrame console() {
        return Stream.of(Frame.getFrames())
                .filter(f -> f instanceof ConsoleFrame && f.isShowing())
                .map(ConsoleFrame.class::cast)
                .findFirst()
                .orElse(null);
    }

    /** What is open and has the keys, for whoever has to find out why something did not come. */
    static String asTheyAre(ConsolePane pane) {
        Component focus = focus();
        String edited = pane.editing().isOpen()
                ? pane.editing().now().acts().size() + " acts, unsaved "
                        + pane.editing().isUnsaved()
                : "nothing edited";
        String keys = focus == null
                ? "nothing"
                : focus.getClass().getSimpleName() + " "
                        + focus.getAccessibleContext().getAccessibleName();
        Component messages = painted(pane, "Messages");
        return pane.place() + ", " + edited + ", windows "
                + windows().map(Window::getName).toList() + ", keys in " + keys + ", messages: "
                + (messages == null ? "" : messages.getAccessibleContext().getAccessibleDescription());
    }

    /** Whether these words stand in a text, in whichever window. */
    static boolean say(String words) {
        return windows()
                .flatMap(w -> shown(w, JTextComponent.class))
                .anyMatch(text -> text.getText().contains(words));
    }

    /** Makes the console so large, pixels. */
    static void size(int wide, int tall) {
        windows().filter(ConsoleFrame.class::isInstance).forEach(w -> w.setSize(wide, tall));
    }

    /** Whether what has the keys is called so, or begins so. */
    static boolean focusIs(String name) {
        Component focus = focus();
        String called = focus == null ? null : focus.getAccessibleContext().getAccessibleName();
        return called != null && called.startsWith(name);
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

    /** The buttons on the screen whose words begin so, in whichever window. */
    static Stream<JButton> buttons(String words) {
        return windows()
                .flatMap(w -> shown(w, JButton.class))
                .filter(b -> b.getText() != null && b.getText().startsWith(words));
    }

    /** What is chosen in the list or table of this name, its row from 0; below −1 if there is none. */
    static int chosen(Container in, String name) {
        return Stream.concat(
                        shown(in, JList.class).filter(l -> isCalled(l, name)).map(l -> l.getSelectedIndex()),
                        shown(in, JTable.class).filter(t -> isCalled(t, name)).map(t -> t.getSelectedRow()))
                .findFirst()
                .orElse(-2);
    }

    private static boolean isCalled(Component part, String name) {
        return name.equals(part.getAccessibleContext().getAccessibleName());
    }

    /** The painted row of this name, shown or not. */
    static @Nullable Component painted(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (each instanceof Painted<?>
                    && name.equals(each.getAccessibleContext().getAccessibleName())) {
                return each;
            }
            Component inside = each instanceof Container container ? painted(container, name) : null;
            if (inside != null) {
                return inside;
            }
        }
        return null;
    }
}
