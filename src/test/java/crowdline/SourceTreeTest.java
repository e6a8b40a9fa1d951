package crowdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds what neither compiler nor class files show: package descriptions and the length of files. */
class SourceTreeTest {

    private static final Path MAIN = Path.of("src", "main", "java");
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
}
