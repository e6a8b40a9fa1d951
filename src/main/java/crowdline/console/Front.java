package crowdline.console;

import crowdline.console.second.SecondWindow;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.Window;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.ToolTipManager;

/**
 * What can be in front of the window: menus, popups of boxes, dialogs, whoever opened them. It asks the toolkit what there
 * is, so that a dialog nobody has thought of yet is among them. On the event thread.
 */
final class Front {
    private final JFrame window;

    Front(JFrame window) {
        this.window = window;
    }

    /** Whether a menu, a popup or a dialog that has to be answered is open; then the keys belong to it. */
    boolean isTaken() {
        MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
        return (path.length > 0 && path[0].getComponent().isShowing())
                || others().anyMatch(w -> w instanceof Dialog dialog && dialog.isModal());
    }

    /** Closes all of it. Nothing counts as answered: a dialog is left as by its Cancel. */
    void clear() {
        MenuSelectionManager.defaultManager().clearSelectedPath();
        popups(window.getLayeredPane()).forEach(popup -> popup.setVisible(false));
        boolean tips = ToolTipManager.sharedInstance().isEnabled();
        ToolTipManager.sharedInstance().setEnabled(false);
        ToolTipManager.sharedInstance().setEnabled(tips);
        List<Window> open = new ArrayList<>(others().toList());
        // The newest are in front of those that opened them.
        Collections.reverse(open);
        for (Window each : open) {
            if (each instanceof Dialog) {
                each.dispose();
            } else {
                each.setVisible(false);
            }
        }
        if (!open.isEmpty()) {
            // Not every screen gives the keys back by itself when the window that had them is gone.
            window.toFront();
            window.requestFocus();
        }
    }

    /** The second window is on another screen and in nobody's way. */
    private Stream<Window> others() {
        return Stream.of(Window.getWindows()).filter(w -> w != window && w.isShowing() && !(w instanceof SecondWindow));
    }

    private static List<JPopupMenu> popups(Container within) {
        List<JPopupMenu> found = new ArrayList<>();
        for (Component child : within.getComponents()) {
            if (child instanceof JPopupMenu popup && popup.isVisible()) {
                found.add(popup);
            } else if (child instanceof Container container) {
                found.addAll(popups(container));
            }
        }
        return found;
    }
}
