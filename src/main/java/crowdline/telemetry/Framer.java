package crowdline.telemetry;

import java.util.Optional;

/**
 * Cuts bytes into sentences, whatever the reads were. A sentence ends with its checksum, so that it counts at once and
 * line ends may be CR, LF, both or none. Bytes that are no text, such as the binary messages a receiver mixes in, only
 * end what they break into; a piece that does not even begin like a sentence is noise and is dropped.
 */
final class Framer {
    /** Characters. NMEA 0183 allows 82; receivers with more decimals exceed that a little. Tuned: more than twice it. */
    static final int LONGEST = 200;

    private static final int CR = 13;
    private static final int LF = 10;

    private final StringBuilder text = new StringBuilder(LONGEST + 1);
    private boolean inside;
    private int line = 1;
    private int startedOnLine = 1;
    private int before;

    /** Takes one byte; gives the frame it ends, if it ends one. */
    Optional<Frame> accept(byte next) {
        int c = next & 0xFF;
        Optional<Frame> ended = Optional.empty();
        if (c == '$' || c == '!') {
            ended = end(Frame.End.CUT);
            inside = true;
            startedOnLine = line;
            text.append((char) c);
        } else if (inside) {
            ended = grow(c);
        }
        if (c == CR || (c == LF && before != CR)) {
            line++;
        }
        before = c;
        return ended;
    }

    /** No more bytes come: gives what is left, if that began like a sentence. */
    Optional<Frame> finish() {
        return end(Frame.End.CUT);
    }

    private Optional<Frame> grow(int c) {
        if (c == CR || c == LF) {
            return end(Frame.End.LINE_END);
        }
        if (c < ' ' || c > '~') {
            return end(Frame.End.CUT);
        }
        text.append((char) c);
        int length = text.length();
        if (length > 3 && text.charAt(length - 3) == '*') {
            return end(Frame.End.CHECKSUM);
        }
        return length > LONGEST ? end(Frame.End.TOO_LONG) : Optional.empty();
    }

    private Optional<Frame> end(Frame.End end) {
        boolean sentence = inside && beginsLikeSentence();
        Optional<Frame> frame =
                sentence ? Optional.of(new Frame(text.toString(), startedOnLine, end)) : Optional.empty();
        inside = false;
        text.setLength(0);
        return frame;
    }

    /** A talker is two capital letters; proprietary sentences begin with P and a letter of the maker. */
    private boolean beginsLikeSentence() {
        return text.length() > 2 && isCapital(text.charAt(1)) && isCapital(text.charAt(2));
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }
}
