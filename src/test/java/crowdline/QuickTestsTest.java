package crowdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What {@code scripts/test quick} runs: it leaves out what is tagged, so what must be in it has no tag. */
class QuickTestsTest {
    private static final Path TESTS = Path.of("src", "test", "java");

    private static List<Path> testClasses() throws IOException {
        return SourceTree.javaFilesUnder(TESTS).stream()
                .filter(file -> file.toString().endsWith("Test.java"))
                .toList();
    }

    private static boolean holdsARule(Path file) {
        String name = String.valueOf(file.getFileName());
        return String.valueOf(file.getParent()).endsWith("crowdline") || name.endsWith("GoldenTest.java");
    }

    /** The rules of the whole house stand at the root of the tests, and what kept files say in tests called golden. */
    @Test
    void rulesOfTheHouseAndGoldenFilesAreAmongThem() throws IOException {
        assertThat(testClasses())
                .filteredOn(QuickTestsTest::holdsARule)
                .extracting(file -> String.valueOf(file.getFileName()))
                .contains(
                        "ArchitectureTest.java", "SourceTreeTest.java", "OwnershipTest.java", "JournalGoldenTest.java")
                .hasSizeGreaterThan(15);
        assertThat(testClasses())
                .filteredOn(QuickTestsTest::holdsARule)
                .filteredOn(file -> !file.endsWith("QuickTestsTest.java"))
                .allSatisfy(file -> assertThat(Files.readString(file)).doesNotContain("@Tag("));
    }

    /** Without a screen such a test would be skipped and nobody would notice. */
    @Test
    void whatNeedsAScreenIsNotAmongThem() throws IOException {
        assertThat(testClasses())
                .filteredOn(file -> Stream.of("GraphicsEnvironment", "ConsoleOnScreen(", "RealWindow(")
                        .anyMatch(read(file)::contains))
                .filteredOn(file -> !file.endsWith("QuickTestsTest.java"))
                .hasSizeGreaterThan(20)
                .allSatisfy(file -> assertThat(read(file)).contains("@Tag(\"window\")"));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
