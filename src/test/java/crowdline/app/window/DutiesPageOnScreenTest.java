package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.place.Place;
import crowdline.live.now.Duties;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.FutureTask;
import java.util.stream.IntStream;
import javax.swing.JList;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** What must be said on the day and what gaps are filled with, put in by keys alone in a real window, saved and read again. */
@Tag("window")
@Timeout(120)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class DutiesPageOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:00:00Z");

    @TempDir
    Path folder;

    private static List<Remark> duties(Show show) {
        return Duties.in(show).toList();
    }

    @Test
    void aDutyAndAPieceArePutInTakenBackSavedAndKnownInLive() throws Exception {
        Path file = folder.resolve(SHOW.getFileName());
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            screen.press("F2");
            screen.await("it can be edited", () -> screen.acts() == 2);
            int before = duties(screen.edited()).size();
            screen.press("ctrl 6");
            screen.await("the duties have the keys", () -> screen.focusIs("Duties and pieces"));

            screen.give("INSERT");
            screen.await("its words are asked for", () -> screen.focusIs("What must be said"));
            screen.type("Thanks to the dairy.");
            tab(screen, "The same in short");
            screen.await(
                    "its words are taken",
                    () -> duties(screen.edited()).stream()
                            .map(Remark::text)
                            .toList()
                            .contains("Thanks to the dairy."));
            tab(screen, "How often");
            over(screen, "3");
            tab(screen, "Minutes apart");
            over(screen, "20");
            tab(screen, "The last by");
            over(screen, "16:30");
            tab(screen, "Where");
            screen.await(
                    "it is asked for",
                    () -> duties(screen.edited()).stream()
                            .anyMatch(r -> r.text().equals("Thanks to the dairy.")
                                    && r.dutyTimes()
                                            .equals(new DutyTimes(3, 20.0, LocalTime.of(16, 30), null, null, false))));

            screen.give("ctrl Z");
            screen.await(
                    "the hour is taken back",
                    () -> duties(screen.edited()).stream()
                            .anyMatch(r -> r.text().equals("Thanks to the dairy.")
                                    && r.dutyTimes().times() == 3
                                    && r.dutyTimes().by() == null));

            screen.give("alt G");
            screen.await(
                    "a piece for a gap", () -> screen.edited().gaps().pieces().size() == 1);

            screen.give("ctrl S");
            screen.await(
                    "it is saved",
                    () -> screen.edited().equals(new ShowFile().read(file).show()));
            assertThat(duties(screen.edited())).hasSize(before + 1);
            screen.give("ctrl L");
            screen.await("Live has it", () -> screen.runs(screen.edited()));
            screen.give("F5");
            screen.await("Live is shown", () -> screen.isIn(Place.LIVE));
            screen.press("U");
            assertThat(listed()).hasSize(before + 1).anyMatch(row -> row.contains("Thanks to the dairy."));
        }
        Show saved = Objects.requireNonNull(new ShowFile().read(file).show());
        assertThat(duties(saved)).extracting(Remark::text).contains("Thanks to the dairy.");
        assertThat(saved.gaps().pieces()).extracting(Piece::id).hasSize(1);
    }

    /** What the list of duties in Live says. */
    private static List<String> listed() throws Exception {
        FutureTask<List<String>> rows = new FutureTask<>(() -> OpenWindows.windows()
                .flatMap(w -> OpenWindows.shown(w, JList.class))
                .filter(list ->
                        "Duties of the day".equals(list.getAccessibleContext().getAccessibleName()))
                .flatMap(list -> IntStream.range(0, list.getModel().getSize()).mapToObj(list.getModel()::getElementAt))
                .map(String::valueOf)
                .toList());
        SwingUtilities.invokeLater(rows);
        return rows.get();
    }

    private static void tab(ConsoleOnScreen screen, String to) throws Exception {
        screen.give("TAB");
        screen.await(to + " has the keys", () -> screen.focusIs(to));
    }

    private static void over(ConsoleOnScreen screen, String words) throws Exception {
        screen.give("ctrl A");
        screen.type(words);
        screen.await(words + " stands there", () -> screen.stands(words));
    }
}
