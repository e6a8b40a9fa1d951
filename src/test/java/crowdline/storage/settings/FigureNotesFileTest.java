package crowdline.storage.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.FigureNote;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FigureNotesFileTest {
    @TempDir
    Path folder;

    private FigureNotesFile notes(String show) {
        return new FigureNotesFile(folder.resolve("notes"), folder.resolve(show));
    }

    private Path written() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("notes"))) {
            return files.filter(f -> f.toString().endsWith(".json")).findFirst().orElseThrow();
        }
    }

    @Test
    void notesComeBackAsTheyWereWritten() throws IOException {
        List<FigureNote> wanted = List.of(
                new FigureNote("a1", "f1", "He waits <b>here</b>\nfor the sun"), new FigureNote("a1", "f2", "Ä, “so”"));
        notes("day.json").write(wanted);

        assertThat(notes("day.json").read()).isEqualTo(wanted);
    }

    @Test
    void showWithoutNotesHasNone() throws IOException {
        assertThat(notes("day.json").read()).isEmpty();
    }

    @Test
    void showsOfTheSameNameInTwoFoldersDoNotShareNotes() throws IOException {
        notes("one/day.json").write(List.of(new FigureNote("a1", "f1", "one")));

        assertThat(notes("two/day.json").read()).isEmpty();
    }

    @Test
    void brokenFileIsNamedAndLeftAlone() throws IOException {
        notes("day.json").write(List.of(new FigureNote("a1", "f1", "one")));
        Path file = written();
        Files.writeString(file, "{ \"crowdlineNotes\": 1, ");

        assertThatThrownBy(() -> notes("day.json").read())
                .isInstanceOf(ShowFileException.class)
                .hasMessageContaining(file.toString())
                .hasMessageContaining("correct the file");
        assertThat(file).hasContent("{ \"crowdlineNotes\": 1, ");
    }

    @Test
    void noteWithoutAFigureIsRefusedByName() throws IOException {
        notes("day.json").write(List.of(new FigureNote("a1", "f1", "one")));
        Path file = written();
        Files.writeString(file, Files.readString(file).replace("\"f1\"", "\"\""));

        assertThatThrownBy(() -> notes("day.json").read()).hasMessageContaining("figure id of a note is empty");
    }
}
