package crowdline.app.window;

import crowdline.live.state.Live;
import crowdline.running.LiveDesk;
import crowdline.storage.journal.JournalShelf;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.json.JsonMapper;

/** A {@link LiveChild} in a process of its own. */
final class ChildProcess implements AutoCloseable {

    /** What the child says about where it is. */
    record Where(String actId, int index, long startNanos, long nowNanos, int remarks) {}

    /** What the child says when it is ready, and the processor time it took from its start. */
    record Ready(int events, List<String> notices, Where where, long cpuMillis) {}

    private final Process process;
    private final BufferedReader out;
    private final BufferedWriter in;

    ChildProcess(Path folder, double figureS) throws IOException {
        process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classPath(),
                        LiveChild.class.getName(),
                        folder.toString(),
                        Double.toString(figureS))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        in = new BufferedWriter(new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
    }

    private static String classPath() {
        Stream<Class<?>> needed = Stream.of(
                LiveChild.class,
                LiveDesk.class,
                Live.class,
                JournalShelf.class,
                JsonMapper.class,
                JsonParser.class,
                com.fasterxml.jackson.annotation.JsonInclude.class,
                NullMarked.class);
        return needed.map(ChildProcess::home).distinct().collect(Collectors.joining(File.pathSeparator));
    }

    private static String home(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("cannot find " + type, e);
        }
    }

    Ready ready() throws IOException {
        List<String> notices = new ArrayList<>();
        String line = String.valueOf(out.readLine());
        while (line.startsWith("NOTICE ")) {
            notices.add(line.substring("NOTICE ".length()));
            line = String.valueOf(out.readLine());
        }
        List<String> words = words("READY", line);
        return new Ready(
                Integer.parseInt(words.get(1)), notices, where(words.subList(2, 7)), Long.parseLong(words.get(7)));
    }

    void send(String word) throws IOException {
        in.write(word + "\n");
        in.flush();
    }

    Where ack() throws IOException {
        return where(words("ACK", out.readLine()).subList(1, 6));
    }

    private static List<String> words(String first, @Nullable String line) throws IOException {
        if (line == null || !line.startsWith(first + " ")) {
            throw new IOException("expected " + first + " and read " + line);
        }
        return List.of(line.split(" "));
    }

    private static Where where(List<String> words) {
        return new Where(
                words.get(0),
                Integer.parseInt(words.get(1)),
                Long.parseLong(words.get(2)),
                Long.parseLong(words.get(3)),
                Integer.parseInt(words.get(4)));
    }

    /** Kills it, with SIGKILL where there is such a thing, and reads what it had said by then; cut lines do not count. */
    List<Where> kill() throws IOException, InterruptedException {
        // Through its handle, which unlike the process itself leaves the streams open.
        process.toHandle().destroyForcibly();
        StringBuilder all = new StringBuilder();
        for (int c = out.read(); c >= 0; c = out.read()) {
            all.append((char) c);
        }
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the child did not die");
        }
        int end = all.lastIndexOf("\n");
        return all.substring(0, end + 1)
                .lines()
                .map(line -> {
                    if (!line.startsWith("ACK ")) {
                        throw new IllegalStateException("expected ACK and read " + line);
                    }
                    return where(List.of(line.split(" ")).subList(1, 6));
                })
                .toList();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
