package crowdline.app;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Opens the console window. */
interface Opening {
    /** The window is open and keeps the program running. */
    int STAYS_OPEN = -1;

    /**
     * Opens the window on a show.
     *
     * @param show the show file to open, or null for none
     * @return {@link #STAYS_OPEN}, or an exit code if the window could not be opened
     */
    int open(@Nullable Path show, Terminal terminal);

    /**
     * Opens the window on a show, with the aircraft's positions.
     *
     * @param receiver where they come from: a serial port's path, a flight log, {@code -} for standard input, or null
     */
    default int open(@Nullable Path show, @Nullable String receiver, Terminal terminal) {
        return open(show, terminal);
    }
}
