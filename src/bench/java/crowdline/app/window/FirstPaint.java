package crowdline.app.window;

import com.formdev.flatlaf.FlatLightLaf;
import crowdline.app.Main;
import crowdline.console.live.LivePanel;
import java.awt.Component;
import java.awt.Container;
import java.awt.Toolkit;
import java.awt.Window;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * A program that says when it has painted: the console itself once Live with a running show is painted, or a bare window
 * with one label. Both are watched the same way and end there. See {@link StartTimes}.
 */
public final class FirstPaint {
    /** What is written once it is painted. */
    static final String PAINTED = "painted";

    private FirstPaint() {}

    /** {@code console SHOW}, or {@code bare}. */
    public static void main(String[] args) {
        boolean console = args[0].equals("console");
        Predicate<Component> looked = console ? LivePanel.class::isInstance : JLabel.class::isInstance;
        RepaintManager.setCurrentManager(new Watching(looked));
        if (console) {
            Main.main(new String[] {args[1]});
        } else {
            SwingUtilities.invokeLater(FirstPaint::bare);
        }
    }

    private static void bare() {
        FlatLightLaf.setup();
        JFrame frame = new JFrame("Bare");
        frame.add(new JLabel("One label"));
        frame.setSize(1280, 800);
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
    }

    /** Every painting of Swing's is asked for and done here; the first one of what is looked for ends the program. */
    private static final class Watching extends RepaintManager {
        private final Predicate<Component> looked;
        private volatile boolean asked;

        Watching(Predicate<Component> looked) {
            this.looked = looked;
        }

        @Override
        public void addDirtyRegion(JComponent component, int x, int y, int width, int height) {
            super.addDirtyRegion(component, x, y, width, height);
            note(component);
        }

        @Override
        public void addDirtyRegion(Window window, int x, int y, int width, int height) {
            super.addDirtyRegion(window, x, y, width, height);
            note(window);
        }

        private void note(Component dirty) {
            for (Window window : asked ? new Window[0] : Window.getWindows()) {
                JComponent found = find(window);
                if (found != null && found.isShowing() && SwingUtilities.isDescendingFrom(found, dirty)) {
                    asked = found.getWidth() > 0 && found.getHeight() > 0;
                }
            }
        }

        @Override
        public void paintDirtyRegions() {
            boolean now = asked;
            super.paintDirtyRegions();
            if (now) {
                Toolkit.getDefaultToolkit().sync();
                System.out.println(PAINTED);
                System.out.flush();
                System.exit(0);
            }
        }

        private @Nullable JComponent find(Component in) {
            if (in instanceof JComponent component && looked.test(component)) {
                return component;
            }
            if (in instanceof Container container) {
                for (Component child : container.getComponents()) {
                    JComponent found = find(child);
                    if (found != null) {
                        return found;
                    }
                }
            }
            return null;
        }
    }
}
