package crowdline.app;

import crowdline.console.ConsoleFrame;
import crowdline.console.Host;
import crowdline.console.Place;
import crowdline.console.debrief.DebriefDesk;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.keys.Command;
import crowdline.console.live.Handles;
import crowdline.console.live.LiveView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.prepare.PreparePresenter;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import crowdline.console.walk.Notes;
import crowdline.console.walk.Passes;
import crowdline.console.walk.Tour;
import crowdline.console.walk.Walk;
import crowdline.live.JournalHealth;
import crowdline.live.LiveSnapshot;
import crowdline.live.Ticker;
import crowdline.show.Catalogue;
import crowdline.show.Show;
import crowdline.storage.FigureNotesFile;
import crowdline.storage.JournalMachine;
import crowdline.storage.JournalOpening;
import crowdline.storage.JournalShelf;
import crowdline.storage.JournalShow;
import crowdline.storage.Settings;
import crowdline.storage.SettingsFile;
import crowdline.storage.ShowFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * Answers the window. What takes time runs on the {@code io} thread; what the window reads is handed over by volatile
 * fields.
 */
final class ConsoleHost implements Host {
    private static final System.Logger LOG = System.getLogger(ConsoleHost.class.getName());
    /** A show left this long ago is begun afresh: longer than any show day's pause. */
    private static final double FORGET_AFTER_S = 12 * 3600.0;
    /** What was found on opening the journal is shown this long into a session, seconds. */
    private static final double NOTICES_S = 6;
    /** A session that goes on shows it until this snapshot, however old it is. */
    private static final int NOTICES_SNAPSHOT = 4;

    private static final double NANOS_PER_S = 1e9;

    private final Ticker ticker = new MonotonicTicker();
    private final Folders folders;
    private final SettingsFile settingsFile;
    private final Supplier<Catalogue> catalogue;
    private final ShowLoader loader;
    private final ExecutorService io;
    private final Clock clock;
    private volatile Settings settings;
    private volatile @Nullable RunningShow running;
    private volatile @Nullable Walk walk;
    private volatile @Nullable ShowDebrief debrief;
    private volatile @Nullable Path openFile;
    private volatile @Nullable ConsoleFrame frame;
    /** On the event thread only: what the keys take hold of. */
    private Handles handles = Handles.NONE;

    ConsoleHost(
            Folders folders,
            SettingsFile settingsFile,
            Settings settings,
            Supplier<Catalogue> catalogue,
            ShowLoader loader,
            ExecutorService io,
            Clock clock) {
        this.folders = folders;
        this.settingsFile = settingsFile;
        this.settings = settings;
        this.catalogue = catalogue;
        this.loader = loader;
        this.io = io;
        this.clock = clock;
    }

    /** The window has been made. */
    void shown(ConsoleFrame window, @Nullable String said) {
        frame = window;
        io.execute(() -> window.showGlossary(GlossaryView.of(catalogue.get())));
        if (said != null) {
            window.showBanners(List.of(new Mark(Form.DIAMOND, Tone.CAUTION, said)));
        }
    }

    @Override
    public void command(Command command) {
        RunningShow show = running;
        if (show != null) {
            show.command(command, handles);
        }
    }

    @Override
    public void resume() {
        RunningShow show = running;
        if (show != null) {
            show.resume();
        }
    }

    @Override
    public @Nullable LiveView live() {
        RunningShow show = running;
        if (show == null) {
            return null;
        }
        LiveView view = show.view();
        handles = view.handles();
        return view;
    }

    @Override
    public void open(Path file) {
        say(List.of(new Mark(Form.RING, Tone.CALM, "Opening " + file.getFileName())));
        io.execute(() -> read(file.toAbsolutePath()));
    }

    @Override
    public void openDemo() {
        open(folders.demoShow());
    }

    private void read(Path file) {
        try {
            ShowLoader.Result result = loader.load(file, LoadedShow.FIRST_FLIGHTS);
            LoadedShow loaded = result.loaded();
            ConsoleFrame window = frame;
            if (window == null) {
                return;
            }
            if (loaded == null) {
                window.showPrepare(PreparePresenter.unusable(String.valueOf(file.getFileName()), result.findings()));
                say(List.of(
                        new Mark(Form.STOP, Tone.ALARM, "This show cannot be used until what is listed is mended")));
                return;
            }
            start(file, loaded, window);
            window.showPrepare(loaded.prepareView(result.findings()));
            keep(settings.withRecent(file));
            // What is running must not wait for better bands.
            io.execute(() -> {
                // Another show may have been opened before its turn came.
                if (file.equals(openFile)) {
                    loaded.refine(LoadedShow.FLIGHTS);
                    window.showPrepare(loaded.prepareView(result.findings()));
                }
            });
        } catch (ShowFileException e) {
            say(List.of(new Mark(Form.STOP, Tone.ALARM, String.valueOf(e.getMessage()))));
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Reading " + file, e);
            say(List.of(new Mark(Form.STOP, Tone.ALARM, file + " cannot be read; check that it is there")));
        } catch (RuntimeException e) {
            // The root of the io thread: one sentence to the user, the rest to the log.
            LOG.log(System.Logger.Level.ERROR, "Opening " + file, e);
            say(List.of(new Mark(Form.STOP, Tone.ALARM, "The show could not be opened; the log has the reason")));
        }
    }

    private void start(Path file, LoadedShow loaded, ConsoleFrame window) throws IOException {
        RunningShow before = running;
        if (before != null) {
            running = null;
            walk = null;
            debrief = null;
            before.close();
        }
        JournalShelf shelf =
                new JournalShelf(folders.journals(), JournalMachine.here(new MonotonicTicker()), FORGET_AFTER_S);
        JournalOpening opening = shelf.open(JournalShow.of(file, Files.readAllBytes(file)));
        RunningShow now = new RunningShow(loaded, opening, () -> hour(loaded.show()));
        openFile = file;
        running = now;
        LiveDesk desk = now.desk();
        Passes passes = new PassesInMemory();
        walk = walk(file, loaded, passes);
        debrief = new ShowDebrief(loaded, desk, passes, io, clock, mark -> say(List.of(mark)));
        desk.onChange(snapshot -> {
            window.liveChanged();
            say(banners(snapshot, desk.nowS()));
        });
        say(banners(desk.snapshot(), desk.nowS()));
        if (opening.resumed()) {
            SwingUtilities.invokeLater(() -> window.go(Place.LIVE));
        }
    }

    private @Nullable Walk walk(Path file, LoadedShow loaded, Passes passes) {
        List<Tour> tours = loaded.tours();
        Notes notes = new ShowNotes(
                new FigureNotesFile(folders.notes(), file),
                io,
                why -> say(List.of(new Mark(Form.DIAMOND, Tone.CAUTION, why))));
        return tours.isEmpty() ? null : new Walk(tours, loaded.words(), loaded::plan, passes, notes, clock::instant);
    }

    @Override
    public @Nullable Walk walk() {
        return walk;
    }

    @Override
    public @Nullable DebriefDesk debrief() {
        return debrief;
    }

    @Override
    public double nowS() {
        return ticker.nanos() / NANOS_PER_S;
    }

    private LocalTime hour(Show show) {
        return LocalTime.now(clock.withZone(show.venue().timeZone()));
    }

    private void say(List<Mark> marks) {
        ConsoleFrame window = frame;
        if (window != null) {
            window.showBanners(marks);
        }
    }

    /** What the foot line says of a running show. */
    private static List<Mark> banners(LiveSnapshot snapshot, double nowS) {
        List<Mark> marks = new ArrayList<>();
        if (snapshot.journal() instanceof JournalHealth.NotWriting not) {
            marks.add(new Mark(Form.STOP, Tone.ALARM, not.reason()));
        }
        String refusal = snapshot.refusal();
        if (refusal != null) {
            marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, refusal));
        }
        if (nowS < NOTICES_S || snapshot.number() < NOTICES_SNAPSHOT) {
            snapshot.notices().forEach(n -> marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, n)));
        }
        return marks;
    }

    @Override
    public List<Path> recent() {
        return settings.recentFiles();
    }

    @Override
    public void keep(Appearance appearance) {
        keep(settings.withTheme(appearance.theme().id())
                .withZoom(appearance.zoom().percent() / 100.0));
    }

    private void keep(Settings next) {
        settings = next;
        io.execute(() -> {
            try {
                settingsFile.write(next);
            } catch (ShowFileException e) {
                LOG.log(System.Logger.Level.WARNING, "The settings were not saved", e);
            }
        });
    }

    @Override
    public void quit() {
        ConsoleFrame window = frame;
        if (window != null) {
            window.dispose();
        }
        io.execute(() -> {
            RunningShow show = running;
            if (show != null) {
                if (folders.demoShow().toAbsolutePath().equals(openFile)) {
                    // The demo begins afresh the next time; a real show goes on where it was left.
                    show.end();
                }
                show.close();
            }
            io.shutdown();
        });
    }
}
