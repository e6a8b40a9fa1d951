package crowdline.patter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The stretches in which a remark could still be said, in ticks: what is left of the horizon without what is closed to it, and without
 * what is placed and a breath around it.
 */
final class Gaps {
    private final Horizon horizon;
    private final int breath;
    /** In the order of their starts once {@code sorted}. */
    private final List<Starts.Stretch> blocked;

    private boolean sorted;

    /** @param closed the stretches of the horizon in which nothing of the kind asked about is said */
    Gaps(Horizon horizon, List<Starts.Stretch> closed, int breath) {
        this.horizon = horizon;
        blocked = new ArrayList<>(closed);
        this.breath = breath;
    }

    void take(int start, int end) {
        blocked.add(new Starts.Stretch(start - breath, end + breath));
        sorted = false;
    }

    List<Starts.Stretch> all() {
        return within(horizon.freeFrom(), horizon.end());
    }

    /** The stretches inside a range, in the order of time. */
    List<Starts.Stretch> within(int from, int to) {
        if (!sorted) {
            blocked.sort(Comparator.comparingInt(Starts.Stretch::from));
            sorted = true;
        }
        List<Starts.Stretch> free = new ArrayList<>();
        int at = Math.max(from, horizon.freeFrom());
        int end = Math.min(to, horizon.end());
        for (Starts.Stretch stretch : blocked) {
            if (stretch.from() >= end) {
                break;
            }
            if (Math.min(end, stretch.from()) > at) {
                free.add(new Starts.Stretch(at, Math.min(end, stretch.from())));
            }
            at = Math.max(at, stretch.to());
        }
        if (end > at) {
            free.add(new Starts.Stretch(at, end));
        }
        return free;
    }

    /** The longest stretch inside a range, 0 if there is none. */
    int longest(int from, int to) {
        return within(from, to).stream().mapToInt(s -> s.to() - s.from()).max().orElse(0);
    }
}
