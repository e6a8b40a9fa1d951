package crowdline.console.preview;

import crowdline.console.theme.Appearance;
import crowdline.sheet.page.Page;
import crowdline.sheet.page.PagePainter;
import crowdline.sheet.page.Pages;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import org.jspecify.annotations.Nullable;

/** One page as it will be printed, as large as the window or larger. */
final class PageCanvas extends JComponent {
    private static final double STEP = 1.25;
    private static final double MOST = 6;
    private static final int EDGE_PX = 12;

    private final Color paper = Color.WHITE;
    private final Color ground;
    private transient @Nullable Pages pages;
    private int index;
    /** Against the whole page in the window. */
    private double zoom = 1;

    PageCanvas(Appearance appearance) {
        ground = appearance.palette().ground();
        setOpaque(true);
        // So that the arrows move a page that is larger than the window.
        setFocusable(true);
    }

    void show(@Nullable Pages next) {
        pages = next;
        index = 0;
        turned();
    }

    /** Goes so many pages on; stays on the first or last. */
    void turn(int by) {
        Pages now = pages;
        if (now != null) {
            index = (int) Math.max(0, Math.min(now.pages().size() - 1L, (long) index + by));
            turned();
        }
    }

    /** Larger or smaller by steps; 0 for the whole page. */
    void zoom(int steps) {
        zoom = steps == 0 ? 1 : Math.max(1, Math.min(MOST, zoom * Math.pow(STEP, steps)));
        turned();
    }

    private void turned() {
        revalidate();
        repaint();
        if (getParent() instanceof JViewport viewport) {
            viewport.setViewPosition(new java.awt.Point(0, 0));
        }
    }

    /** "Page 3 of 16", or empty if there is none. */
    String where() {
        Pages now = pages;
        return now == null ? "" : "Page " + (index + 1) + " of " + now.pages().size();
    }

    private @Nullable Page page() {
        Pages now = pages;
        return now == null || now.pages().isEmpty() ? null : now.pages().get(index);
    }

    /** Pixels of the screen to the point. */
    private double scale(Page page, Dimension room) {
        double wide = (room.width - 2.0 * EDGE_PX) / page.size().widthPt();
        double tall = (room.height - 2.0 * EDGE_PX) / page.size().heightPt();
        return Math.max(0.05, zoom * Math.min(wide, tall));
    }

    private Dimension room() {
        return getParent() == null ? getSize() : getParent().getSize();
    }

    @Override
    public Dimension getPreferredSize() {
        Page page = page();
        if (page == null) {
            return room();
        }
        double scale = scale(page, room());
        return new Dimension(
                (int) (scale * page.size().widthPt()) + 2 * EDGE_PX,
                (int) (scale * page.size().heightPt()) + 2 * EDGE_PX);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(ground);
        graphics.fillRect(0, 0, getWidth(), getHeight());
        Page page = page();
        if (page == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            double scale = scale(page, room());
            double x = Math.max(EDGE_PX, (getWidth() - scale * page.size().widthPt()) / 2);
            g.translate(x, EDGE_PX);
            g.scale(scale, scale);
            g.setColor(paper);
            g.fill(new java.awt.geom.Rectangle2D.Double(
                    0, 0, page.size().widthPt(), page.size().heightPt()));
            PagePainter.paint(g, page);
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
                    return AccessibleRole.CANVAS;
                }

                @Override
                public String getAccessibleName() {
                    return "The page as it will be printed. " + where();
                }
            };
        }
        return accessibleContext;
    }
}
