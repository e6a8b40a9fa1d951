package crowdline.app.window.work;

import crowdline.console.ConsoleFrame;
import crowdline.console.place.Place;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** The window before and after it is made: what is sent to it waits for it, and comes in the order sent. From any thread. */
public final class PendingWindow {
    /** Whatever takes longer than this is waited for in sight. */
    private static final int PATIENCE_MS = 1000;

    private final SentInOrder<ConsoleFrame> frame = new SentInOrder<>(SwingUtilities::invokeLater);
    /** On the event thread only. A window that was closed is not shown again. */
    private boolean shown;

    /** The window has been made; it is shown when something is presented in it, or in a second. On the event thread. */
    public void made(ConsoleFrame window) {
        frame.made(window);
        Timer patience = new Timer(PATIENCE_MS, e -> show(window));
        patience.setRepeats(false);
        patience.start();
    }

    /** Does something to the window that may be done from any thread. */
    public void send(Consumer<ConsoleFrame> sent) {
        frame.send(sent);
    }

    /**
     * Shows the window, in Live if a show goes on there.
     *
     * @param afterwards done on the event thread once that is painted
     */
    public void present(boolean goesOn, Runnable afterwards) {
        send(window -> SwingUtilities.invokeLater(() -> {
            if (goesOn) {
                window.go(Place.LIVE);
            }
            show(window);
            // Behind the painting that these have asked for.
            SwingUtilities.invokeLater(afterwards);
        }));
    }

    private void show(ConsoleFrame window) {
        if (!shown) {
            shown = true;
            window.setVisible(true);
        }
    }
}
