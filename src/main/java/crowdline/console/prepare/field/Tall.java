package crowdline.console.prepare.field;

import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import java.beans.PropertyChangeListener;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** A panel as wide as the window it scrolls in and as tall as its content, or as the window if that is taller. */
public class Tall extends JPanel implements Scrollable {
    private static final int LINE_PX = 24;
    private static final String OWNER = "permanentFocusOwner";

    private final transient PropertyChangeListener focus = event -> follow(event.getNewValue());

    public Tall(LayoutManager layout) {
        super(layout);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addPropertyChangeListener(OWNER, focus);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removePropertyChangeListener(OWNER, focus);
        super.removeNotify();
    }

    /** Scrolls to whatever gets the focus. */
    private void follow(@Nullable Object owner) {
        if (owner instanceof JComponent inside && SwingUtilities.isDescendingFrom(inside, this)) {
            scrollRectToVisible(SwingUtilities.convertRectangle(
                    inside, new Rectangle(0, 0, inside.getWidth(), Math.min(inside.getHeight(), LINE_PX)), this));
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(0, 0);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return LINE_PX;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - LINE_PX;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
