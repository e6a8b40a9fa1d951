package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.place.Place;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.show.ShowFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** A file that another program has changed while it is edited, in the whole program. */
@Tag("window")
@Timeout(300)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class ChangedOutsideOnScreenTest {
    private static final Path DEMO = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant HOUR = Instant.parse("2027-06-12T12:00:00Z");
    private static final String CHANGED = "was changed by another program";
    private static final String ACTS = "Acts in running order";
    private static final String FIGURES = "Figures in the order flown";

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve(DEMO.getFileName());
    }

    private Show inFile() throws Exception {
        return Objects.requireNonNull(new ShowFile().read(file()).show());
    }

    private static Show longer(Show show, int act) {
        List<Act> acts = new ArrayList<>(show.acts());
        acts.set(
                act,
                acts.get(act).withSlot(acts.get(act).slotStart(), acts.get(act).slotMinutes() + 1));
        return show.withActs(acts, show.remarks());
    }

    /** Another program makes the second act longer. */
    private void lengthen() throws Exception {
        new ShowFile().write(file(), longer(inFile(), 1));
    }

    @Test
    void itIsAskedAboutAndEachAnswerIsDone() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, DEMO, HOUR)) {
            Show first = inFile();
            byte[] before = Files.readAllBytes(file());
            screen.await("it can be edited", () -> screen.acts() == first.acts().size());
            screen.give("F2");
            screen.await("the acts have the keys", () -> screen.focusIs(ACTS));
            screen.give("DOWN");
            screen.give("RIGHT");
            screen.await("the figures have the keys", () -> screen.focusIs(FIGURES));
            screen.give("DOWN");
            screen.give("DOWN");
            assertThat(screen.chosen(ACTS)).isEqualTo(1);
            assertThat(screen.chosen(FIGURES)).isEqualTo(2);

            // The differences are shown, and mine is kept and saved over theirs.
            lengthen();
            screen.turnTo();
            screen.await("it is asked about", () -> screen.says(CHANGED));
            screen.answer("See the differences");
            screen.await(
                    "the other length is told",
                    () -> screen.says(first.acts().get(1).title()));
            screen.answer("OK");
            screen.answer("Keep mine");
            screen.awaitAlone();
            screen.edit("Make the first act longer", show -> longer(show, 0));
            screen.give("ctrl S");
            screen.await("mine is in the file", () -> inFile().equals(longer(first, 0)));

            // What is in the file is taken, and everything stays in its place.
            lengthen();
            reload(screen);

            // As it was when the program began, so that there is a journal of it to go on with.
            Files.write(file(), before);
            reload(screen);
            assertThat(screen.edits(first)).isTrue();
        }
    }

    private void reload(ConsoleOnScreen screen) throws Exception {
        Show theirs = inFile();
        screen.turnTo();
        screen.await("it is asked about", () -> screen.says(CHANGED));
        screen.answer("Reload it");
        screen.awaitAlone();
        screen.await("theirs is edited", () -> screen.edits(theirs));
        screen.await("Live runs it", () -> screen.runs(theirs));
        screen.await(
                "the same figure of the same act is chosen",
                () -> screen.chosen(ACTS) == 1 && screen.chosen(FIGURES) == 2);
        assertThat(screen.isIn(Place.PREPARE)).isTrue();
    }
}
