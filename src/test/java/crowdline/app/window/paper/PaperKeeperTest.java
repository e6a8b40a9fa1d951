package crowdline.app.window.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.preview.PaperHost.Answer;
import crowdline.console.preview.PaperHost.Asked;
import crowdline.measure.Measures;
import crowdline.paper.SheetKind;
import crowdline.running.WorkerThreads;
import crowdline.sheet.page.Pages;
import crowdline.show.Show;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperKeeperTest {
    @TempDir
    private Path folder;

    private final WorkerThreads flights = new WorkerThreads();
    private final Deque<Runnable> thread = new ArrayDeque<>();
    private final PaperKeeper keeper = new PaperKeeper(
            CatalogueFile::shipped,
            () -> null,
            () -> Paces.DEFAULT,
            () -> null,
            () -> Measures.USUAL,
            flights,
            thread::add);
    private final Heard heard = new Heard();
    private final Show show = read();

    private static Show read() {
        try {
            return Objects.requireNonNull(new ShowFile()
                    .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                    .show());
        } catch (ShowFileException e) {
            throw new IllegalStateException(e);
        }
    }

    private static final class Heard implements Answer {
        final List<Pages> made = new ArrayList<>();
        final List<String> said = new ArrayList<>();
        int steps;

        @Override
        public void sofar(int number, int all) {
            steps++;
        }

        @Override
        public void made(Pages pages) {
            made.add(pages);
        }

        @Override
        public void said(String sentence) {
            said.add(sentence);
        }
    }

    @AfterEach
    void close() {
        flights.close();
    }

    /** Does what waits for the thread, and hears every answer. */
    private void work() throws Exception {
        while (!thread.isEmpty()) {
            thread.remove().run();
        }
        SwingUtilities.invokeAndWait(() -> {});
    }

    private static Asked asked(SheetKind kind) {
        return new Asked(kind, null, null, false);
    }

    @Test
    void pagesAreMadeOfTheShowAsItIsEditedAndSavedAsAPdf() throws Exception {
        keeper.make(show.called("Another day", show.date()), asked(SheetKind.INCIDENT), heard);
        work();
        assertThat(heard.made)
                .singleElement()
                .satisfies(p -> assertThat(p.title()).isEqualTo("Another day: Incident page"));
        assertThat(heard.steps).isPositive();

        Path file = folder.resolve("a.pdf");
        keeper.save(heard.made.get(0), file, heard);
        work();
        assertThat(heard.said).containsExactly("Saved as a.pdf.");
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void aNewWishStopsTheOneBefore() throws Exception {
        keeper.make(show, asked(SheetKind.GLOSSARY), heard);
        Heard second = new Heard();
        keeper.make(show, asked(SheetKind.INCIDENT), second);
        work();
        assertThat(heard.made).isEmpty();
        assertThat(second.made).hasSize(1);
    }

    @Test
    void whatIsStoppedAnswersNoMore() throws Exception {
        keeper.make(show, asked(SheetKind.INCIDENT), heard);
        keeper.stop();
        work();
        assertThat(heard.made).isEmpty();
        assertThat(heard.said).isEmpty();
    }

    @Test
    void whatCannotBeMadeOrWrittenIsSaid() throws Exception {
        keeper.make(show.withIncident(null), asked(SheetKind.INCIDENT), heard);
        work();
        assertThat(heard.said).singleElement().asString().startsWith("This show has no incident page;");

        keeper.make(show, asked(SheetKind.INCIDENT), heard);
        work();
        keeper.save(heard.made.get(0), folder.resolve("none").resolve("a.pdf"), heard);
        work();
        assertThat(heard.said).hasSize(2).last().asString().contains("a.pdf");
    }
}
