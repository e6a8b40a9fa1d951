package crowdline.app.window;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** What the program logs as a warning or worse, and what no thread caught, until it is closed. */
final class Faults extends Handler {
    private final List<String> all = new CopyOnWriteArrayList<>();
    private final Logger logger = Logger.getLogger("crowdline");
    private final Thread.@Nullable UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();

    Faults() {
        logger.addHandler(this);
        Thread.setDefaultUncaughtExceptionHandler((thread, thrown) -> all.add(thread.getName() + ": " + thrown));
    }

    List<String> all() {
        return List.copyOf(all);
    }

    @Override
    public void publish(LogRecord made) {
        if (made.getLevel().intValue() >= Level.WARNING.intValue()) {
            all.add(made.getMessage() + " " + made.getThrown());
        }
    }

    @Override
    public void flush() {
        // Nothing is kept back.
    }

    @Override
    public void close() {
        logger.removeHandler(this);
        Thread.setDefaultUncaughtExceptionHandler(before);
    }
}
