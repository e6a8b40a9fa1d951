package crowdline.app.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against the XDG Base Directory Specification, version 0.8: its defaults, and what it says of empty and relative paths. */
class FoldersTest {
    @TempDir
    private Path root;

    private Folders of(Map<String, String> environment) {
        return Folders.of(environment, root.resolve("user"), root.resolve("installed"));
    }

    private Folders plain() {
        return of(Map.of());
    }

    @Test
    void withoutVariablesTheUsersHomeHoldsThem() {
        assertThat(plain())
                .isEqualTo(new Folders(
                        root.resolve("user/.config/crowdline"),
                        root.resolve("user/.local/state/crowdline/journals"),
                        root.resolve("installed/demo-shows/fenmarsh-air-day.json")));
    }

    @Test
    void variablesMoveThem() {
        Folders moved = of(Map.of(
                "XDG_CONFIG_HOME", root.resolve("c").toString(),
                "XDG_STATE_HOME", root.resolve("s").toString()));
        assertThat(moved.settings()).isEqualTo(root.resolve("c/crowdline"));
        assertThat(moved.journals()).isEqualTo(root.resolve("s/crowdline/journals"));
    }

    @Test
    void oneVariableMovesOnlyItsOwn() {
        Folders moved = of(Map.of("XDG_STATE_HOME", root.resolve("s").toString()));
        assertThat(moved.settings()).isEqualTo(plain().settings());
        assertThat(moved.journals()).isEqualTo(root.resolve("s/crowdline/journals"));
    }

    @Test
    void emptyVariableCountsAsNone() {
        assertThat(of(Map.of("XDG_CONFIG_HOME", "", "XDG_STATE_HOME", ""))).isEqualTo(plain());
    }

    @Test
    void relativeVariableIsIgnored() {
        assertThat(of(Map.of("XDG_CONFIG_HOME", "here", "XDG_STATE_HOME", "./there")))
                .isEqualTo(plain());
    }

    @Test
    void applicationDataFolderHoldsBothWhereThereIsOne() {
        Folders windows = of(Map.of("APPDATA", root.resolve("roaming").toString()));
        assertThat(windows.settings()).isEqualTo(root.resolve("roaming/crowdline"));
        assertThat(windows.journals()).isEqualTo(root.resolve("roaming/crowdline/journals"));
    }
}
