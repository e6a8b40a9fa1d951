package crowdline.telemetry.serial;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Lets the bytes of a pedal through and holds back those of a device that sends all the time, such as a receiver. A press
 * is a short message, perhaps the same again a few times: bytes are collected for a moment before they count, so that not
 * even the first of a stream gives a command. Time comes with the bytes; not for several threads.
 */
final class FootFilter {
    /**
     * After opening nothing counts for this long: a receiver sends once a second, and a board that is reset by opening its
     * port greets with a line. Tuned to be longer than both.
     */
    static final double LISTEN_FIRST_S = 2;

    /** Bytes are collected this long; at 4,800 baud some 28 of a stream arrive. Tuned: no foot notices it. */
    static final double COLLECT_S = 0.06;

    /** A message of a pedal is no longer, "BUTTON 1 DOWN" and a line end among them. Tuned to lie below the 28. */
    private static final int LONGEST_MESSAGE = 20;

    /** With the bounces of its contact a pedal's message comes again and again, but not more bytes than this. Tuned. */
    private static final int MOST_COLLECTED = 48;

    /** What dribbles in is judged over this long. */
    private static final double LOOK_BACK_S = 2;

    /** Different bytes within that time: more than all messages of a board of pedals have in them. Tuned. */
    private static final int MOST_DIFFERENT = 14;

    /** Bytes within that time: a line at 4,800 baud carries 960; a held pedal sends 15 bytes 30 times a second at most. */
    private static final int MOST_IN_ALL = 940;

    /** A stream is over when nothing came for this long: longer than what sends once a second is silent. */
    private static final double OVER_AFTER_S = 1.5;

    /** One greeting is no stream; what goes on for this long is told. */
    private static final double TELL_AFTER_S = 1;

    private final Deque<Heard> lately = new ArrayDeque<>();
    private final List<Heard> collected = new ArrayList<>();
    private final double listenUntilS;
    private double streamSinceS = Double.NaN;
    private double lastS = Double.NEGATIVE_INFINITY;

    private record Heard(int value, double atS) {}

    /** @param nowS when the port was opened, seconds on the machine's monotonic clock */
    FootFilter(double nowS) {
        listenUntilS = nowS + LISTEN_FIRST_S;
    }

    /** Takes a byte, 0 to 255, heard at this time. */
    void hear(int value, double atS) {
        if (atS - lastS >= OVER_AFTER_S) {
            streamSinceS = Double.NaN;
        }
        lastS = atS;
        Heard heard = new Heard(value, atS);
        lately.add(heard);
        if (lately.size() > MOST_IN_ALL + 1) {
            lately.remove();
        }
        if (collected.size() <= MOST_COLLECTED) {
            collected.add(heard);
        }
    }

    /** Those bytes, in order, that have turned out to be a foot's by now; ask at least every few hundredths of a second. */
    List<HeardSignal> let(double nowS) {
        if (collected.isEmpty() || nowS - collected.get(0).atS() < COLLECT_S) {
            return List.of();
        }
        List<Heard> message = List.copyOf(collected);
        collected.clear();
        if (!isMessage(message) || isMuch(nowS)) {
            streamSinceS = isStreaming() ? streamSinceS : message.get(0).atS();
        }
        if (isStreaming() || message.get(0).atS() < listenUntilS) {
            return List.of();
        }
        return message.stream()
                .map(h -> new HeardSignal(new ButtonSignal.Sent(h.value()), h.atS()))
                .toList();
    }

    /** True until it is known what is at the port. */
    boolean isListeningFirst(double nowS) {
        return nowS < listenUntilS;
    }

    /** True if this is a device that goes on sending. */
    boolean isStream(double nowS) {
        return isStreaming() && nowS - lastS < OVER_AFTER_S && lastS - streamSinceS >= TELL_AFTER_S;
    }

    private boolean isStreaming() {
        return !Double.isNaN(streamSinceS);
    }

    /** A short message, alone or again and again. */
    private static boolean isMessage(List<Heard> bytes) {
        if (bytes.size() <= LONGEST_MESSAGE) {
            return true;
        }
        if (bytes.size() > MOST_COLLECTED) {
            return false;
        }
        for (int length = 1; length <= LONGEST_MESSAGE; length++) {
            if (repeats(bytes, length)) {
                return true;
            }
        }
        return false;
    }

    private static boolean repeats(List<Heard> bytes, int length) {
        for (int i = length; i < bytes.size(); i++) {
            if (bytes.get(i).value() != bytes.get(i - length).value()) {
                return false;
            }
        }
        return true;
    }

    private boolean isMuch(double nowS) {
        while (!lately.isEmpty() && nowS - lately.element().atS() > LOOK_BACK_S) {
            lately.remove();
        }
        return lately.size() > MOST_IN_ALL
                || lately.stream().map(Heard::value).distinct().count() > MOST_DIFFERENT;
    }
}
