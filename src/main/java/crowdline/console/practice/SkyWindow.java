package crowdline.console.practice;

import java.awt.BorderLayout;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/** The sky in a window of its own, beside the console. It never takes the keys, and is closed with the practice. */
public final class SkyWindow {
    private final JFrame frame = new JFrame("The sky – PRACTICE");
    private final Frame console;
    private final Point before;
    private final Point moved;

    private SkyWindow(Frame console, JComponent sky, SkyRoom room) {
        this.console = console;
        before = console.getLocation();
        moved = room.console().getLocation();
        console.setLocation(moved);
        frame.setFocusableWindowState(false);
        frame.setAutoRequestFocus(false);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.getContentPane().add(sky, BorderLayout.CENTER);
        frame.setBounds(room.sky());
    }

    /** The sky beside the console, which makes room if it has to; nothing if the console leaves none. */
    public static Optional<SkyWindow> beside(Frame console, JComponent sky) {
        return SkyRoom.beside(console.getBounds(), screens()).map(room -> new SkyWindow(console, sky, room));
    }

    /** What of each screen windows may cover. */
    private static List<Rectangle> screens() {
        List<Rectangle> screens = new ArrayList<>();
        for (GraphicsDevice device :
                GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
            GraphicsConfiguration screen = device.getDefaultConfiguration();
            Rectangle all = screen.getBounds();
            Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(screen);
            screens.add(new Rectangle(
                    all.x + taken.left,
                    all.y + taken.top,
                    all.width - taken.left - taken.right,
                    all.height - taken.top - taken.bottom));
        }
        return screens;
    }

    /** Shows it, as after the incident page, which hides everything else. */
    public void show() {
        if (!frame.isShowing()) {
            frame.setVisible(true);
        }
    }

    /** Puts it away; a console that made room goes back, unless it was moved since. */
    public void close() {
        if (console.getLocation().equals(moved)) {
            console.setLocation(before);
        }
        frame.dispose();
    }
}
