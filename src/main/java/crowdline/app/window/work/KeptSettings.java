package crowdline.app.window.work;

import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.Settings;
import crowdline.storage.settings.SettingsFile;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;

/**
 * The settings in use. Whoever changes them says how, not what they are then, so that of two changes made at the same time
 * none is lost. They may be read and changed from any thread; the {@code io} thread writes them.
 *
 * <p>Each console goes by the settings it began with and writes them whole: of two consoles the one that changed something
 * last leaves its own.
 */
public final class KeptSettings {
    private static final System.Logger LOG = System.getLogger(KeptSettings.class.getName());

    private final SettingsFile file;
    private final Executor io;
    private final AtomicReference<Settings> settings;

    public KeptSettings(SettingsFile file, Settings first, Executor io) {
        this.file = file;
        this.io = io;
        settings = new AtomicReference<>(first);
    }

    public Settings get() {
        return Objects.requireNonNull(settings.get());
    }

    /**
     * Changes the settings.
     *
     * @param change made to the settings as they are then, again if another came in between; must do nothing else
     */
    public void change(UnaryOperator<Settings> change) {
        settings.updateAndGet(change);
        io.execute(this::write);
    }

    /** On the io thread: as they are by now, so that the last to be written holds every change. */
    private void write() {
        try {
            file.write(get());
        } catch (ShowFileException e) {
            LOG.log(System.Logger.Level.WARNING, "The settings were not saved", e);
        }
    }
}
