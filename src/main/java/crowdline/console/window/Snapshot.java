package crowdline.console.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;

/** Lays a component out and paints it without a window. */
public final class Snapshot {
    private Snapshot() {}

    public static BufferedImage of(Component component, int widthPx, int heightPx) {
        layOut(component, widthPx, heightPx);
        BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            component.print(g);
        } finally {
            g.dispose();
        }
        return image;
    }

    /** Gives everything its place and size, and paints nothing. */
    public static void layOut(Component component, int widthPx, int heightPx) {
        component.setSize(widthPx, heightPx);
        // Wrapping text knows its height only once it has its width, so the second time settles what the first moved.
        layOut(component);
        layOut(component);
    }

    private static void layOut(Component component) {
        if (component instanceof Container container) {
            container.invalidate();
            container.doLayout();
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }
}
