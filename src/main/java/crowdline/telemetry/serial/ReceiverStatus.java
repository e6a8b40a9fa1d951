package crowdline.telemetry.serial;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How it stands with a receiver.
 *
 * @param state in one word
 * @param name of the port or stream
 * @param baud the speed found, or null while it is not found or there is none
 * @param ageS seconds since the last reading arrived, or null before the first
 * @param readingsPerS over the last ten seconds
 * @param lostShare share of readings missing between those that came, 0 to 1
 * @param badShare share of damaged sentences, 0 to 1
 * @param text for the strip: one short phrase
 */
public record ReceiverStatus(
        State state,
        String name,
        @Nullable Integer baud,
        @Nullable Double ageS,
        double readingsPerS,
        double lostShare,
        double badShare,
        String text) {

    /** What state a receiver is in. */
    public enum State {
        /** The port cannot be opened; tried again every second. */
        REFUSED,
        /** The device went away; tried again every second. */
        GONE,
        /** Listening at one speed after another. */
        SEARCHING,
        /** Sentences come, but none with a position. */
        NO_FIX,
        /** Positions come. */
        RECEIVING,
        /** Positions came, and have stopped. */
        SILENT,
        /** The stream has come to its end. */
        ENDED,
        /** Closed by us. */
        CLOSED
    }

    /** Rates and shares as a phrase: "5.0 a second, last 0.2 s ago, 3% lost". */
    static String rates(double readingsPerS, double ageS, double lostShare, double badShare) {
        StringBuilder text = new StringBuilder(
                String.format(Locale.ROOT, "%.1f positions a second, the last %.1f s ago", readingsPerS, ageS));
        appendShare(text, lostShare, "lost");
        appendShare(text, badShare, "damaged");
        return text.toString();
    }

    private static void appendShare(StringBuilder text, double share, String what) {
        if (share >= 0.005) {
            text.append(String.format(Locale.ROOT, ", %.0f%% %s", 100 * share, what));
        }
    }
}
