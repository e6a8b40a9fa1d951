package crowdline.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Terminal terminal = new Terminal(
            new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
    private final List<String> opened = new ArrayList<>();
    private final Opening opening = (show, t) -> {
        opened.add(String.valueOf(show));
        return Opening.STAYS_OPEN;
    };

    @Test
    void withoutADisplayItSaysWhyAndPrintsTheSheetWithWhatToSay() {
        assumeThat(ConsoleOpening.whyNoWindow()).isNotNull();

        assertThat(Main.run(new String[] {"demo"}, terminal, opening)).isEqualTo(ExitCode.FINE);

        List<String> lines = out.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(lines.get(0)).startsWith("No window: ").contains("display", "running sheet");
        assertThat(lines.get(1)).contains("xvfb-run");
        assertThat(lines)
                .anyMatch(line -> line.contains("Variant \"full\", predicted 1"))
                .anyMatch(line -> line.matches(" *\\d+:\\d\\d +stall turn .*"))
                .anyMatch(line -> line.matches(" *-?\\d+:\\d\\d +call, \\d+ s.*: .+"))
                .anyMatch(line -> line.matches(" *-?\\d+:\\d\\d +explanation, \\d+ s.*: .+"))
                .contains(crowdline.sheet.RunningSheet.CAUTION);
        assertThat(opened).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void withADisplayItOpensTheWindowOnTheDemoShow() throws Exception {
        assumeThat(ConsoleOpening.whyNoWindow()).isNull();
        Path show = Path.of("demo-shows/fenmarsh-air-day.json");

        assertThat(new DemoCommand(terminal, opening, new Folders(folder, folder, show)).call())
                .isEqualTo(Opening.STAYS_OPEN);
        assertThat(opened).containsExactly(show.toString());
    }

    @Test
    void demoShowThatIsNotThereIsToldPlainly() throws Exception {
        Path gone = folder.resolve("gone.json");

        assertThat(new DemoCommand(terminal, opening, new Folders(folder, folder, gone)).call())
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("the demo show " + gone + " is not there; run ");
        assertThat(opened).isEmpty();
    }
}
