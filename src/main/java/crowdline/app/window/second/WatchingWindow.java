package crowdline.app.window.second;

import crowdline.app.shell.Folders;
import crowdline.app.window.work.KeptSettings;
import crowdline.app.window.work.SecondKeeper;
import crowdline.console.live.LivePresenter;
import crowdline.console.live.SecondPresenter;
import crowdline.console.live.SecondView;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.second.SecondWindow;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.ShowLookup;
import crowdline.running.WatchedShow;
import crowdline.running.WatchedShow.Seen;
import crowdline.running.WorkerThreads;
import crowdline.speech.pace.Paces;
import crowdline.steer.Tracking;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.settings.PaceShelf;
import crowdline.storage.settings.SettingsFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * Follows a show that runs in another process, and shows the second window of it. Nothing of that process is written: the
 * look of this window is kept beside its settings.
 */
public final class WatchingWindow implements AutoCloseable {
    /** A show that was left so long ago is not running, seconds; as where one is gone on with. */
    private static final double FORGET_AFTER_S = 12 * 3600;

    private final WatchedShow watched;
    private final JournalMachine machine;
    private final KeptSettings settings;
    private final WorkerThreads flights = new WorkerThreads();
    private final ExecutorService io = Executors.newSingleThreadExecutor(work -> new Thread(work, "io"));

    /**
     * Reads the show; it takes a moment.
     *
     * @param machine its clocks are used
     * @throws ShowFileException if the show cannot be opened, with one sentence for the user
     */
    public WatchingWindow(Folders folders, Path file, JournalMachine machine) throws ShowFileException {
        this.machine = machine;
        SettingsFile own = new SettingsFile(folders.settings().resolve("second"));
        settings = new KeptSettings(own, own.read().settings(), io);
        Paces paces = new PaceShelf(folders.paces())
                .pacesOf(new SettingsFile(folders.settings()).read().settings().speaker());
        byte[] content = ShowFile.bytes(file);
        LoadedShow loaded = new ShowLoader(CatalogueFile::shipped, () -> paces, folders.passes(), flights)
                .load(file, content, LoadedShow.FIRST_FLIGHTS)
                .loaded();
        if (loaded == null) {
            throw new ShowFileException(
                    file.getFileName() + " has errors, so it cannot be watched; crowdline check lists them");
        }
        watched = new WatchedShow(
                loaded,
                new JournalShelf(folders.journals(), machine, FORGET_AFTER_S),
                JournalShow.of(file, content),
                machine.wall());
    }

    /** Opens the window and follows the show until it is closed. */
    public void open() {
        watched.begin();
        SwingUtilities.invokeLater(() -> {
            LookAndFeel.loadType();
            Appearance appearance = new Appearance(Themes.DAY, Zoom.NONE);
            LookAndFeel.wear(appearance);
            SecondWindow.alone(this::view, new SecondKeeper(settings), appearance, this::close);
        });
    }

    private @Nullable SecondView view(@Nullable String reader) {
        return watched.seen().map(seen -> view(seen, reader)).orElse(null);
    }

    private SecondView view(Seen seen, @Nullable String reader) {
        Instant wall = machine.wall().instant();
        ShowLookup words = seen.show().words();
        LiveMoment moment = new LiveMoment(
                seen.state(), seen.now(wall), seen.plan(), LocalDateTime.ofInstant(wall, words.zone()), Tracking.NONE);
        return SecondPresenter.of(moment, new LivePresenter(words).view(moment), words, reader);
    }

    @Override
    public void close() {
        watched.close();
        flights.close();
        io.shutdown();
    }
}
