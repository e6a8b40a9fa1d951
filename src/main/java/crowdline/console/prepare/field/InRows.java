package crowdline.console.prepare.field;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Lays components side by side at their full width, and those that find no room in further rows under them. */
public final class InRows implements LayoutManager {
    private final int gapPx;

    /**
     * Rows with a gap.
     *
     * @param gapPx between two, across and down
     */
    public InRows(int gapPx) {
        this.gapPx = gapPx;
    }

    @Override
    public void layoutContainer(Container parent) {
        arrange(parent, parent.getWidth(), true);
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int wide = parent.getWidth() > 0 ? parent.getWidth() : Integer.MAX_VALUE;
        return arrange(parent, wide, false);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    private Dimension arrange(Container parent, int wide, boolean place) {
        int x = 0;
        int y = 0;
        int row = 0;
        int widest = 0;
        for (Component each : parent.getComponents()) {
            Dimension size = each.getPreferredSize();
            int own = Math.min(size.width, wide);
            if (x > 0 && x + own > wide) {
                x = 0;
                y += row + gapPx;
                row = 0;
            }
            if (place) {
                each.setBounds(x, y, own, size.height);
            }
            x += own + gapPx;
            row = Math.max(row, size.height);
            widest = Math.max(widest, x - gapPx);
        }
        return new Dimension(widest, y + row);
    }

    @Override
    public void addLayoutComponent(String name, Component component) {}

    @Override
    public void removeLayoutComponent(Component component) {}
}
