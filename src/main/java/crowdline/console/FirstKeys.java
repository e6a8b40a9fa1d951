package crowdline.console;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Which keys are the window's at all, and which belong to what is in front of everything. */
final class FirstKeys {
    private final Window window;
    private final ConsolePane pane;
    private final Runnable resume;

    /** @param resume what the incident page asks for when it is left */
    FirstKeys(Window window, ConsolePane pane, Runnable resume) {
        this.window = window;
        this.pane = pane;
        this.resume = resume;
    }

    boolean isOurs(KeyEvent event) {
        Component source = event.getComponent();
        return source != null && (source == window || SwingUtilities.getWindowAncestor(source) == window);
    }

    static boolean isWriting() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner instanceof JTextComponent text && text.isEditable() && text.isShowing();
    }

    /** Keys that belong to what is in front of everything: the incident page, the sheet of keys. */
    boolean take(KeyEvent event) {
        boolean letters = (event.getModifiersEx() & (KeyEvent.CTRL_DOWN_MASK | KeyEvent.ALT_DOWN_MASK)) == 0;
        if (pane.place() == Place.LIVE && pane.live().inIncident() && letters) {
            if (event.getKeyCode() == KeyEvent.VK_F11) {
                return false;
            }
            if (pane.live().type(event)) {
                resume.run();
            }
            return true;
        }
        if (event.getKeyCode() == KeyEvent.VK_ESCAPE && pane.walk().writing()) {
            pane.walk().closeNote();
            pane.requestFocusInWindow();
            return true;
        }
        if (event.getKeyCode() == KeyEvent.VK_ESCAPE && pane.keysShown()) {
            pane.showKeys(false);
            return true;
        }
        return false;
    }
}
