package crowdline.telemetry.serial;

import java.util.List;

/**
 * Finds the speed of a receiver: listens at each in turn and takes the one at which whole sentences arrive. Without speeds
 * there is nothing to find.
 */
final class SpeedSearch {
    /** Sentences whose checksum is good; by chance one in 256 of noise is, and noise seldom looks like a sentence. */
    private static final int ENOUGH_SENTENCES = 2;
    /** Nanoseconds at one speed: a receiver speaks at least once a second, and one burst may be cut. Tuned. */
    private static final long LISTEN_NS = 2_500_000_000L;
    /** What no longer gives whole sentences was switched to another speed. Tuned: well over any pause of a receiver. */
    private static final long LOST_NS = 5_000_000_000L;

    private static final int LOST_BYTES = 500;

    private final List<Integer> speedsBaud;
    private int at;
    private boolean found;
    private long sinceNs;
    private long lastGood;
    private long bytes;

    SpeedSearch(List<Integer> speedsBaud) {
        this.speedsBaud = List.copyOf(speedsBaud);
        found = speedsBaud.isEmpty();
    }

    /** The speed to listen at; 0 where there is none. */
    int baud() {
        return speedsBaud.isEmpty() ? 0 : speedsBaud.get(at);
    }

    boolean isFound() {
        return found;
    }

    /** Whether anything at all was heard at this speed. */
    boolean hearsBytes() {
        return bytes > 0;
    }

    /** The link was opened; a speed found before is tried first. */
    void begin(long nowNs) {
        found = speedsBaud.isEmpty();
        sinceNs = nowNs;
        lastGood = 0;
        bytes = 0;
    }

    /**
     * Takes what was heard.
     *
     * @param good whole sentences since {@link #begin}
     * @return whether to go on to the next speed, which {@link #baud} then gives
     */
    boolean moveOn(long nowNs, int newBytes, long good) {
        if (speedsBaud.isEmpty()) {
            return false;
        }
        bytes += newBytes;
        found |= good >= ENOUGH_SENTENCES;
        if (found && good > lastGood) {
            lastGood = good;
            sinceNs = nowNs;
            bytes = 0;
        }
        boolean over = found
                ? nowNs - sinceNs > LOST_NS && bytes > LOST_BYTES
                : nowNs - sinceNs > LISTEN_NS && speedsBaud.size() > 1;
        if (over) {
            found = false;
            at = (at + 1) % speedsBaud.size();
        }
        return over;
    }
}
