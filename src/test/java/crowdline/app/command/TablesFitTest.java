package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.sheet.Columns;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed about an act fits a terminal of a hundred letters. */
class TablesFitTest {
    private static final Path FENMARSH = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private List<String> lines(String... args) {
        caught.clear();
        assertThat(Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE))
                .as(caught.err())
                .isLessThan(ExitCode.UNUSABLE);
        return caught.out().lines().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"predict", "plan"})
    void noLineIsLongerThanAHundredLetters(String command) {
        assertThat(lines(command, FENMARSH.toString()))
                .hasSizeGreaterThan(40)
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Columns.MOST));
    }

    @ParameterizedTest
    @ValueSource(strings = {"predict", "plan"})
    void longNamesAndIdsAreWholeAndWithinTheLines(String command) throws IOException {
        String name = "the long way up and over the far end of the wood and back again";
        String id = "a-remark-whose-id-is-as-long-as-that-of-any-that-people-write";
        String show = Files.readString(FENMARSH)
                .replace("\"figure\": \"loop\"", "\"figure\": \"loop\", \"title\": \"" + name + "\"")
                .replaceFirst("\"id\": \"call-[^\"]*\"", "\"id\": \"" + id + "\"");
        Path file = Files.writeString(folder.resolve("day.json"), show);
        List<String> lines = lines(command, file.toString());
        assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Columns.MOST));
        if (command.equals("predict")) {
            String words = String.join(" ", lines.stream().map(String::strip).toList());
            for (String word : name.split(" ", -1)) {
                assertThat(words).contains(word);
            }
            assertThat(words).contains("over the far end of the");
        }
    }

    @Test
    void aWordThatIsLongerThanALineStaysWhole() {
        String word = "w".repeat(130);
        assertThat(Columns.wrapped("one " + word + " two", 100)).containsExactly("one", word, "two");
        assertThat(Columns.hanging("head: ", "one two " + "three ".repeat(20)))
                .first()
                .asString()
                .startsWith("head: one two three");
        assertThat(Columns.hanging("head: ", "three ".repeat(20)).get(1)).startsWith("      three");
    }
}
