package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.live.day.OrderView.Row;
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

/** A day that changes, by keys alone in a real window: two acts at 14:30 and 14:50, opened at 14:29. */
@Tag("window")
@Timeout(120)
class RunningOrderOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");
    private static final String SOLO = "Quillan Tarrowby and the Sedgeby Jackanapes";
    private static final String GLIDER = "Hettie Pellingdyke and the Larkmere Thistledown";

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    /** The rows of the running order that is open; none if it is not. */
    private static List<Row> order() throws Exception {
        FutureTask<List<Row>> rows = new FutureTask<>(() -> OpenWindows.windows()
                .flatMap(w -> OpenWindows.shown(w, JList.class))
                .filter(list ->
                        "Running order".equals(list.getAccessibleContext().getAccessibleName()))
                .flatMap(list -> IntStream.range(0, list.getModel().getSize()).mapToObj(list.getModel()::getElementAt))
                .map(Row.class::cast)
                .toList());
        SwingUtilities.invokeLater(rows);
        return rows.get();
    }

    private static List<String> said(List<Row> rows) {
        return rows.stream()
                .map(r -> String.join(" ", r.state().word(), r.slot(), r.moved(), r.title())
                        .replace("  ", " "))
                .toList();
    }

    @Test
    void theDayIsChangedWhileTheActFlies() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            assertThat(order()).as("closed").isEmpty();
            screen.press("R");
            assertThat(said(order())).containsExactly("Next 14:30 " + SOLO, "Waiting 14:50 " + GLIDER);

            screen.jump(61);
            screen.press("SPACE");
            assertThat(screen.strip().timeInAct()).as("Space steps as ever").startsWith("0:0");
            assertThat(said(order()).get(0)).isEqualTo("Flying 14:30 " + SOLO);

            screen.press("DOWN");
            screen.press("alt PAGE_DOWN");
            screen.press("alt RIGHT");
            screen.press("INSERT");
            screen.type("A wave for Kim");
            screen.press("ENTER");
            assertThat(order()).as("without its minutes").hasSize(2);
            screen.press("INSERT");
            screen.press("END");
            screen.type(", 4");
            screen.press("ENTER");
            assertThat(said(order()))
                    .containsExactly(
                            "Flying 14:30 " + SOLO,
                            "Waiting 15:01 11 min later " + GLIDER,
                            "Waiting 15:09 11 min later A wave for Kim");

            screen.press("DOWN");
            screen.press("alt UP");
            assertThat(said(order()).subList(1, 3))
                    .containsExactly(
                            "Waiting 15:01 3 min later A wave for Kim", "Waiting 15:09 19 min later " + GLIDER);
            screen.press("Z");
            assertThat(said(order()).get(1)).startsWith("Waiting 15:01 11 min later " + GLIDER);
            screen.press("alt UP");

            screen.jump(300);
            screen.press("E");
            screen.press("ESCAPE");
            assertThat(order()).as("closed").isEmpty();
            assertThat(screen.now().name()).isEqualTo("Next: A wave for Kim");
            assertThat(screen.now().look()).contains("put in on the day, slot 15:01, 3 min later, in ");
            screen.press("N");
            screen.press("SPACE");
            assertThat(screen.now().name()).isEqualTo("A wave for Kim");
            assertThat(screen.strip().timeInAct()).isEqualTo("0:00, slot 4:00");
            screen.jump(400);
            screen.press("E");

            screen.press("R");
            screen.press("DOWN");
            screen.press("DELETE");
            assertThat(said(order()))
                    .containsExactly(
                            "Flown 14:30 " + SOLO,
                            "Flown 15:01 3 min later A wave for Kim",
                            "Cancelled 15:09 19 min later " + GLIDER);
            screen.press("UP");
            screen.press("UP");
            screen.press("ctrl ENTER");
            assertThat(said(order()).get(0)).as("flown again").isEqualTo("Next 14:30 " + SOLO);
            assertThat(screen.running().desk().snapshot().state().course().flownActs())
                    .hasSize(2);
        }
    }
}
