package crowdline.app.window;

import crowdline.app.window.show.ShowOpener;
import crowdline.running.RunningShow;
import crowdline.running.WorkerThreads;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;

/** The end of the program: the show that runs is left, and what waits to be written is written. */
final class Leaving {
    private final ShowOpener opening;
    private final Path demoShow;
    private final WorkerThreads flights;
    private final ExecutorService io;

    Leaving(ShowOpener opening, Path demoShow, WorkerThreads flights, ExecutorService io) {
        this.opening = opening;
        this.demoShow = demoShow;
        this.flights = flights;
        this.io = io;
    }

    /** Takes nothing more; ends once everything is on the disk. */
    void begin() {
        if (opening.isAtWork()) {
            // Nobody waits any longer to learn how its show flies.
            flights.abandon(ConsoleWiring.IO);
        }
        io.execute(this::leave);
    }

    private void leave() {
        RunningShow show = opening.running();
        if (show != null) {
            if (demoShow.equals(opening.openFile())) {
                // The demo begins afresh the next time; a real show goes on where it was left.
                show.end();
            }
            show.close();
        }
        flights.close();
        // What was still to be written has been asked for by now.
        io.shutdown();
    }
}
