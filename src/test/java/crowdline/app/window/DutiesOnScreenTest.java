package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.live.day.DutiesView.Row;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.stream.IntStream;
import javax.swing.JList;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The duties of a day by keys alone in a real window: four that are for once, opened a minute before the first act. */
@Tag("window")
@Timeout(120)
class DutiesOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    /** State and words of the duties that are shown; none if their list is not open. */
    private static List<String> duties() throws Exception {
        FutureTask<List<String>> rows = new FutureTask<>(() -> OpenWindows.windows()
                .flatMap(w -> OpenWindows.shown(w, JList.class))
                .filter(list ->
                        "Duties of the day".equals(list.getAccessibleContext().getAccessibleName()))
                .flatMap(list -> IntStream.range(0, list.getModel().getSize()).mapToObj(list.getModel()::getElementAt))
                .map(Row.class::cast)
                .map(row -> row.state().word() + " " + row.id())
                .toList());
        SwingUtilities.invokeLater(rows);
        return rows.get();
    }

    @Test
    void aDutyIsTickedInTheListOverWhatIsFlown() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            assertThat(duties()).as("closed").isEmpty();
            screen.press("U");
            assertThat(duties()).hasSize(4).allMatch(row -> row.startsWith("Due "));
            List<String> before = duties();

            screen.press("DOWN");
            screen.press("S");
            String second = before.get(1).substring("Due ".length());
            assertThat(duties()).contains("Said " + second).hasSize(4);
            assertThat(duties().get(3)).as("what is said goes last").isEqualTo("Said " + second);

            screen.press("Z");
            assertThat(duties()).as("taken back").isEqualTo(before);
            screen.press("UP");
            screen.press("UP");
            screen.press("UP");
            screen.press("S");
            String first = before.get(0).substring("Due ".length());
            assertThat(duties()).contains("Said " + first);

            screen.press("R");
            assertThat(duties()).as("the running order lies there instead").isEmpty();
            screen.press("U");
            screen.press("ESCAPE");
            assertThat(duties()).as("closed").isEmpty();
        }
    }
}
