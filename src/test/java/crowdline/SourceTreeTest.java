package crowdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds what neither compiler nor class files show: package descriptions and the length of files. */
class SourceTreeTest {

    private static final Path MAIN = Path.of("src", "main", "java");
    /** Feet, knots, miles, gravity and the end of a band of eight in ten, in whatever way one writes them. */
    private static final Pattern MEASURE =
            Pattern.compile("(?<![\\d.])(9\\.8\\d*|0\\.3048\\d*|3\\.28\\d*|1_?852(\\.0)?|1\\.852|0\\.514\\d*"
                    + "|1\\.94\\d*|1_?609(\\.\\d+)?|(?<=[*/] )3\\.6|1\\.28\\d*)(?![\\d.])");

    private static final Path TESTS = Path.of("src", "test", "java");

    @Test
    void everyPackageIsDescribedAndNullMarked() throws IOException {
        Set<Path> folders = new TreeSet<>();
        for (Path file : SourceTree.javaFilesUnder(MAIN)) {
            folders.add(file.resolveSibling("package-info.java"));
        }

        assertThat(folders).isNotEmpty().allSatisfy(info -> {
            assertThat(info).exists();
            assertThat(Files.readString(info)).contains("/**", "@NullMarked");
        });
    }

    @Test
    void noFileIsTooLongToRead() throws IOException {
        List<Path> files = new ArrayList<>(SourceTree.javaFilesUnder(MAIN));
        files.addAll(SourceTree.javaFilesUnder(TESTS));

        assertThat(files)
                .isNotEmpty()
                .allSatisfy(file -> assertThat(Files.readAllLines(file))
                        .as("a class that needs more than 400 lines is two classes: %s", file)
                        .hasSizeLessThanOrEqualTo(400));
    }

    /** Tests write these numbers down themselves: they judge what the program makes of them. */
    @Test
    void constantsOfUnitsStandInOnePlace() throws IOException {
        Path measure = MAIN.resolve(Path.of("crowdline", "measure"));
        List<String> elsewhere = new ArrayList<>();
        int there = 0;
        for (Path file : SourceTree.javaFilesUnder(MAIN)) {
            String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/|//[^\\n]*|\"(\\\\.|[^\"\\\\\\n])*\"", "");
            for (MatchResult found : MEASURE.matcher(code).results().toList()) {
                if (file.startsWith(measure)) {
                    there++;
                } else {
                    elsewhere.add(found.group() + " in " + file);
                }
            }
        }

        assertThat(there).isEqualTo(6);
        assertThat(elsewhere).as("use measure.Units and measure.EightInTen").isEmpty();
    }

    /** "Decision 131" is one. */
    @Test
    void noTwoDecisionsHaveOneNumber() throws IOException {
        try (Stream<Path> records = Files.list(Path.of("src", "docs", "decisions"))) {
            List<String> numbers = records.map(record -> String.valueOf(record.getFileName()))
                    .filter(name -> name.matches("\\d{4}-.*"))
                    .map(name -> name.substring(0, 4))
                    .toList();
            assertThat(numbers).hasSizeGreaterThan(20).doesNotHaveDuplicates();
        }
    }
}
