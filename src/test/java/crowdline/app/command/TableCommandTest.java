package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableCommandTest {
    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();
    private String show = "";

    @BeforeEach
    void copy() throws IOException {
        Path file = folder.resolve("show.json");
        Files.copy(Path.of("src/test/resources/crowdline/shows/wrackenholt-evening.json"), file);
        show = file.toString();
    }

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (s, t) -> ExitCode.UNUSABLE);
    }

    private String table(String text) throws IOException {
        Path file = folder.resolve("table.csv");
        Files.writeString(file, text);
        return file.toString();
    }

    @Test
    void actsGoOutAndComeBack() throws IOException {
        Path csv = folder.resolve("acts.csv");
        assertThat(run("table", show, "acts", "--out", csv.toString())).isEqualTo(ExitCode.FINE);
        assertThat(Files.readString(csv)).startsWith("\uFEFFstart,minutes,act,performer,aircraft\r\n");
        assertThat(run("table", show, "acts", "--from", csv.toString())).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("The show has it at this time already")
                .doesNotContain("Written");
    }

    @Test
    void rowsAreWrittenWhereAskedAndTheFileBeforeIsKept() throws IOException {
        String before = Files.readString(Path.of(show));
        String csv = table("start,act,aircraft\n22:00,Late jump,parachutists\n");
        assertThat(run("table", show, "acts", "--from", csv)).isEqualTo(ExitCode.FINE);
        assertThat(Files.readString(Path.of(show))).isEqualTo(before);
        assertThat(run("table", show, "acts", "--from", csv, "--into", show)).isEqualTo(ExitCode.FINE);
        assertThat(Files.readString(Path.of(show))).contains("Late jump");
        assertThat(run("check", show)).isNotEqualTo(ExitCode.UNUSABLE);
        assertThat(run("table", show, "remarks", "--from", table("text\nHello there.\n,\n"), "--into", csv))
                .isEqualTo(ExitCode.UNUSABLE);
    }

    @Test
    void nothingToTakeEndsWithOneAndNoTableWithTwo() throws IOException {
        assertThat(run("table", show, "acts", "--from", table("act,start\nlunch,12:00\n")))
                .isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.err()).contains("None of the rows can be taken");
        assertThat(run(
                        "table",
                        show,
                        "acts",
                        "--from",
                        folder.resolve("none.csv").toString()))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("table", show, "acts", "--into", show)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("name the table with --from");
    }
}
