package crowdline.patter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The moments, in ticks, at which one form of one remark may begin: closed ranges in order, none touching another. */
final class Starts {
    static final Starts NONE = new Starts(new int[0], new int[0]);

    /** A stretch from its first tick to the one after its last. */
    record Stretch(int from, int to) {}

    private final int[] lows;
    private final int[] highs;

    private Starts(int[] lows, int[] highs) {
        this.lows = lows;
        this.highs = highs;
    }

    /**
     * Starts from {@code low} to {@code high} at which something of a length keeps clear of every blocked stretch.
     *
     * @param blocked in the order of their starts
     * @param clear how many ticks to keep away from each
     */
    static Starts within(int low, int high, int length, List<Stretch> blocked, int clear) {
        List<int[]> ranges = new ArrayList<>();
        int from = low;
        for (Stretch stretch : blocked) {
            int last = Math.min(high, stretch.from() - clear - length);
            if (from <= last) {
                ranges.add(new int[] {from, last});
            }
            from = Math.max(from, stretch.to() + clear);
        }
        if (from <= high) {
            ranges.add(new int[] {from, high});
        }
        return of(ranges);
    }

    private static Starts of(List<int[]> ranges) {
        return new Starts(
                ranges.stream().mapToInt(r -> r[0]).toArray(),
                ranges.stream().mapToInt(r -> r[1]).toArray());
    }

    /** These starts and one more. */
    Starts and(int moment) {
        if (holds(moment)) {
            return this;
        }
        List<int[]> ranges = new ArrayList<>();
        for (int i = 0; i < lows.length; i++) {
            ranges.add(new int[] {lows[i], highs[i]});
        }
        ranges.add(new int[] {moment, moment});
        ranges.sort((a, b) -> Integer.compare(a[0], b[0]));
        return of(ranges);
    }

    boolean isEmpty() {
        return lows.length == 0;
    }

    boolean holds(int moment) {
        return earliest(moment) == moment;
    }

    int first() {
        return lows[0];
    }

    int last() {
        return highs[highs.length - 1];
    }

    /** The first start at or after a moment, or {@link Tick#NEVER}. */
    int earliest(int moment) {
        int i = indexOfHighAtLeast(moment);
        return i == highs.length ? Tick.NEVER : Math.max(moment, lows[i]);
    }

    /** The last start at or before a moment, or −{@link Tick#NEVER}. */
    int latest(int moment) {
        int i = indexOfHighAtLeast(moment);
        if (i < lows.length && lows[i] <= moment) {
            return moment;
        }
        return i == 0 ? -Tick.NEVER : highs[i - 1];
    }

    private int indexOfHighAtLeast(int moment) {
        if (highs.length == 1) {
            return highs[0] >= moment ? 0 : 1;
        }
        int i = Arrays.binarySearch(highs, moment);
        return i >= 0 ? i : -i - 1;
    }
}
