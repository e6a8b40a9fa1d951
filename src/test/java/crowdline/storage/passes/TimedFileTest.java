package crowdline.storage.passes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.storage.file.LinesFile;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimedFileTest {
    @TempDir
    Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("timed.csv"), text);
    }

    private List<TimedFile.Row> read(String text) throws IOException, ShowFileException {
        return TimedFile.read(file(text));
    }

    @Test
    void rowsComeWithTheirLines() throws Exception {
        assertThat(read("3.5,Here comes the loop.\n\n4,And down.\n"))
                .containsExactly(
                        new TimedFile.Row(3.5, "Here comes the loop.", 1), new TimedFile.Row(4, "And down.", 3));
    }

    @Test
    void aHeadMayStandOnTop() throws Exception {
        assertThat(read("Seconds, text\n3.5,Loop.")).containsExactly(new TimedFile.Row(3.5, "Loop.", 2));
    }

    /** RFC 4180, section 2, rules 1 to 7: CRLF or no line end, quotes, and commas, line ends and quotes inside them. */
    @Test
    void quotesAreThoseOfRfc4180() throws Exception {
        assertThat(read("\"3\",\"Up, and over\"\r\n4,\"Say \"\"hello\"\"\"\r\n5,\"two\r\nlines\"\r\n6,end"))
                .containsExactly(
                        new TimedFile.Row(3, "Up, and over", 1),
                        new TimedFile.Row(4, "Say \"hello\"", 2),
                        new TimedFile.Row(5, "two\r\nlines", 3),
                        new TimedFile.Row(6, "end", 5));
    }

    @Test
    void moreThanAnybodyTimesIsRefusedAtItsLine() {
        Path file = folder.resolve("timed.csv");
        assertThatThrownBy(() -> read("4,Loop.\n".repeat(900_000)))
                .hasMessage(
                        file + ", line 10001, column 1: the limit is 10,000 lines; check that it is the right file, or"
                                + " split it into smaller ones");
        assertThatThrownBy(() -> read("4,Loop.\n4," + "x".repeat(5_001)))
                .hasMessage(file + ", line 2, column 3: this is 5,001 letters long; the limit is 5,000, so shorten it,"
                        + " split it, or look for a missing quote or line end");
        assertThatThrownBy(() -> read(",".repeat(9_000_000)))
                .hasMessage(file
                        + ", line 1, column 21: the line has more than 20 values; check that it is the right file");
    }

    @Test
    void aFileOfLinesHasTheSameLimits() throws Exception {
        assertThat(LinesFile.read(file("word\n\n".repeat(10_000)))).hasSize(10_000);
        assertThatThrownBy(() -> LinesFile.read(file("word\n".repeat(10_001))))
                .hasMessageEndingWith(
                        ", line 10001: the limit is 10,000 lines; check that it is the right file, or split it"
                                + " into smaller ones");
        assertThatThrownBy(() -> LinesFile.read(file("x".repeat(9_000_000))))
                .hasMessageContaining(", line 1: this is 9,000,000 letters long; the limit is 5,000");
    }

    @Test
    void anEmptyFileHasNoRows() throws Exception {
        assertThat(read("")).isEmpty();
        assertThat(read("\n \r\n")).isEmpty();
        assertThat(read("\uFEFFseconds,text\n")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            `3,loop\nfour,roll`        | line 2, column 1: "four" is not a time; it must be seconds above 0
            `3,loop\n-2,roll`          | line 2, column 1: "-2" is not a time
            `NaN,loop`                 | line 1, column 1: "NaN" is not a time
            `3,loop\n0,roll`           | line 2, column 1: "0" is not a time
            `3;loop`                   | line 1, column 1: "3;loop" stands alone; a line is seconds, a comma and the remark
            `3,Up, and over`           | line 1, column 6: "and over" is a third value; put the remark in double quotes
            `3,loop\n4, `              | line 2, column 3: the remark is empty; write what was said
            `3,`                       | line 1, column 3: the remark is empty
            `3,"loop`                  | line 1, column 3: the quote that opens here is never closed
            `3,"loop" twice`           | there is more after the closing quote
            `"3,5",loop`               | line 1, column 1: "3,5" is not a time; it must be seconds above 0 with a full stop
            """)
    void unsoundRowsAreRefusedWithTheirPlace(String text, String message) {
        assertThatThrownBy(() -> read(text.replace("\\n", "\n")))
                .isInstanceOf(ShowFileException.class)
                .hasMessageContaining(message)
                .hasMessageContaining("timed.csv, line ");
    }

    @Test
    void otherEncodingsAreRefused() {
        assertThatThrownBy(() -> TimedFile.read(
                        Files.write(folder.resolve("x.csv"), "3,caf\u00e9".getBytes(StandardCharsets.ISO_8859_1))))
                .hasMessageContaining("line 1, column 6")
                .hasMessageContaining("UTF-8");
    }
}
