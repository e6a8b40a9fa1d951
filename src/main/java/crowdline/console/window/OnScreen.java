package crowdline.console.window;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Window;

/** Keeps a window on its screen: on one no larger than the window, its own border must not push the foot off the edge. */
public final class OnScreen {
    private OnScreen() {}

    /** Moves and shrinks a window as far as it has to be. */
    public static void keep(Window window) {
        Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        Rectangle now = window.getBounds();
        if (!room.contains(now)) {
            int width = Math.min(now.width, room.width);
            int height = Math.min(now.height, room.height);
            window.setBounds(
                    Math.max(room.x, Math.min(now.x, room.x + room.width - width)),
                    Math.max(room.y, Math.min(now.y, room.y + room.height - height)),
                    width,
                    height);
        }
    }
}
