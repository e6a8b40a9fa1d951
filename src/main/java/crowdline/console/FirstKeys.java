package crowdline.console;

import crowdline.console.keys.Command;
import crowdline.console.keys.KeyDispatcher;
import crowdline.console.place.Place;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Which keys are the window's at all, and which belong to what is in front in it. */
final class FirstKeys implements KeyDispatcher.Room {
    private final Window window;
    private final Front front;
    private final ConsolePane pane;
    private final TourGuide tour;
    private final Runnable resume;

    /** @param resume what the incident page asks for when it is left */
    FirstKeys(Window window, Front front, ConsolePane pane, TourGuide tour, Runnable resume) {
        this.window = window;
        this.front = front;
        this.pane = pane;
        this.tour = tour;
        this.resume = resume;
    }

    @Override
    public boolean owns(KeyEvent press) {
        Component source = press.getComponent();
        boolean here = source != null && (source == window || SwingUtilities.getWindowAncestor(source) == window);
        return here && !front.isTaken();
    }

    @Override
    public boolean isWriting() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && owner.isShowing() && takesLetters(owner);
    }

    /** Where a show is made its lists and tables find by letters; where it is told, every letter is a command. */
    @Override
    public boolean isFinding() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return (pane.place() == Place.PREPARE || pane.place() == Place.WORDS)
                && owner != null
                && owner.isShowing()
                && (owner instanceof JList<?> || owner instanceof JTable);
    }

    /** Fields, tables with a cell being edited, and boxes, in which a letter chooses. */
    private static boolean takesLetters(Component owner) {
        return (owner instanceof JTextComponent text && text.isEditable())
                || (owner instanceof JTable table && table.isEditing())
                || owner instanceof JComboBox<?>;
    }

    @Override
    public boolean take(KeyEvent press, boolean held) {
        if (pane.place() == Place.LIVE && pane.live().announcements().isOpen()) {
            return inAnnouncements(press, held);
        }
        if (pane.inIncident()) {
            return inIncident(press, held);
        }
        if (pane.place() == Place.LIVE && pane.live().find().isOpen() && inLookUp(press, held)) {
            return true;
        }
        if (press.getKeyCode() != KeyEvent.VK_ESCAPE) {
            return false;
        }
        if (pane.keysShown()) {
            pane.showKeys(KeysShown.NONE);
            return true;
        }
        if ((pane.place() == Place.WALK && pane.walk().closeNote())
                || (pane.place() == Place.LIVE
                        && (pane.live().closeNote() || pane.live().closeList()))
                || (pane.place() == Place.PREPARE && pane.prepare().back())
                || (pane.place() == Place.WORDS && pane.words().back())) {
            return true;
        }
        boolean led = tour.isOn();
        tour.leave();
        return led;
    }

    /** Letters are for what is looked up; the keys that a remote types for stepping go on doing so. */
    private boolean inLookUp(KeyEvent press, boolean held) {
        if ((press.getModifiersEx() & (KeyEvent.CTRL_DOWN_MASK | KeyEvent.ALT_DOWN_MASK | KeyEvent.META_DOWN_MASK)) != 0
                || pane.keysShown()) {
            return false;
        }
        switch (press.getKeyCode()) {
            case KeyEvent.VK_PAGE_DOWN -> step(Command.NEXT, held);
            case KeyEvent.VK_PAGE_UP -> step(Command.BACK, held);
            default -> {
                return pane.live().find().press(press.getKeyCode());
            }
        }
        return true;
    }

    private void step(Command command, boolean held) {
        if (!held) {
            pane.carryOut(command);
        }
    }

    /** What changes the look or the place goes on, and so does the key of the incident page; every other is for the pages. */
    private boolean inAnnouncements(KeyEvent press, boolean held) {
        boolean command = (press.getModifiersEx() & (KeyEvent.CTRL_DOWN_MASK | KeyEvent.ALT_DOWN_MASK)) != 0;
        int key = press.getKeyCode();
        boolean isFunction = key >= KeyEvent.VK_F1 && key <= KeyEvent.VK_F12;
        return !command && !isFunction && pane.live().announcements().press(press, held);
    }

    /** Nothing but the word leaves the page, and no menu opens over it by its letter; its look may change. */
    private boolean inIncident(KeyEvent press, boolean held) {
        boolean command = (press.getModifiersEx() & KeyEvent.CTRL_DOWN_MASK) != 0;
        if (command || press.getKeyCode() == KeyEvent.VK_F11) {
            return false;
        }
        if (!held && press.getKeyCode() == KeyEvent.VK_B) {
            pane.live().announce();
        } else if (!held && pane.live().pressInIncident(press)) {
            resume.run();
        }
        return true;
    }
}
