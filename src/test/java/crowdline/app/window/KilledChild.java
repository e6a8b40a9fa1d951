package crowdline.app.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A program of these tests in a process of its own, killed at the word it says when it has come so far. */
final class KilledChild {
    private KilledChild() {}

    /**
     * Starts it in a folder, waits until it says the word, and kills it.
     *
     * @return what it said, which is the word if it came so far
     */
    static String after(String word, Class<?> program, Path folder) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Duser.language=en",
                        "-Duser.country=GB",
                        "-cp",
                        System.getProperty("java.class.path"),
                        program.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = child.inputReader()) {
            String line = String.valueOf(said.readLine());
            child.toHandle().destroyForcibly();
            if (!child.waitFor(20, TimeUnit.SECONDS)) {
                throw new IllegalStateException("it did not die after " + word);
            }
            return line;
        } finally {
            child.destroyForcibly();
        }
    }
}
