package crowdline.app.window.edit;

import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.unsaved.UnsavedEdit;
import crowdline.storage.unsaved.UnsavedShelf;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * Keeps what is edited and not saved in the program's own folder, some seconds after a change at the latest. The user's file
 * is not touched. Told on the event thread what is edited; keeps it on the {@code io} thread.
 */
final class UnsavedKeeper {
    /** Lost at worst when the machine stops. Tuned: long enough not to write at every letter. */
    static final int AFTER_MS = 2000;

    private static final System.Logger LOG = System.getLogger(UnsavedKeeper.class.getName());

    private final UnsavedShelf shelf;
    private final InstantSource wall;
    private final Executor io;
    private final Consumer<String> say;
    private final Timer timer = new Timer(AFTER_MS, e -> keepNewest());
    /** Counts what was edited, so that nothing is kept under the name of another. */
    private final AtomicInteger number = new AtomicInteger();
    /** On the event thread. */
    private @Nullable Newest newest;
    /** On the io thread. */
    private @Nullable Edited edited;
    /** On the io thread: what cannot be kept is said once, until it can be kept again. */
    private boolean said;

    private record Newest(int number, Show show) {}

    private record Edited(String name, @Nullable Path file, String sha256, Show saved) {}

    UnsavedKeeper(UnsavedShelf shelf, InstantSource wall, Executor io, Consumer<String> say) {
        this.shelf = shelf;
        this.wall = wall;
        this.io = io;
        this.say = say;
        timer.setRepeats(false);
    }

    /** On the event thread: the show is this now. */
    void edited(Show show) {
        newest = new Newest(number.get(), show);
        if (!timer.isRunning()) {
            timer.start();
        }
    }

    private void keepNewest() {
        Newest now = newest;
        newest = null;
        if (now != null) {
            io.execute(() -> {
                if (now.number() == number.get()) {
                    keep(now.show());
                }
            });
        }
    }

    /** On the io thread: it stands so in its file now. What was edited meanwhile is kept again. */
    void saved(String name, Path file, String sha256, Show saved) {
        Edited before = edited;
        if (before != null) {
            shelf.forget(before.name());
        }
        edited = new Edited(name, file, sha256, saved);
    }

    /**
     * On the io thread: this is edited from now on.
     *
     * @param saved what need not be kept
     */
    void begin(String name, @Nullable Path file, String sha256, Show saved) {
        edited = new Edited(name, file, sha256, saved);
        number.incrementAndGet();
    }

    /** On the io thread: keeps a show, unless it is saved. */
    void keep(Show show) {
        Edited now = edited;
        if (now == null) {
            return;
        }
        if (show.equals(now.saved())) {
            shelf.forget(now.name());
            return;
        }
        try {
            shelf.keep(now.name(), new UnsavedEdit(now.file(), now.sha256(), wall.instant(), show));
            said = false;
        } catch (ShowFileException e) {
            LOG.log(System.Logger.Level.DEBUG, "Keeping unsaved changes", e);
            if (!said) {
                said = true;
                say.accept("Unsaved changes cannot be kept beside: " + e.getMessage() + ". Save with Ctrl+S");
            }
        }
    }

    /** On the io thread: nothing is edited any more, or what was done since the last save is given up. */
    void end() {
        Edited now = edited;
        if (now != null) {
            shelf.forget(now.name());
        }
        edited = null;
        number.incrementAndGet();
    }
}
