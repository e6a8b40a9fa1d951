package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a journal says.
 *
 * @param header the first line that says whose journal it is, or null if none can be read
 * @param sha256 hash of the show as it was when the journal was last taken up, or null if no header can be read
 * @param state the state after everything that can be read
 * @param events how many events were read
 * @param base the last moment at which a process knew all clocks
 * @param last the last moment known on the wall clock and the session's
 * @param actAtS the session's seconds of the last event of an act in the air, or null if no act ever began
 * @param good the lines that can be read, each without its line feed; none if they were not to be kept
 * @param damagedLines numbers, from 1, of lines in which something cannot be read
 * @param form what the file is as a whole
 * @param tooLarge true if it is larger than any show's and was not read to its end
 */
record JournalReplay(
        JournalLine.@Nullable Header header,
        @Nullable String sha256,
        LiveState state,
        int events,
        JournalLine.@Nullable Base base,
        JournalLine.@Nullable Base last,
        @Nullable Double actAtS,
        List<String> good,
        List<Integer> damagedLines,
        JournalLines.Form form,
        boolean tooLarge) {

    /** Characters of lines that can be read: an event every two seconds for a whole day. */
    static final int MOST_LENGTH = 8_000_000;

    private static final System.Logger LOG = System.getLogger(JournalReplay.class.getName());

    /** The first lines say whose journal it is; so much of it is looked at for that. */
    private static final int BEGINNING = 64 * 1024;

    JournalReplay {
        good = List.copyOf(good);
        damagedLines = List.copyOf(damagedLines);
    }

    /** Reads a whole journal. */
    static JournalReplay of(Path path, JournalCodec codec, boolean keepLines) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return of(in, codec, keepLines);
        }
    }

    static JournalReplay of(InputStream in, JournalCodec codec, boolean keepLines) throws IOException {
        Reading reading = new Reading(keepLines);
        return reading.done(JournalLines.read(in, codec, reading));
    }

    /** Whose journal it is, without reading it to its end. */
    static Optional<JournalLine.Header> header(Path path, JournalCodec codec) throws IOException {
        byte[] beginning;
        try (InputStream in = Files.newInputStream(path)) {
            beginning = in.readNBytes(BEGINNING);
        }
        FirstHeader first = new FirstHeader();
        var unused = JournalLines.read(new ByteArrayInputStream(beginning), codec, first);
        return Optional.ofNullable(first.header);
    }

    /** The events that can be read, in the order in which they were written. */
    static List<LiveEvent> written(Path path, JournalCodec codec) throws IOException {
        Events events = new Events();
        try (InputStream in = Files.newInputStream(path)) {
            var unused = JournalLines.read(in, codec, events);
        }
        return List.copyOf(events.all);
    }

    private static final class Events implements JournalLines.Sink {
        private final List<LiveEvent> all = new ArrayList<>();
        private long length;

        @Override
        public boolean good(int number, JournalLine line, String text) {
            length += text.length() + 1L;
            if (line instanceof JournalLine.Event event) {
                all.add(event.event());
            }
            return length <= MOST_LENGTH;
        }

        @Override
        public void bad(int number) {}
    }

    private static final class FirstHeader implements JournalLines.Sink {
        private JournalLine.@Nullable Header header;

        @Override
        public boolean good(int number, JournalLine line, String text) {
            if (line instanceof JournalLine.Header found) {
                header = found;
            }
            return header == null;
        }

        @Override
        public void bad(int number) {}
    }

    private static final class Reading implements JournalLines.Sink {
        private final boolean keepLines;
        private JournalLine.@Nullable Header header;
        private @Nullable String sha256;
        private LiveState state = LiveState.initial();
        private int events;
        private JournalLine.@Nullable Base base;
        private JournalLine.@Nullable Base last;
        private @Nullable Double actAtS;
        private final List<String> good = new ArrayList<>();
        private final List<Integer> damaged = new ArrayList<>();
        private long length;

        Reading(boolean keepLines) {
            this.keepLines = keepLines;
        }

        JournalReplay done(JournalLines.Form form) {
            return new JournalReplay(
                    header, sha256, state, events, base, last, actAtS, good, damaged, form, length > MOST_LENGTH);
        }

        @Override
        public void bad(int number) {
            if (damaged.isEmpty() || damaged.get(damaged.size() - 1) != number) {
                damaged.add(number);
            }
        }

        @Override
        public boolean good(int number, JournalLine line, String text) {
            length += text.length() + 1L;
            if (length > MOST_LENGTH) {
                return false;
            }
            if (line instanceof JournalLine.Event event && !take(event)) {
                bad(number);
                return true;
            }
            if (line instanceof JournalLine.Header found) {
                header = header == null ? found : header;
                sha256 = found.show().sha256();
                base = found.base();
                last = found.base();
            } else if (line instanceof JournalLine.Resumed resumed) {
                base = resumed.base();
                last = resumed.base();
            }
            if (keepLines) {
                good.add(text);
            }
            return true;
        }

        private boolean take(JournalLine.Event event) {
            Step step;
            try {
                step = Live.next(state, event.event());
            } catch (RuntimeException e) {
                // Whatever a line does to the state, it must not keep the show from going on after it.
                LOG.log(System.Logger.Level.ERROR, "Replaying " + event, e);
                return false;
            }
            events++;
            JournalLine.Base known = base;
            if (known != null) {
                last = new JournalLine.Base(known.bootId(), known.nanos(), event.wall(), event.writtenAtS());
            }
            if (step instanceof Step.Moved moved) {
                boolean before = state.course().inTheAir();
                state = moved.state();
                if (before || state.course().inTheAir()) {
                    actAtS = event.writtenAtS();
                }
            }
            return true;
        }
    }
}
