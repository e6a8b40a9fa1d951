package crowdline.storage.file;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.FigureNote;
import crowdline.speech.pace.Pace;
import crowdline.storage.passes.PassesFile;
import crowdline.storage.passes.PassesFileTest;
import crowdline.storage.settings.FigureNotesFile;
import crowdline.storage.settings.PaceShelf;
import crowdline.storage.settings.Settings;
import crowdline.storage.settings.SettingsFile;
import crowdline.timing.Pass;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Who may read what the program keeps for itself. */
@DisabledOnOs(OS.WINDOWS)
class OwnerOnlyTest {
    @TempDir
    Path folder;

    private static String of(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    private static void open(Path path) throws IOException {
        Files.setPosixFilePermissions(
                path, PosixFilePermissions.fromString(Files.isDirectory(path) ? "rwxr-xr-x" : "rw-r--r--"));
    }

    private static void areTheUsersAlone(Path top) throws IOException {
        try (var all = Files.walk(top)) {
            assertThat(all)
                    .isNotEmpty()
                    .allSatisfy(path -> assertThat(of(path))
                            .as("%s", path)
                            .isEqualTo(Files.isDirectory(path) ? "rwx------" : "rw-------"));
        }
    }

    private static void everybodyMayRead(Path top) throws IOException {
        try (var all = Files.walk(top)) {
            for (Path path : all.toList()) {
                open(path);
            }
        }
    }

    @Test
    void settingsAndPacesAreTheUsersAlone() throws Exception {
        Path settings = folder.resolve("config/crowdline");
        new SettingsFile(settings).write(Settings.DEFAULT);
        new SettingsFile(settings).write(Settings.DEFAULT.withSpeaker("somebody"));
        new PaceShelf(settings.resolve("paces")).write(Pace.DEFAULT);
        areTheUsersAlone(folder.resolve("config"));

        open(settings.resolve("settings.json"));
        open(settings.resolve("settings.json.previous"));
        open(settings);
        new SettingsFile(settings).read();
        assertThat(of(settings)).isEqualTo("rwx------");
        assertThat(of(settings.resolve("settings.json"))).isEqualTo("rw-------");
        new SettingsFile(settings).write(Settings.DEFAULT);
        areTheUsersAlone(settings);
    }

    @Test
    void notesAreTheUsersAlone() throws Exception {
        Path notes = folder.resolve("state/notes");
        FigureNotesFile file = new FigureNotesFile(notes, folder.resolve("day.json"));
        file.write(List.of(new FigureNote("act", "loop", "wide")));
        areTheUsersAlone(folder.resolve("state"));

        everybodyMayRead(notes);
        assertThat(file.read()).hasSize(1);
        areTheUsersAlone(notes);
    }

    @Test
    void passesAreTheUsersAloneExceptBesideTheirShow() throws Exception {
        Pass pass = PassesFileTest.pass("a");
        Path shared = Files.createDirectories(folder.resolve("show"));
        open(shared);
        Path show = shared.resolve("day.json");
        PassesFile beside = new PassesFile(show, folder.resolve("state/passes"));
        assertThat(beside.keep(pass).notice()).isNull();
        Files.setPosixFilePermissions(beside.file(), PosixFilePermissions.fromString("rw-rw-r--"));
        beside.note("a", "calm", Instant.EPOCH);
        assertThat(of(beside.file())).isEqualTo("rw-rw-r--");

        PassesFile elsewhere = new PassesFile(folder.resolve("gone/day.json"), folder.resolve("state/passes"));
        assertThat(elsewhere.keep(pass).notice()).isNotNull();
        areTheUsersAlone(folder.resolve("state"));
        everybodyMayRead(folder.resolve("state/passes"));
        assertThat(elsewhere.read().passes()).hasSize(1);
        areTheUsersAlone(folder.resolve("state/passes"));
    }

    @Test
    void whatIsKeptOfASharedFileHasItsPermissions() throws Exception {
        Path show = folder.resolve("day.json");
        Files.writeString(show, "{}");
        Files.setPosixFilePermissions(show, PosixFilePermissions.fromString("rw-rw----"));

        new AtomicFile().write(show, "{ }".getBytes(StandardCharsets.UTF_8));

        assertThat(of(show)).isEqualTo("rw-rw----");
        assertThat(of(folder.resolve("day.json.previous"))).isEqualTo("rw-rw----");
    }
}
