package crowdline.console.window;

import java.awt.GraphicsDevice;
import java.awt.Rectangle;
import javax.swing.JFrame;
import org.jspecify.annotations.Nullable;

/** Lets a window fill its screen, and puts it back where it was. */
public final class FullScreen {
    private final JFrame window;
    private @Nullable Rectangle windowed;

    public FullScreen(JFrame window) {
        this.window = window;
    }

    public void turn() {
        GraphicsDevice screen = window.getGraphicsConfiguration().getDevice();
        Rectangle before = windowed;
        if (before == null) {
            windowed = window.getBounds();
            screen.setFullScreenWindow(window);
        } else {
            screen.setFullScreenWindow(null);
            window.setBounds(before);
            windowed = null;
        }
    }
}
