package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.place.Place;
import crowdline.draft.Drafted;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.show.ShowFile;
import crowdline.storage.unsaved.UnsavedShelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** Where a file cannot be saved, or is not there yet, in the whole program: it is said, and nothing is lost. */
@Tag("window")
@Timeout(300)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class SavingTroubleOnScreenTest {
    private static final Path DEMO = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant HOUR = Instant.parse("2027-06-12T12:00:00Z");

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve(DEMO.getFileName());
    }

    private static Show in(Path file) throws Exception {
        return Objects.requireNonNull(new ShowFile().read(file).show());
    }

    private static Show longer(Show show) {
        List<Act> acts = new ArrayList<>(show.acts());
        acts.set(0, acts.get(0).withSlot(acts.get(0).slotStart(), acts.get(0).slotMinutes() + 1));
        return show.withActs(acts, show.remarks());
    }

    private static void saveAs(ConsoleOnScreen screen, Path file) throws Exception {
        screen.await("a file is asked for", () -> screen.focusIs("File Name"));
        screen.give("ctrl A");
        screen.type(file.toString());
        screen.give("ENTER");
    }

    @Test
    void whatIsEditedInAnotherWindowIsEditedAsACopyHere() throws Exception {
        UnsavedShelf elsewhere = new UnsavedShelf(folder.resolve("unsaved"));
        try (var held = elsewhere.take(UnsavedShelf.nameOf(file())).orElseThrow();
                ConsoleOnScreen screen = new ConsoleOnScreen(folder, DEMO, HOUR)) {
            assertThat(held.seen()).isTrue();
            byte[] before = Files.readAllBytes(file());
            screen.give("F2");
            screen.await("it is said", () -> screen.spoken("Messages").contains("edited in another window"));
            screen.edit("Make the first act longer", SavingTroubleOnScreenTest::longer);
            Path own = folder.resolve("own.json");
            screen.give("ctrl S");
            saveAs(screen, own);
            screen.awaitAlone();
            screen.await("it is saved", () -> Files.exists(own) && screen.edits(in(own)));
            assertThat(file()).hasBinaryContent(before);
        }
    }

    @Test
    void whatCannotBeSavedIsSaidAndStaysUntilItIsSavedElsewhere() throws Exception {
        try (Full full = new Full(folder.resolve("full"));
                ConsoleOnScreen screen = new ConsoleOnScreen(folder, DEMO, HOUR)) {
            byte[] before = Files.readAllBytes(file());
            assertThat(file().toFile().setReadOnly()).isTrue();
            screen.give("F2");
            screen.edit("Make the first act longer", SavingTroubleOnScreenTest::longer);
            Show edited = screen.edited();
            screen.give("ctrl S");
            screen.await("the file is named", () -> screen.says("it is marked as read-only"));
            assertThat(screen.says("Nothing is lost: your changes are still here."))
                    .isTrue();
            screen.answer("Save as");
            saveAs(screen, full.folder().resolve("day.json"));
            screen.await("the disk is named", () -> screen.says("day.json could not be saved: " + full.why()));
            screen.answer("Not now");
            screen.awaitAlone();

            assertThat(screen.edits(edited)).isTrue();
            assertThat(file()).hasBinaryContent(before);
            try (Stream<Path> left = Files.list(full.folder())) {
                assertThat(left.filter(f -> f.getFileName().toString().startsWith("day.json")))
                        .isEmpty();
            }
            Path other = folder.resolve("other.json");
            screen.give("ctrl shift S");
            saveAs(screen, other);
            screen.awaitAlone();
            screen.await("it is saved", () -> Files.exists(other) && in(other).equals(edited));
            screen.await(
                    "that it could not be is said no longer",
                    () -> screen.spoken("Messages").startsWith("Saved as "));
        }
    }

    @Test
    void afterTheFirstSaveTheKeysAreWhereTheyWere() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, HOUR)) {
            screen.give("ctrl N");
            ActsByKeys.list(screen, "loop, stall turn, slow roll", "light");
            ActsByKeys.made(screen, 1);
            screen.await("it is shown", () -> screen.chosen("Figures in the order flown") == 0);
            screen.give("RIGHT");
            screen.await("the figures have the keys", () -> screen.focusIs("Figures in the order flown"));
            screen.give("DOWN");
            int row = screen.chosen("Figures in the order flown");
            Path file = folder.resolve("first.json");
            screen.give("ctrl S");
            saveAs(screen, file);
            Show saved = screen.edited();
            screen.await("Live runs it", () -> Files.exists(file) && screen.runs(saved));
            screen.await("the figures have the keys again", () -> screen.focusIs("Figures in the order flown"));
            assertThat(screen.isIn(Place.PREPARE)).isTrue();
            assertThat(screen.chosen("Figures in the order flown")).isEqualTo(row);
        }
    }

    /** What a kill leaves is what lies on the disk at that moment. */
    @Test
    void aShowNeverSavedIsFoundAgainWhereTheProgramWasKilled() throws Exception {
        Path killed = Files.createDirectory(folder.resolve("killed"));
        Show made;
        try (ConsoleOnScreen screen = new ConsoleOnScreen(killed, HOUR)) {
            screen.give("ctrl N");
            screen.await("an empty show", () -> screen.acts() == 0 && screen.isIn(Place.PREPARE));
            screen.edit(
                    "Add an act",
                    show -> Drafted.arranged(show, "light aerobatic biplane", "Ada Quillan", "loop, stall turn")
                            .show());
            made = screen.edited();
            screen.await(
                    "it is kept",
                    () -> files(killed).stream().anyMatch(f -> f.toString().endsWith(".unsaved")));
            Path after = Files.createDirectory(folder.resolve("after"));
            copy(killed, after);
        }
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder.resolve("after"), HOUR)) {
            screen.await("it is offered", () -> screen.says("which was never saved"));
            screen.answer("Bring them back");
            screen.awaitAlone();
            // As a show file writes it, which has no more digits than anybody flies by.
            Path written = folder.resolve("made.json");
            new ShowFile().write(written, made);
            Show kept = in(written);
            screen.await("it is there", () -> screen.edits(kept));
        }
    }

    private static List<Path> files(Path in) throws IOException {
        try (Stream<Path> all = Files.walk(in)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            Path copy = to.resolve(from.relativize(file));
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
        }
    }

    /** A disk with room for nothing; where none may be made, a folder in which even the superuser may write nothing. */
    private static final class Full implements AutoCloseable {
        private final Path folder;
        private final boolean isDisk;

        Full(Path folder) throws IOException {
            Files.createDirectories(folder);
            isDisk = run("mount", "-t", "tmpfs", "-o", "size=4k", "none", folder.toString());
            this.folder = isDisk ? folder : Path.of("/proc");
        }

        Path folder() {
            return folder;
        }

        String why() {
            return isDisk ? "No space left on device" : "";
        }

        private static boolean run(String... command) {
            try {
                return new ProcessBuilder(command)
                                .redirectErrorStream(true)
                                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                                .start()
                                .onExit()
                                .join()
                                .exitValue()
                        == 0;
            } catch (IOException e) {
                return false;
            }
        }

        @Override
        public void close() {
            if (isDisk) {
                run("umount", "-l", folder.toString());
            }
        }
    }
}
