package crowdline.app.shell;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Opens the console window. */
public interface WindowOpener {
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
     * Opens the second window alone, on a show that runs in another process.
     *
     * @return {@link #STAYS_OPEN}, or an exit code if the window could not be opened
     */
    default int watch(Path show, Terminal terminal) {
        return ExitCode.UNUSABLE;
    }

    /**
     * What is plugged in.
     *
     * @param receiver where the aircraft's positions come from: a serial port's path, a flight log, {@code -} for standard
     *     input, or null
     * @param faster how much faster than flown a flight log is played, above 0
     * @param pedal where the pedals are, or null for the one used the last time
     */
    record Devices(
            @Nullable String receiver,
            double faster,
            @Nullable PedalPort pedal) {
        public static final Devices NONE = new Devices(null, 1, null);
    }

    /** Opens the window on a show, with devices. */
    default int open(@Nullable Path show, Devices devices, Terminal terminal) {
        return open(show, terminal);
    }
}
