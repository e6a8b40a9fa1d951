package crowdline.console;

import crowdline.console.place.PlaceScreen;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.util.HashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Where the keys go as one thing or another comes in front: a window in which nothing has the focus hears none. */
final class KeptFocus {
    private final JComponent pane;
    private final Map<PlaceScreen, Component> left = new HashMap<>();
    private @Nullable Component beforeKeys;

    /** @param pane takes the focus where nothing of a place wants it */
    KeptFocus(JComponent pane) {
        this.pane = pane;
    }

    /** Another place is gone to from this one. */
    void leave(PlaceScreen screen) {
        Component owner = owner();
        if (owner != null && isIn(screen, owner)) {
            left.put(screen, owner);
        }
    }

    /** This place shows something else when it is next gone to. */
    void forget(PlaceScreen screen) {
        left.remove(screen);
    }

    /** The sheet of keys is about to be opened over what has the focus now. */
    void leaveForKeys() {
        beforeKeys = owner();
    }

    /** The sheet of keys is in front, and has nothing to be typed into. */
    void keepOnKeys() {
        pane.requestFocusInWindow();
    }

    /** What had the focus may be hidden now. */
    void keep(PlaceScreen screen) {
        Component owner = owner();
        if (isBackFromKeys(screen) || staysWhereItWas(owner, screen) || isBackInPlace(screen) || screen.takeFocus()) {
            return;
        }
        if (screen.needsNoFocus() || owner == null || !owner.isShowing()) {
            pane.requestFocusInWindow();
        }
    }

    /** Who looked up a key goes on where it is to be pressed. */
    private boolean isBackFromKeys(PlaceScreen screen) {
        Component back = beforeKeys;
        beforeKeys = null;
        return back != null && !screen.needsNoFocus() && isIn(screen, back) && back.requestFocusInWindow();
    }

    /** Who looked at another place goes on where the keys were in this one. */
    private boolean isBackInPlace(PlaceScreen screen) {
        Component back = left.remove(screen);
        return back != null && !screen.needsNoFocus() && isIn(screen, back) && back.requestFocusInWindow();
    }

    /** While another window has the focus, as when a file is asked for, it comes back where it was, not where one begins. */
    private boolean staysWhereItWas(@Nullable Component owner, PlaceScreen screen) {
        Window window = SwingUtilities.getWindowAncestor(pane);
        if (window == null
                || screen.needsNoFocus()
                || (owner != null && SwingUtilities.isDescendingFrom(owner, pane))) {
            return false;
        }
        Component last = window.getMostRecentFocusOwner();
        return last != null && isIn(screen, last) && (owner != null || last.requestFocusInWindow());
    }

    private static boolean isIn(PlaceScreen screen, Component part) {
        return part.isShowing() && SwingUtilities.isDescendingFrom(part, screen.component());
    }

    private static @Nullable Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }
}
