package crowdline.telemetry;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sentences for tests. */
final class Nmea {
    private Nmea() {}

    /** The text between the dollar and the star, made a sentence with its checksum and no line end. */
    static String sentence(String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        return String.format(Locale.ROOT, "$%s*%02X", body, sum);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static Sentence decode(String sentence) {
        List<Frame> frames = frames(bytes(sentence + "\r\n"));
        if (frames.size() != 1) {
            throw new AssertionError(sentence + " gave " + frames);
        }
        return NmeaDecoder.decode(frames.get(0));
    }

    static List<Frame> frames(byte[] bytes) {
        Framer framer = new Framer();
        List<Frame> frames = new ArrayList<>();
        for (byte b : bytes) {
            framer.accept(b).ifPresent(frames::add);
        }
        framer.finish().ifPresent(frames::add);
        return frames;
    }
}
