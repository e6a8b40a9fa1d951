package crowdline.telemetry.serial;

import crowdline.telemetry.ReceiverFeed;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/** How well readings come in, over the last seconds. */
final class FeedHealth {
    /** Tuned: long enough to judge a receiver at once a second, short enough to see it get worse. */
    private static final long WINDOW_NS = 10_000_000_000L;
    /** Readings kept to find the usual interval from; bounds the work, whatever the rate. */
    private static final int MOST = 200;

    private final Deque<Arrival> arrivals = new ArrayDeque<>();
    private final Deque<Sum> sums = new ArrayDeque<>();
    private @Nullable Long lastNs;

    private record Arrival(long atNs, double tS) {}

    private record Sum(long atNs, long good, long bad) {}

    /** A reading arrived. */
    void reading(long nowNs, double tS) {
        arrivals.addLast(new Arrival(nowNs, tS));
        lastNs = nowNs;
        if (arrivals.size() > MOST) {
            arrivals.removeFirst();
        }
    }

    /** Bytes arrived; the counts are those of the feed so far. */
    void sentences(long nowNs, ReceiverFeed.Counts counts) {
        Sum last = sums.peekLast();
        if (last == null || last.good() != counts.good() || last.bad() != counts.bad()) {
            sums.addLast(new Sum(nowNs, counts.good(), counts.bad()));
        }
        while (sums.size() > 2 && nowNs - sums.getFirst().atNs() > WINDOW_NS) {
            sums.removeFirst();
        }
    }

    /** A new feed begins to count at 0. */
    void restart(long nowNs) {
        sums.clear();
        sums.addLast(new Sum(nowNs, 0, 0));
        arrivals.clear();
    }

    /** When the last reading arrived, or null before the first. */
    @Nullable
    Long lastNs() {
        return lastNs;
    }

    /** Readings a second, between the first and the last of the window. */
    double perS(long nowNs) {
        while (!arrivals.isEmpty() && nowNs - arrivals.getFirst().atNs() > WINDOW_NS) {
            arrivals.removeFirst();
        }
        if (arrivals.size() < 2) {
            return 0;
        }
        double seconds = (arrivals.getLast().atNs() - arrivals.getFirst().atNs()) / 1e9;
        return seconds <= 0 ? 0 : (arrivals.size() - 1) / seconds;
    }

    /** Share of the readings missing between those that came, by the receiver's own times, 0 to 1. */
    double lostShare() {
        if (arrivals.size() < 3) {
            return 0;
        }
        double[] times = arrivals.stream().mapToDouble(Arrival::tS).toArray();
        double[] steps = new double[times.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = times[i + 1] - times[i];
        }
        double[] sorted = steps.clone();
        Arrays.sort(sorted);
        double usual = sorted[(sorted.length - 1) / 2];
        double due = (times[times.length - 1] - times[0]) / usual;
        return Math.max(0, 1 - steps.length / Math.max(1, Math.rint(due)));
    }

    /** Share of damaged sentences, 0 to 1. */
    double badShare() {
        Sum from = sums.peekFirst();
        Sum to = sums.peekLast();
        if (from == null || to == null) {
            return 0;
        }
        long good = to.good() - from.good();
        long bad = to.bad() - from.bad();
        return good + bad == 0 ? 0 : (double) bad / (good + bad);
    }
}
