package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.Screen;
import crowdline.app.shell.WindowOpener;
import crowdline.flight.Workers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();
    private final List<String> opened = new ArrayList<>();
    private final WindowOpener opening = (show, t) -> {
        opened.add(String.valueOf(show));
        return WindowOpener.STAYS_OPEN;
    };

    @Test
    void withoutADisplayItSaysWhyAndPrintsTheSheetWithWhatToSay() {
        assumeThat(Screen.whyNone()).isNotNull();

        assertThat(Main.run(new String[] {"demo"}, caught.terminal(), opening)).isEqualTo(ExitCode.FINE);

        List<String> lines = caught.out().lines().toList();
        assertThat(lines.get(0)).startsWith("No window: ").contains("display", "running sheet");
        assertThat(lines.get(1)).contains("xvfb-run");
        assertThat(lines)
                .anyMatch(line -> line.matches(".*Variant \"full\", predicted \\d+:\\d\\d\\..*"))
                .anyMatch(line -> line.matches(" *\\d+:\\d\\d +stall turn .*"))
                .anyMatch(line -> line.matches(" *-?\\d+:\\d\\d +call, \\d+ s.*: .+"))
                .anyMatch(line -> line.matches(" *-?\\d+:\\d\\d +explanation, \\d+ s.*: .+"));
        assertThat(String.join(" ", lines)).contains(crowdline.sheet.RunningSheet.CAUTION);
        assertThat(opened).isEmpty();
        assertThat(caught.err()).isEmpty();
    }

    @Test
    void withADisplayItOpensTheWindowOnTheDemoShow() throws Exception {
        assumeThat(Screen.whyNone()).isNull();
        Path show = Path.of("demo-shows/fenmarsh-air-day.json");

        assertThat(new DemoCommand(caught.terminal(), opening, new Folders(folder, folder, show), Workers.ALONE).call())
                .isEqualTo(WindowOpener.STAYS_OPEN);
        assertThat(opened).containsExactly(show.toString());
    }

    @Test
    void demoShowThatIsNotThereIsToldPlainly() throws Exception {
        Path gone = folder.resolve("gone.json");

        assertThat(new DemoCommand(caught.terminal(), opening, new Folders(folder, folder, gone), Workers.ALONE).call())
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("the demo show " + gone + " is missing; run ");
        assertThat(opened).isEmpty();
    }
}
