package crowdline.storage;

import crowdline.live.JournalHealth;
import crowdline.live.LiveEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The diary of one running show: every event one line, on the disk before {@link #append} returns. If it cannot be written
 * the lines wait and are tried again; nothing here throws at the show. Found and opened by {@link JournalShelf}. Used by one
 * thread, except {@link #nowS()}, which any thread may ask.
 */
public final class Journal implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Journal.class.getName());
    private static final double NANOS_PER_S = 1e9;

    private final Path path;
    private final JournalMachine machine;
    private final long zeroNanos;
    private final JournalCodec codec;
    private final JournalFile.Opener opener;
    private final List<String> waiting = new ArrayList<>();
    private long writtenLength;
    private @Nullable JournalFile file;
    private boolean ours;
    private JournalHealth health = new JournalHealth.Writing();

    /**
     * @param file already open, or null to open it with the first line
     * @param zeroNanos reading of the machine's monotonic clock at the session's second 0
     * @param writtenLength bytes to keep
     */
    Journal(
            Path path,
            @Nullable JournalFile file,
            JournalFile.Opener opener,
            JournalMachine machine,
            long zeroNanos,
            long writtenLength,
            JournalCodec codec) {
        this.path = path;
        this.file = file;
        this.ours = file != null;
        this.opener = opener;
        this.machine = machine;
        this.zeroNanos = zeroNanos;
        this.writtenLength = writtenLength;
        this.codec = codec;
    }

    /** Where it is written. */
    public Path path() {
        return path;
    }

    /** The session's seconds now. */
    public double nowS() {
        return sessionS(machine.ticker().nanos());
    }

    /** The session's seconds at a reading of the machine's monotonic clock. */
    public double sessionS(long nanos) {
        return Math.max(0, (nanos - zeroNanos) / NANOS_PER_S);
    }

    /** Writes what happened down; when this returns, either the disk has it or the health says that it has not. */
    public JournalHealth append(LiveEvent event) {
        return append(List.of(event));
    }

    /** Writes several events down at once, in this order, as after a long gap. */
    public JournalHealth append(List<? extends LiveEvent> events) {
        for (LiveEvent event : events) {
            waiting.add(codec.write(new JournalLine.Event(machine.wall().instant(), nowS(), event)));
        }
        return retry();
    }

    JournalHealth put(JournalLine line) {
        waiting.add(codec.write(line));
        return retry();
    }

    /** Tries again to write what waits. */
    public JournalHealth retry() {
        if (waiting.isEmpty()) {
            return health;
        }
        StringBuilder text = new StringBuilder();
        waiting.forEach(line -> text.append(line).append('\n'));
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        try {
            opened().put(writtenLength, bytes);
            writtenLength += bytes.length;
            waiting.clear();
            health = new JournalHealth.Writing();
        } catch (IOException e) {
            if (health instanceof JournalHealth.Writing) {
                LOG.log(System.Logger.Level.WARNING, "The journal " + path + " cannot be written", e);
            }
            closeFile();
            health = new JournalHealth.NotWriting(
                    "The journal is not being written: " + why(e)
                            + ". The show goes on; after a crash it would start again"
                            + " from the last line written. Make room or make " + path.getParent() + " writable.",
                    waiting.size());
        }
        return health;
    }

    private static String why(IOException e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }

    private JournalFile opened() throws IOException {
        JournalFile now = file;
        if (now == null) {
            now = opener.open(path);
            file = now;
            if (writtenLength == 0 && now.length() > 0 && !ours) {
                closeFile();
                throw new IOException(path + " already exists");
            }
            ours = true;
            // If somebody put a shorter file in its place, go on at the end of that.
            writtenLength = Math.min(writtenLength, now.length());
        }
        return now;
    }

    /** Whether everything that happened is on the disk. */
    public JournalHealth health() {
        return health;
    }

    /** Tries a last time to write what waits, and lets go of the file. */
    @Override
    public void close() {
        retry();
        closeFile();
    }

    private void closeFile() {
        JournalFile now = file;
        file = null;
        if (now != null) {
            try {
                now.close();
            } catch (IOException e) {
                LOG.log(System.Logger.Level.DEBUG, "Closing " + path, e);
            }
        }
    }
}
