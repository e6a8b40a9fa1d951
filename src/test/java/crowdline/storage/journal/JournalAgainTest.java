package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.ExpectsWarning;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.JournalHealth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Journals that somebody takes away, changes or forbids to be written while a show runs. */
class JournalAgainTest {
    @TempDir
    Path top;

    private JournalWorld world;
    private Path folder;
    private JournalOpening running;

    @BeforeEach
    void actInTheAir() {
        folder = top.resolve("state/journals");
        world = new JournalWorld(folder);
        running = world.open();
        JournalWorld.play(
                running,
                List.of(
                        new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first")),
                        new FlightEvent.ActChosen(0, "first", "full", List.of("loop", "roll", "spin"), null),
                        new FlightEvent.ActStarted(0)));
    }

    private Path path() {
        return Objects.requireNonNull(running.journal().path());
    }

    private JournalHealth note(String text) {
        return running.journal().append(new LiveEvent.NoteMade(1, text));
    }

    private void isResumedWith(String... notes) {
        JournalOpening again = world.open();
        assertThat(again.resumed()).isTrue();
        assertThat(again.state().figureId()).isEqualTo("loop");
        assertThat(again.state().notes()).extracting("text").containsExactly((Object[]) notes);
        again.journal().close();
    }

    private static void delete(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private void isToldToBeWrittenAgain(JournalHealth health) {
        assertThat(health)
                .isEqualTo(new JournalHealth.WritingAgain(
                        "The journal was deleted or changed from outside, so it has been written out again, as "
                                + path().getFileName() + "."));
    }

    @Test
    void deletedFolderIsMadeAgainWithTheWholeHistory() throws Exception {
        note("before");
        delete(top.resolve("state"));

        isToldToBeWrittenAgain(running.journal().retry());
        assertThat(running.journal().retry()).isInstanceOf(JournalHealth.WritingAgain.class);
        world.pass(30);
        assertThat(running.journal().retry()).isEqualTo(new JournalHealth.Writing());
        note("after");
        running.journal().close();
        isResumedWith("before", "after");
    }

    @Test
    void deletedFolderIsNoticedAtTheNextEvent() throws Exception {
        delete(folder);
        isToldToBeWrittenAgain(note("after"));
        JournalOpening second = world.open();
        assertThat(second.notices())
                .containsExactly("This show is running in another window; this one keeps a journal of its own.");
        second.journal().close();
        running.journal().close();
        isResumedWith("after");
    }

    @Test
    void unlinkedReplacedAndTruncatedFilesAreNoticed() throws Exception {
        Files.delete(path());
        isToldToBeWrittenAgain(note("one"));

        Path put = Files.writeString(folder.resolve("other"), "something else\n");
        Path before = path();
        Files.move(put, before, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        isToldToBeWrittenAgain(note("two"));
        assertThat(before).hasContent("something else");

        Files.writeString(path(), "");
        isToldToBeWrittenAgain(note("three"));

        Files.writeString(path(), "added by somebody\n", java.nio.file.StandardOpenOption.APPEND);
        isToldToBeWrittenAgain(running.journal().retry());

        running.journal().close();
        isResumedWith("one", "two", "three");
    }

    @Test
    void withoutItsLockAJournalIsLeftForAnother() throws Exception {
        Files.delete(folder.resolve(JournalLocks.NAME));
        isToldToBeWrittenAgain(note("one"));
        running.journal().close();
        isResumedWith("one");
    }

    @Test
    @ExpectsWarning("Writing ")
    void journalThatMayOnlyBeReadIsGoneOnWithInANewOne() {
        note("before");
        running.journal().close();
        Path old = path();
        world.readOnly = old::equals;
        world.pass(3);

        running = world.open();

        assertThat(running.resumed()).isTrue();
        assertThat(running.state().figureId()).isEqualTo("loop");
        assertThat(running.journal().nowS()).isEqualTo(3);
        assertThat(running.notices())
                .containsExactly(
                        "The journal 0001-2026-05-02.journal cannot be written to; it was read, and is left as it is.");
        assertThat(note("after")).isEqualTo(new JournalHealth.Writing());
        running.journal().close();
        assertThat(path()).isNotEqualTo(old);
        isResumedWith("before", "after");
        world.readOnly = path -> false;
        isResumedWith("before", "after");
    }

    @Test
    @ExpectsWarning("Writing ")
    void folderThatMayOnlyBeReadIsResumedFromAndWrittenToAsSoonAsItMayBe() {
        note("before");
        running.journal().close();
        world.readOnly = path -> true;

        running = world.open();

        assertThat(running.resumed()).isTrue();
        assertThat(running.state().figureId()).isEqualTo("loop");
        assertThat(running.journal().health())
                .isInstanceOfSatisfying(
                        JournalHealth.NotWriting.class,
                        no -> assertThat(no.reason())
                                .startsWith("Nothing is being written down: ")
                                .contains("may not be written to. The show goes on")
                                .endsWith("make the journal's folder writable."));
        assertThat(note("in between")).isInstanceOf(JournalHealth.NotWriting.class);

        world.readOnly = path -> false;
        assertThat(running.journal().retry())
                .isEqualTo(new JournalHealth.WritingAgain(
                        "Everything is being written down again, in the journal 0002-2026-05-02.journal."));
        running.journal().close();
        isResumedWith("before", "in between");
    }

    @Test
    @ExpectsWarning({"Writing ", "No space left on device"})
    void halfWrittenCopyDoesNotGoBeforeTheWholeOne() throws Exception {
        note("before");
        running.journal().close();
        Path old = path();
        world.readOnly = old::equals;
        running = world.open();
        world.room = 700;
        assertThat(note("lost")).isInstanceOf(JournalHealth.NotWriting.class);
        assertThat(Files.size(path())).isEqualTo(700);

        // Killed here: neither closed nor written to its end.
        world.room = Long.MAX_VALUE;
        byte[] half = Files.readAllBytes(path());
        running.journal().close();
        Files.write(path(), half);
        world.readOnly = path -> false;
        isResumedWith("before");
    }
}
