package crowdline.console.paint;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.MouseWheelEvent;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/** Scrolls what is in it up and down; where there is nothing more to scroll that way, the wheel scrolls the page around it. */
public class InnerScroll extends JScrollPane {
    public InnerScroll(Component inside) {
        super(inside);
    }

    @Override
    protected void processMouseWheelEvent(MouseWheelEvent event) {
        Container page = getParent() == null ? null : SwingUtilities.getAncestorOfClass(JScrollPane.class, getParent());
        if (page == null || event.isShiftDown() || hasMore(event.getPreciseWheelRotation())) {
            super.processMouseWheelEvent(event);
        } else {
            page.dispatchEvent(SwingUtilities.convertMouseEvent(this, event, page));
        }
    }

    private boolean hasMore(double rotation) {
        JScrollBar bar = getVerticalScrollBar();
        int value = bar.getValue();
        return bar.isVisible()
                && (rotation < 0 ? value > bar.getMinimum() : value + bar.getVisibleAmount() < bar.getMaximum());
    }
}
