package crowdline.console.paint;

import crowdline.console.theme.Appearance;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Objects;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/**
 * A component that paints one view and repaints only when that view has changed.
 *
 * @param <V> the view, an immutable value
 */
public abstract class Painted<V> extends JComponent implements Accessible {
    private final transient TextFit fit = new TextFit();
    private transient @Nullable V view;
    private transient Appearance appearance;
    private double scale = 1;

    protected Painted(String name, Appearance appearance) {
        this.appearance = appearance;
        setOpaque(true);
        setMinimumSize(new Dimension(0, 0));
        getAccessibleContext().setAccessibleName(name);
    }

    /** Shows a view; nothing is repainted if it is the one already shown. */
    public void show(V next) {
        if (Objects.equals(next, view)) {
            return;
        }
        view = next;
        getAccessibleContext().setAccessibleDescription(spoken(next));
        repaint();
    }

    /** Changes colours and sizes. */
    public void wear(Appearance next, double windowScale) {
        if (!next.equals(appearance) || windowScale != scale) {
            appearance = next;
            scale = windowScale;
            repaint();
        }
    }

    /** Changes sizes only, as when the window has grown. */
    public void rescale(double windowScale) {
        wear(appearance, windowScale);
    }

    public @Nullable V shown() {
        return view;
    }

    /** What a screen reader says of the view. */
    protected abstract String spoken(V shown);

    /** Paints the view over a ground already filled. */
    protected abstract void paint(Pen pen, V shown, Box box);

    /** The colour behind the view. */
    protected Color ground(Appearance worn) {
        return worn.palette().ground();
    }

    /** What it is painted with. */
    Pen pen(Graphics2D g, Appearance worn, double windowScale, TextFit remembering) {
        return new Pen(g, worn, windowScale, remembering);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            Pen pen = pen(g, appearance, scale, fit);
            Box box = new Box(0, 0, getWidth(), getHeight());
            pen.fill(box, ground(appearance));
            V shown = view;
            if (shown != null) {
                paint(pen, shown, box);
            }
        } finally {
            g.dispose();
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }
            };
        }
        return accessibleContext;
    }
}
