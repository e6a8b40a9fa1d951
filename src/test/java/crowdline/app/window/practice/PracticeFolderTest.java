package crowdline.app.window.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PracticeFolderTest {
    @TempDir
    Path within;

    /** As a program that was killed leaves one. */
    private Path left() throws IOException {
        Path left = Files.createDirectory(within.resolve("crowdline-practice4711"));
        Files.createFile(left.resolve("in-use"));
        Files.writeString(Files.createDirectory(left.resolve("deep")).resolve("journal.jsonl"), "{}");
        return left;
    }

    @Test
    void whatAKilledProgramLeftIsGoneAndAPracticeThatRunsIsNot() throws IOException {
        Path left = left();
        PracticeFolder running = PracticeFolder.make(within);
        Files.writeString(running.path().resolve("journal.jsonl"), "{}");

        PracticeFolder.sweep(within);

        assertThat(left).doesNotExist();
        assertThat(running.path().resolve("journal.jsonl")).exists();
        running.delete();
        assertThat(running.path()).doesNotExist();
    }

    @Test
    void aPracticeOfAnotherProgramIsLeftAlone() throws Exception {
        Path left = left();
        String other = "import java.nio.channels.*; import java.nio.file.*;"
                + "class Other { public static void main(String[] a) throws Exception {"
                + "FileChannel c = FileChannel.open(Path.of(a[0]), StandardOpenOption.WRITE); c.lock();"
                + "System.out.println(\"locked\"); System.in.read(); } }";
        Path source = Files.writeString(within.resolve("Other.java"), other);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        source.toString(),
                        left.resolve("in-use").toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            assertThat(process.inputReader().readLine()).isEqualTo("locked");
            PracticeFolder.sweep(within);
            assertThat(left.resolve("deep").resolve("journal.jsonl")).exists();
        } finally {
            process.destroyForcibly().waitFor();
        }
        PracticeFolder.sweep(within);
        assertThat(left).doesNotExist();
    }

    @Test
    void whatIsNoPracticeStays() throws IOException {
        Path outside = Files.createDirectory(within.resolve("outside"));
        Files.createFile(outside.resolve("in-use"));
        Files.createSymbolicLink(within.resolve("crowdline-practice1"), outside);
        Path unlocked = Files.createDirectory(within.resolve("crowdline-practice2"));
        Path file = Files.createFile(within.resolve("crowdline-practice3"));
        Path other = Files.createDirectory(within.resolve("another"));

        PracticeFolder.sweep(within);

        assertThat(outside.resolve("in-use")).exists();
        assertThat(unlocked).exists();
        assertThat(file).exists();
        assertThat(other).exists();
    }
}
