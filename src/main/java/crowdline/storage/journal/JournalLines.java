package crowdline.storage.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Takes the lines that can be read out of a journal's bytes, whatever stands between them: a flipped bit, a run of zeros, a
 * line that was cut or ran into the next one costs that line and no other. Needs the memory of one line, however large the
 * file is.
 */
final class JournalLines {
    /** Bytes of a line. An act of 5,000 figures takes a hundredth of this. */
    static final int LONGEST_LINE = 4_000_000;

    private static final int CHUNK = 64 * 1024;
    /** How a line can begin. Within a line these cannot stand: there every quotation mark in a text has a backslash before it. */
    private static final byte[][] BEGINNINGS = {
        ascii("{\"event\":"), ascii("{\"crowdlineJournal\":"), ascii("{\"resumed\":")
    };

    private final JournalCodec codec;
    private final Sink sink;
    private byte[] held = new byte[CHUNK];
    private int length;
    private int number = 1;
    /** Bytes of this line that can be no part of what is read. */
    private long lost;

    private boolean clean = true;
    private boolean more = true;

    /** Takes what is read. */
    interface Sink {
        /**
         * A line that can be read.
         *
         * @param number of the line in the file, from 1
         * @param text without its line feed
         * @return false to read no further
         */
        boolean good(int number, JournalLine line, String text);

        /** Something in the line of this number, from 1, cannot be read. */
        void bad(int number);
    }

    /** What the file is as a whole. */
    enum Form {
        /** The lines that can be read, each with its line feed, and nothing else. */
        CLEAN,
        /** The same, and then a line without its line feed or only its beginning, as after a crash. */
        CUT,
        /** Anything else. */
        DAMAGED
    }

    private JournalLines(JournalCodec codec, Sink sink) {
        this.codec = codec;
        this.sink = sink;
    }

    static Form read(InputStream in, JournalCodec codec, Sink sink) throws IOException {
        return new JournalLines(codec, sink).read(in);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private Form read(InputStream in) throws IOException {
        byte[] chunk = new byte[CHUNK];
        for (int count = in.read(chunk); more && count >= 0; count = in.read(chunk)) {
            int from = 0;
            for (int i = 0; more && i < count; i++) {
                if (chunk[i] == '\n') {
                    hold(chunk, from, i);
                    whole();
                    from = i + 1;
                    number++;
                }
            }
            hold(chunk, from, more ? count : from);
        }
        return more ? rest() : Form.DAMAGED;
    }

    private void hold(byte[] chunk, int from, int to) {
        int count = to - from;
        if (length + count > LONGEST_LINE) {
            // Far too long for one line; what may still become one is kept.
            int done = pieces();
            int keep = Math.min(length - done, LONGEST_LINE / 2);
            lost += length - done - keep;
            System.arraycopy(held, length - keep, held, 0, keep);
            length = keep;
            clean = false;
        }
        if (length + count > held.length) {
            held = Arrays.copyOf(held, Math.min(LONGEST_LINE, Math.max(length + count, 2 * held.length)));
        }
        System.arraycopy(chunk, from, held, length, count);
        length += count;
    }

    /** A line is over. */
    private void whole() {
        Optional<JournalLine> line = lost > 0 ? Optional.empty() : codec.read(held, 0, length);
        if (line.isPresent()) {
            good(line.get(), 0, length);
        } else {
            clean = false;
            int done = pieces();
            lost += length - done;
            // One byte is a line feed that was changed, or one of another system's.
            if (lost > 1) {
                sink.bad(number);
            }
        }
        length = 0;
        lost = 0;
    }

    private void good(JournalLine line, int from, int to) {
        more = more && sink.good(number, line, new String(held, from, to - from, StandardCharsets.UTF_8));
    }

    /** Takes whatever can be read in the bytes held, and tells where the last of it ends; what lies between is lost. */
    private int pieces() {
        int done = 0;
        int from = 0;
        for (int end = JournalCodec.endOfLine(held, 0, length); end >= 0; ) {
            int begin = lastBeginning(from, end);
            Optional<JournalLine> line = begin < 0 ? Optional.empty() : codec.read(held, begin, end);
            if (line.isPresent()) {
                lost += begin - done;
                good(line.get(), begin, end);
                done = end;
            }
            from = end;
            end = JournalCodec.endOfLine(held, end, length);
        }
        return done;
    }

    private int lastBeginning(int from, int to) {
        for (int at = to - 1; at >= from; at--) {
            if (held[at] == '{') {
                for (byte[] beginning : BEGINNINGS) {
                    if (at + beginning.length <= to
                            && Arrays.equals(held, at, at + beginning.length, beginning, 0, beginning.length)) {
                        return at;
                    }
                }
            }
        }
        return -1;
    }

    /** What comes after the last line feed. */
    private Form rest() {
        if (length == 0) {
            return clean ? Form.CLEAN : Form.DAMAGED;
        }
        Optional<JournalLine> line = lost > 0 ? Optional.empty() : codec.read(held, 0, length);
        if (line.isPresent()) {
            good(line.get(), 0, length);
        } else if (lost > 0 || held[0] != '{' || hasZero() || JournalCodec.endOfLine(held, 0, length) >= 0) {
            whole();
        }
        return clean ? Form.CUT : Form.DAMAGED;
    }

    private boolean hasZero() {
        for (int i = 0; i < length; i++) {
            if (held[i] == 0) {
                return true;
            }
        }
        return false;
    }
}
