package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LogNotesTest {
    private final LogNotes notes = new LogNotes();

    private List<String> texts() {
        return notes.all().stream().map(LogNote::text).toList();
    }

    @Test
    void linesInARowAreOneNote() {
        for (int line = 7; line < 40; line++) {
            notes.about(line, "cut short");
        }
        assertThat(texts()).containsExactly("lines 7 to 39: cut short");
    }

    /** Two kinds in turns, as a receiver with a bad cable writes them. */
    @Test
    void thousandsOfNotesFoldByTheirKind() {
        for (int line = 1; line < 12_000; line += 3) {
            notes.about(line, "cut short");
            notes.about(line + 1, "the line has " + line + " characters and was left out");
        }
        assertThat(texts())
                .containsExactly(
                        "line 1: cut short",
                        "line 4: cut short",
                        "line 7: cut short",
                        "3,997 more lines like line 7, the last of them line 11998",
                        "line 2: the line has 1 characters and was left out",
                        "line 5: the line has 4 characters and was left out",
                        "line 8: the line has 7 characters and was left out",
                        "3,997 more lines like line 8, the last of them line 11999");
    }

    @Test
    void fourthOfAKindIsNamedByItsLine() {
        for (int line : new int[] {2, 4, 6, 8}) {
            notes.about(line, "cut short");
        }
        notes.aboutAll("no date");
        assertThat(texts()).endsWith("1 more line like line 6, line 8", "no date");
    }

    @Test
    void fileOfNothingButKindsIsNotToldLineByLine() {
        for (int line = 1; line < 5000; line += 2) {
            notes.about(line, "unknown " + "x".repeat(line));
        }
        assertThat(notes.all()).hasSizeLessThan(60);
        assertThat(texts()).last().asString().contains("more lines with other notes, the last of them line 4999");
    }
}
