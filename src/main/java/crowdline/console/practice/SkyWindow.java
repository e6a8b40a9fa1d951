package crowdline.console.practice;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Frame;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.WindowConstants;

/** The sky in a window of its own, for a second screen. It never takes the keys, and is closed with the practice. */
public final class SkyWindow {
    private final JFrame frame = new JFrame("The sky – PRACTICE");

    public SkyWindow(Frame console, JComponent sky) {
        frame.setFocusableWindowState(false);
        frame.setAutoRequestFocus(false);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.getContentPane().add(sky, BorderLayout.CENTER);
        frame.setSize(new Dimension(1100, 620));
        frame.setLocation(console.getX() + 60, console.getY() + 40);
    }

    /** Shows it, as after the incident page, which hides everything else. */
    public void show() {
        if (!frame.isShowing()) {
            frame.setVisible(true);
        }
    }

    /** Puts it away. */
    public void close() {
        frame.dispose();
    }
}
