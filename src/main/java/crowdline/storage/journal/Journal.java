package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import crowdline.live.now.JournalHealth;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The diary of one running show: every event one line, on the disk before {@link #append} returns. If it cannot be written
 * the lines wait and are tried again; if its file is deleted or changed by something else, all of it is written again as
 * another journal. Nothing here throws at the show. Found and opened by {@link JournalShelf}. Used by one thread, except
 * {@link #nowS()} and {@link #sessionS}, which any thread may ask.
 */
public final class Journal implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Journal.class.getName());
    private static final double NANOS_PER_S = 1e9;
    /** Lines after which the journal says again whose it is, so that no damage in one place hides that. */
    private static final int LINES_BETWEEN_HEADERS = 32;
    /** How long it is told that a journal is being written again, seconds. */
    private static final double NEWS_S = 20;

    private final JournalShow show;
    private final JournalMachine machine;
    private final JournalCodec codec;
    private final long zeroNanos;
    private final Fresh fresh;
    /** Everything this journal says, so that it can be written again. */
    private final ByteArrayOutputStream history = new ByteArrayOutputStream();
    /** The end of that, which the disk does not have. */
    private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();

    private int lines;
    private int waitingEvents;
    private @Nullable JournalPlace place;
    private volatile @Nullable Path path;
    private long written;
    /** True while there may be more in the file than what was written, because a write did not end well. */
    private boolean torn;

    private JournalHealth health = new JournalHealth.Writing();
    private double newsUntilS;

    /** Makes a new file for a journal. */
    @FunctionalInterface
    interface Fresh {
        JournalPlace make() throws IOException;
    }

    /** @param zeroNanos reading of the machine's monotonic clock at the session's second 0 */
    Journal(JournalShow show, JournalMachine machine, JournalCodec codec, long zeroNanos, Fresh fresh) {
        this.show = show;
        this.machine = machine;
        this.codec = codec;
        this.zeroNanos = zeroNanos;
        this.fresh = fresh;
    }

    /** Begins, without waiting for the disk. */
    void begin() {
        // Twice, so that one damaged line does not hide whose journal it is.
        add(header());
        add(header());
        ready();
    }

    /**
     * Goes on after what was read, without waiting for the disk.
     *
     * @param there where that is written, to be written on; null if it may not be
     */
    void goOn(@Nullable JournalPlace there, JournalReplay replay) throws IOException {
        replay.good().forEach(this::add);
        if (there != null) {
            long length = there.file().length();
            place = there;
            written = Math.min(history.size(), length);
            torn = length != history.size();
            keepWaiting();
        }
        add(header());
        ready();
    }

    private void ready() {
        try {
            placed();
        } catch (IOException e) {
            health = notWriting(e);
        }
    }

    private String header() {
        long nanos = machine.ticker().nanos();
        JournalLine.Base now =
                new JournalLine.Base(machine.bootId(), nanos, machine.wall().instant(), sessionS(nanos));
        return codec.write(new JournalLine.Header(JournalCodec.VERSION, show, now));
    }

    private void add(String line) {
        byte[] bytes = (line + '\n').getBytes(StandardCharsets.UTF_8);
        history.writeBytes(bytes);
        waiting.writeBytes(bytes);
        lines++;
    }

    /** Everything after what is written waits. */
    private void keepWaiting() {
        byte[] all = history.toByteArray();
        waiting.reset();
        waiting.write(all, (int) written, (int) (all.length - written));
    }

    /** Where it is written, or would be next if it cannot be at this moment; null if it was nowhere yet. */
    public @Nullable Path path() {
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

    /** Writes down what happened. When this returns, either the disk has it or the health says that it has not. */
    public JournalHealth append(LiveEvent event) {
        return append(List.of(event));
    }

    /** Writes several events down at once, in this order, as after a long gap. */
    public JournalHealth append(List<? extends LiveEvent> events) {
        for (LiveEvent event : events) {
            if (lines % LINES_BETWEEN_HEADERS == LINES_BETWEEN_HEADERS - 1) {
                add(header());
            }
            add(codec.write(new JournalLine.Event(machine.wall().instant(), nowS(), event)));
            waitingEvents++;
        }
        return retry();
    }

    /** Looks whether the journal is still where it was, and tries again to write what waits. */
    public JournalHealth retry() {
        boolean again = health instanceof JournalHealth.NotWriting;
        try {
            JournalPlace before = place;
            boolean lost = before != null && !holds(before);
            if (lost) {
                letGo();
            }
            JournalPlace now = placed();
            if (waiting.size() > 0) {
                torn = true;
                now.file().put(written, waiting.toByteArray());
                torn = false;
                written += waiting.size();
                waiting.reset();
            }
            waitingEvents = 0;
            if (lost) {
                tell("The journal was deleted or changed from outside, so it has been written out again, as "
                        + now.path().getFileName() + ".");
            } else if (again) {
                tell("Everything is being written down again, in the journal "
                        + now.path().getFileName() + ".");
            } else if (nowS() >= newsUntilS) {
                health = new JournalHealth.Writing();
            }
        } catch (IOException e) {
            if (!again) {
                LOG.log(System.Logger.Level.WARNING, "The journal " + path + " cannot be written", e);
            }
            if (e instanceof ClosedChannelException) {
                letGo();
            }
            health = notWriting(e);
        }
        return health;
    }

    private void tell(String news) {
        health = new JournalHealth.WritingAgain(news);
        newsUntilS = nowS() + NEWS_S;
    }

    private boolean holds(JournalPlace here) throws IOException {
        return here.holds() && (torn || here.file().length() == written);
    }

    private JournalPlace placed() throws IOException {
        JournalPlace now = place;
        if (now == null) {
            now = fresh.make();
            place = now;
            written = 0;
            torn = false;
            keepWaiting();
        }
        path = now.path();
        return now;
    }

    private JournalHealth notWriting(IOException e) {
        return new JournalHealth.NotWriting(
                "Nothing is being written down: " + why(e)
                        + ". The show goes on, but after a crash it would start from the last line written. Make room, or"
                        + " make the journal's folder writable.",
                waitingEvents);
    }

    private static String why(IOException e) {
        String message = e.getMessage();
        if (e instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be written to";
        }
        if (e instanceof FileAlreadyExistsException inTheWay) {
            return inTheWay.getFile() + " is in the way of the journals' folder";
        }
        String reason = e instanceof FileSystemException system ? system.getReason() : null;
        return reason != null ? reason : message == null ? e.getClass().getSimpleName() : message;
    }

    /** Whether everything that happened is on the disk. */
    public JournalHealth health() {
        return health;
    }

    /** Tries a last time to write what waits, and lets go of the file. */
    @Override
    public void close() {
        retry();
        letGo();
    }

    private void letGo() {
        JournalPlace now = place;
        place = null;
        if (now != null) {
            now.close();
        }
    }
}
