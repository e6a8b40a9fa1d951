package crowdline.app.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Times whole processes from their start to the first painted Live screen, against a bare FlatLaf window with one label:
 * in turn, on the same Java with the same options, without and with an archive of loaded classes for each.
 *
 * <p>Live opens by itself when a show goes on that was running; so one run, not counted, opens the demo show and is
 * killed, and every later run resumes it.
 */
public final class StartTimes {
    private static final long LONGEST_S = 60;

    private final String java;
    private final String probe;
    private final Path show;
    private final Path scratch;

    private StartTimes(String java, String probe, Path show, Path scratch) {
        this.java = java;
        this.probe = probe;
        this.show = show;
        this.scratch = scratch;
    }

    /** Java, the class path of {@link FirstPaint} and the program (jars only), the show, a folder to use, how often. */
    public static void main(String[] args) throws IOException, InterruptedException {
        StartTimes times = new StartTimes(args[0], args[1], Path.of(args[2]).toAbsolutePath(), Path.of(args[3]));
        times.beginShow();
        times.compare("no class archive", List.of("-Xshare:auto"), List.of("-Xshare:auto"), Integer.parseInt(args[4]));
        times.compare(
                "each with its class archive",
                times.archived("console", times.show.toString()),
                times.archived("bare"),
                Integer.parseInt(args[4]));
    }

    private void compare(String name, List<String> console, List<String> bare, int runs)
            throws IOException, InterruptedException {
        double[] ours = new double[runs];
        double[] theirs = new double[runs];
        for (int i = 0; i < runs; i++) {
            theirs[i] = timed(bare, "bare");
            ours[i] = timed(console, "console", show.toString());
        }
        System.out.printf(
                Locale.ROOT,
                "%s%n  Live, ms:        %s, median %.0f%n  bare window, ms: %s, median %.0f%n  ratio of medians %.2f%n",
                name,
                all(ours),
                median(ours),
                all(theirs),
                median(theirs),
                median(ours) / median(theirs));
    }

    private static String all(double[] values) {
        return String.join(
                " ",
                Arrays.stream(values)
                        .mapToObj(v -> String.format(Locale.ROOT, "%.0f", v))
                        .toList());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /** Leaves a journal of a show that was not ended. */
    private void beginShow() throws IOException, InterruptedException {
        Process process = start(List.of("-Xshare:auto"), "console", show.toString());
        long giveUpNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_S);
        while (!isBegun()) {
            if (System.nanoTime() > giveUpNs || !process.isAlive()) {
                process.destroyForcibly();
                throw new IllegalStateException("the show did not begin");
            }
            Thread.sleep(100);
        }
        process.destroyForcibly().waitFor();
    }

    private boolean isBegun() throws IOException {
        Path state = scratch.resolve("state");
        if (!Files.isDirectory(state)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(state)) {
            return files.filter(f -> f.toString().endsWith(".journal")).anyMatch(StartTimes::hasAct);
        }
    }

    private static boolean hasAct(Path journal) {
        try {
            return Files.readString(journal).contains("ActChosen");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Runs once to write an archive; gives the options that use it. */
    private List<String> archived(String... args) throws IOException, InterruptedException {
        Path archive = scratch.resolve(args[0] + ".jsa");
        timed(List.of("-XX:ArchiveClassesAtExit=" + archive), args);
        if (!Files.exists(archive)) {
            throw new IllegalStateException("no archive was written at " + archive);
        }
        return List.of("-XX:SharedArchiveFile=" + archive);
    }

    private double timed(List<String> options, String... args) throws IOException, InterruptedException {
        long startNs = System.nanoTime();
        Process process = start(options, args);
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String line = out.readLine();
            double ms = (System.nanoTime() - startNs) / 1e6;
            if (!FirstPaint.PAINTED.equals(line)) {
                throw new IllegalStateException("instead of a painted window: " + line);
            }
            if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
                throw new IllegalStateException("the program did not end");
            }
            return ms;
        } finally {
            process.destroyForcibly();
        }
    }

    /** The options are those of scripts/crowdline. */
    private Process start(List<String> options, String... args) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(java, "-XX:+UseSerialGC", "-XX:CompileThresholdScaling=8", "-Xmx256m", "-Xlog:disable"));
        command.addAll(options);
        command.addAll(List.of("-cp", probe, "crowdline.app.window.FirstPaint"));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().put("XDG_STATE_HOME", scratch.resolve("state").toString());
        builder.environment().put("XDG_CONFIG_HOME", scratch.resolve("config").toString());
        return builder.start();
    }
}
