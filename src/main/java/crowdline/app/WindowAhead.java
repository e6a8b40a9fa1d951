package crowdline.app;

import crowdline.console.ConsoleFrame;
import crowdline.console.Place;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** The window before and after it is made: what is sent to it waits for it. From any thread. */
final class WindowAhead {
    private final CompletableFuture<ConsoleFrame> frame = new CompletableFuture<>();

    /** The window has been made; it is shown when something is presented in it. */
    void made(ConsoleFrame window) {
        frame.complete(window);
    }

    /** Sends something that the window takes from any thread. */
    void send(Consumer<ConsoleFrame> sent) {
        var unused = frame.thenAccept(sent);
    }

    /**
     * Shows the window, in Live if a show goes on there.
     *
     * @param afterwards done on the event thread once that is painted
     */
    void present(boolean goesOn, Runnable afterwards) {
        var unused = frame.thenAcceptAsync(
                window -> {
                    if (goesOn) {
                        window.go(Place.LIVE);
                    }
                    if (!window.isVisible()) {
                        window.setVisible(true);
                    }
                    // Behind the painting that these have asked for.
                    SwingUtilities.invokeLater(afterwards);
                },
                SwingUtilities::invokeLater);
    }
}
