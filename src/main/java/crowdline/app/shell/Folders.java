package crowdline.app.shell;

import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the program keeps its own files, and where it was installed.
 *
 * @param settings folder of the settings
 * @param journals folder of the journals
 * @param demoShow the demo show
 */
public record Folders(Path settings, Path journals, Path demoShow) {
    private static final String DEMO = "demo-shows/fenmarsh-air-day.json";

    /** Where the notes on figures are kept, beside the journals. */
    public Path notes() {
        return journals.resolveSibling("notes");
    }

    /** Where edits are kept that are in no file of the user's yet, beside the journals. */
    public Path unsaved() {
        return journals.resolveSibling("unsaved");
    }

    /** The folders for this user: XDG base directories, or the system's own places where there are none. */
    public static Folders here() {
        return of(System.getenv(), Path.of(System.getProperty("user.home", ".")), home());
    }

    /** Where passes go if the folder of their show may not be written to. */
    public Path passes() {
        return journals.resolveSibling("passes");
    }

    /** Where the native part of the serial library is unpacked. */
    public Path serial() {
        return journals.resolveSibling("serial");
    }

    /** What speakers remember of the figures they were drilled in. */
    public Path drill() {
        return settings.resolve("drill.json");
    }

    /** How speakers did on practice flights. */
    public Path practised() {
        return settings.resolve("practice.json");
    }

    /** Where the paces of speakers are kept. */
    public Path paces() {
        return settings.resolve("paces");
    }

    private static Path home() {
        return Path.of(System.getProperty("crowdline.home", "."));
    }

    public static Folders of(Map<String, String> environment, Path userHome, Path home) {
        String windows = environment.getOrDefault("APPDATA", "");
        Path config = base(
                environment.get("XDG_CONFIG_HOME"), windows.isEmpty() ? userHome.resolve(".config") : Path.of(windows));
        Path state = base(
                environment.get("XDG_STATE_HOME"),
                windows.isEmpty() ? userHome.resolve(".local").resolve("state") : Path.of(windows));
        return new Folders(
                config.resolve("crowdline"), state.resolve("crowdline").resolve("journals"), home.resolve(DEMO));
    }

    /** An empty base directory counts as none, and one that is not absolute is ignored: XDG Base Directory Specification. */
    private static Path base(@Nullable String given, Path otherwise) {
        return given != null && !given.isEmpty() && Path.of(given).isAbsolute() ? Path.of(given) : otherwise;
    }
}
