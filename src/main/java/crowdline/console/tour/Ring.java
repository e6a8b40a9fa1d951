package crowdline.console.tour;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import javax.accessibility.Accessible;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** A frame around what a step of the tour points at, over everything and in nobody's way. */
public final class Ring extends JComponent {
    private static final int WIDTH_PX = 4;

    private final transient Container within;
    private String name = "";
    private Color colour = Color.BLACK;
    private transient @Nullable Rectangle painted;

    /** @param within where to look for what is pointed at */
    public Ring(Container within) {
        this.within = within;
        setFocusable(false);
    }

    /** Points at what has this accessible name; at nothing if it is empty, or nothing of the name is on the screen. */
    public void point(String accessibleName, Color inColour) {
        name = accessibleName;
        colour = inColour;
        follow();
        setVisible(!name.isEmpty());
        repaint();
    }

    /** Goes where it points if that has moved. */
    public void follow() {
        Rectangle now = target();
        if (now == null ? painted != null : !now.equals(painted)) {
            painted = now;
            repaint();
        }
    }

    private @Nullable Rectangle target() {
        Component found = name.isEmpty() ? null : find(within);
        return found == null ? null : SwingUtilities.convertRectangle(found.getParent(), found.getBounds(), this);
    }

    private @Nullable Component find(Container container) {
        for (Component each : container.getComponents()) {
            if (each.isShowing()) {
                if (each instanceof Accessible accessible
                        && name.equals(accessible.getAccessibleContext().getAccessibleName())) {
                    return each;
                }
                Component inside = each instanceof Container inner ? find(inner) : null;
                if (inside != null) {
                    return inside;
                }
            }
        }
        return null;
    }

    /** What is under it gets the mouse. */
    @Override
    public boolean contains(int x, int y) {
        return false;
    }

    @Override
    protected void paintComponent(Graphics g) {
        Rectangle at = painted;
        if (at != null) {
            Graphics2D pen = (Graphics2D) g.create();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setColor(colour);
            pen.setStroke(new BasicStroke(WIDTH_PX));
            pen.drawRoundRect(
                    at.x + WIDTH_PX / 2,
                    at.y + WIDTH_PX / 2,
                    at.width - WIDTH_PX,
                    at.height - WIDTH_PX,
                    4 * WIDTH_PX,
                    4 * WIDTH_PX);
            pen.dispose();
        }
    }
}
