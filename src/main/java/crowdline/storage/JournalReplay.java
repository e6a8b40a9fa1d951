package crowdline.storage;

import crowdline.live.Live;
import crowdline.live.LiveState;
import crowdline.live.Step;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a journal's bytes say.
 *
 * @param header its first line, or null if that cannot be read
 * @param state the state after everything that can be read
 * @param events how many events were read
 * @param base the last moment at which a process took up the journal
 * @param last the last moment known on the wall clock and the session's
 * @param good the lines that can be read, each without its line feed
 * @param damagedLines numbers, from 1, of whole lines that cannot be read
 * @param goodLength bytes up to the end of the last whole line
 * @param cutLine true if the file ends in the middle of a line, as after a crash
 */
record JournalReplay(
        JournalLine.@Nullable Header header,
        LiveState state,
        int events,
        JournalLine.@Nullable Base base,
        JournalLine.@Nullable Base last,
        List<String> good,
        List<Integer> damagedLines,
        long goodLength,
        boolean cutLine) {

    JournalReplay {
        good = List.copyOf(good);
        damagedLines = List.copyOf(damagedLines);
    }

    static JournalReplay of(byte[] bytes, JournalCodec codec) {
        return new Reading(codec).read(bytes);
    }

    /** The first line alone, so that old journals need not be read to their ends. */
    static Optional<JournalLine.Header> header(String firstLine, JournalCodec codec) {
        return codec.read(firstLine)
                .filter(JournalLine.Header.class::isInstance)
                .map(JournalLine.Header.class::cast)
                .filter(h -> h.version() == JournalCodec.VERSION);
    }

    private static final class Reading {
        private final JournalCodec codec;
        private JournalLine.@Nullable Header header;
        private LiveState state = LiveState.initial();
        private int events;
        private JournalLine.@Nullable Base base;
        private JournalLine.@Nullable Base last;
        private final List<String> good = new ArrayList<>();
        private final List<Integer> damaged = new ArrayList<>();

        Reading(JournalCodec codec) {
            this.codec = codec;
        }

        JournalReplay read(byte[] bytes) {
            int start = 0;
            int number = 0;
            for (int i = 0; i < bytes.length; i++) {
                if (bytes[i] == '\n') {
                    number++;
                    whole(new String(bytes, start, i - start, StandardCharsets.UTF_8), number);
                    start = i + 1;
                }
            }
            return new JournalReplay(header, state, events, base, last, good, damaged, start, start < bytes.length);
        }

        private void whole(String text, int number) {
            JournalLine line = codec.read(text).orElse(null);
            if (line == null || (number == 1) != (line instanceof JournalLine.Header)) {
                damaged.add(number);
                return;
            }
            good.add(text);
            if (line instanceof JournalLine.Header first) {
                header = first;
                base = first.base();
                last = first.base();
            } else if (line instanceof JournalLine.Resumed resumed) {
                base = resumed.base();
                last = resumed.base();
            } else if (line instanceof JournalLine.Event event) {
                events++;
                JournalLine.Base known = base;
                if (known != null) {
                    last = new JournalLine.Base(known.bootId(), known.nanos(), event.wall(), event.writtenAtS());
                }
                if (Live.next(state, event.event()) instanceof Step.Moved moved) {
                    state = moved.state();
                }
            }
        }
    }
}
