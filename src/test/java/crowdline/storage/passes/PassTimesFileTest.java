package crowdline.storage.passes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PassTimesFileTest {
    @TempDir
    Path folder;

    private List<PassTimesFile.Row> read(String text) throws IOException, ShowFileException {
        return PassTimesFile.read(Files.writeString(folder.resolve("times.csv"), text));
    }

    @Test
    void rowsComeWithTheirLines() throws Exception {
        assertThat(read("figure,startS,endS\nloop,3,15.5\n\nroll, 15.5, 21\n"))
                .containsExactly(new PassTimesFile.Row("loop", 3, 15.5, 2), new PassTimesFile.Row("roll", 15.5, 21, 4));
        assertThat(read("loop,3,15.5")).containsExactly(new PassTimesFile.Row("loop", 3, 15.5, 1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``                              | holds no figure
            `figure,startS,endS`            | holds no figure
            `loop,3`                        | line 1, column 1: the line has 2 values
            `loop,3,15,4`                   | line 1, column 1: the line has 4 values
            `,3,15`                         | line 1, column 1: the figure is empty
            `loop,3,15\\nroll,x,20`         | line 2, column 6: "x" is not a time
            `loop,3,1e3`                    | column 8: "1e3" is not a time
            `loop,3,NaN`                    | "NaN" is not a time
            `loop,15,3`                     | line 1, column 9: the end, 3, must be after the start, 15
            `loop,3,15\\nroll,14,20`        | line 2, column 6: the start, 14, is before the end of line 1
            """)
    void unsoundRowsAreRefusedWithTheirPlace(String text, String said) {
        assertThatThrownBy(() -> read(text.replace("\\n", "\n")))
                .isInstanceOf(ShowFileException.class)
                .hasMessageContaining(said);
    }
}
