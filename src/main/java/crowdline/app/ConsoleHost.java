package crowdline.app;

import crowdline.console.ConsoleFrame;
import crowdline.console.Host;
import crowdline.console.edit.WordsHost;
import crowdline.console.keys.Command;
import crowdline.console.live.Handles;
import crowdline.console.live.LiveView;
import crowdline.console.passes.PassesHost;
import crowdline.console.theme.Appearance;
import crowdline.show.Catalogue;
import crowdline.storage.Settings;
import crowdline.storage.SettingsFile;
import crowdline.storage.ShowFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Answers the window. What takes time runs on the {@code io} thread. */
final class ConsoleHost implements Host {
    private static final System.Logger LOG = System.getLogger(ConsoleHost.class.getName());

    private final Path demoShow;
    private final SettingsFile settingsFile;
    private final ShowOpening opening;
    private final WindowAhead window;
    private final ExecutorService io;
    private final WordsDesk words;
    private final PassesDesk passes;
    private volatile Settings settings;
    /** On the event thread only: what the keys take hold of. */
    private Handles handles = Handles.NONE;

    ConsoleHost(
            Path demoShow,
            SettingsFile settingsFile,
            Settings settings,
            ShowOpening opening,
            WindowAhead window,
            Supplier<Catalogue> catalogue,
            PassesDesk passes,
            ExecutorService io) {
        this.demoShow = demoShow.toAbsolutePath();
        this.settingsFile = settingsFile;
        this.settings = settings;
        this.opening = opening;
        this.window = window;
        this.passes = passes;
        this.io = io;
        words = new WordsDesk(catalogue, opening::running, opening::openFile, window::send, io);
    }

    @Override
    public void command(Command command) {
        RunningShow show = opening.running();
        if (show != null) {
            show.command(command, handles);
        }
    }

    @Override
    public void resume() {
        RunningShow show = opening.running();
        if (show != null) {
            show.resume();
        }
    }

    @Override
    public @Nullable LiveView live() {
        RunningShow show = opening.running();
        if (show == null) {
            return null;
        }
        LiveView view = show.view();
        handles = view.handles();
        return view;
    }

    @Override
    public WordsHost words() {
        return words;
    }

    @Override
    public PassesHost passes() {
        return passes;
    }

    @Override
    public void open(Path file) {
        opening.open(file.toAbsolutePath(), opened -> keep(settings.withRecent(opened)));
    }

    @Override
    public void openDemo() {
        open(demoShow);
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
        window.send(ConsoleFrame::dispose);
        io.execute(() -> {
            RunningShow show = opening.running();
            if (show != null) {
                if (demoShow.equals(opening.openFile())) {
                    // The demo begins afresh the next time; a real show goes on where it was left.
                    show.end();
                }
                show.close();
            }
            io.shutdown();
        });
    }
}
