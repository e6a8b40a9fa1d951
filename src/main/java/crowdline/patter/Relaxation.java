package crowdline.patter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bound on what can still be gained from a point of the search on. It lets every floating remark be said as often as
 * one likes, but charges a price for each saying; what is charged for remarks not yet said is given back once. For any
 * prices that is never less than the best real plan (Lagrangian relaxation of "at most once"; A. M. Geoffrion,
 * "Lagrangean relaxation for integer programming", Mathematical Programming Study 2, 1974). Prices are moved a few times
 * towards the tightest bound by how often each remark was used too much or too little.
 *
 * <p>A point of the search is a stage and a moment: at stage i the bound remarks before i are said or given up. Floating
 * remarks are said at the latest stage possible, so a stage needs its moments only from {@link #from} to {@link #to}.
 */
final class Relaxation {
    /** Floating remarks whose lengths are this close count as one in a large workload, ticks. */
    private static final int COARSE_LENGTH = 5;

    private static final int FEW_CHOICES = 14;

    private record Priced(int length, long value, int bit, Starts starts) {}

    private final Workload work;
    private final List<Item> floating;
    private final int stages;
    private final int cell;
    private final int[] from;
    private final int[] to;
    private final long[][] ahead;
    private final Choice[][] bound;
    private Priced[] priced = {};

    /**
     * @param floating the floating remarks to reckon with
     * @param cell how many moments share one number, 1 for the tightest bound
     */
    Relaxation(Workload work, List<Item> floating, int cell) {
        this.work = work;
        this.floating = floating;
        this.cell = cell;
        stages = work.bound().size();
        bound = work.bound().stream()
                .map(item -> item.choices().toArray(Choice[]::new))
                .toArray(Choice[][]::new);
        from = new int[stages + 1];
        to = new int[stages + 1];
        ahead = new long[stages + 1][];
        int end = work.horizon().end();
        int earliestLater = end;
        for (int i = stages; i >= 1; i--) {
            earliestLater = Math.min(earliestLater, firstStart(work.bound().get(i - 1)));
            from[i] = earliestLater;
        }
        from[0] = work.horizon().freeFrom();
        for (int i = 0; i <= stages; i++) {
            to[i] = i == stages ? end : lastStart(work.bound().get(i));
            ahead[i] = new long[Math.max(0, (to[i] - from[i]) / cell + 1)];
        }
    }

    private static int firstStart(Item item) {
        return item.choices().stream().mapToInt(c -> c.starts().first()).min().orElseThrow();
    }

    private static int lastStart(Item item) {
        return item.choices().stream().mapToInt(c -> c.starts().last()).max().orElseThrow();
    }

    /** How many numbers one solution fills. */
    long cells() {
        return Arrays.stream(ahead).mapToLong(a -> a.length).sum();
    }

    /** First moment at which floating remarks are said at a stage. */
    int from(int stage) {
        return from[stage];
    }

    /** Last moment at which a stage's own remark can begin; after it there is nothing to do but go on. */
    int to(int stage) {
        return to[stage];
    }

    /**
     * Solves for prices.
     *
     * @param prices one for each floating remark, 0 or more
     * @return the bound on the whole plan
     */
    long solve(long[] prices) {
        priced = price(prices).toArray(Priced[]::new);
        for (int stage = stages; stage >= 0; stage--) {
            for (int i = ahead[stage].length - 1; i >= 0; i--) {
                ahead[stage][i] = best(stage, from[stage] + i * cell);
            }
        }
        return Arrays.stream(prices).sum() + ahead(0, from[0]);
    }

    /** The most that can be gained at a stage from a moment on, prices charged. */
    long ahead(int stage, int moment) {
        int s = stage;
        while (s < stages && moment > to[s]) {
            s++;
        }
        if (moment > to[s]) {
            return 0;
        }
        return ahead[s][Math.max(0, moment - from[s]) / cell];
    }

    private long best(int stage, int moment) {
        long best = 0;
        if (stage < stages) {
            best = ahead(stage + 1, moment);
            for (Choice choice : bound[stage]) {
                int start = choice.starts().earliest(moment);
                if (start != Tick.NEVER) {
                    best = Math.max(best, choice.value() + ahead(stage + 1, start + choice.length() + work.breath()));
                }
            }
        }
        for (Priced choice : priced) {
            int start = choice.starts().earliest(moment);
            if (start != Tick.NEVER) {
                best = Math.max(best, choice.value() + ahead(stage, start + choice.length() + work.breath()));
            }
        }
        return best;
    }

    private List<Priced> price(long[] prices) {
        int count = floating.stream().mapToInt(item -> item.choices().size()).sum();
        int grain = count > FEW_CHOICES ? COARSE_LENGTH : 1;
        List<Priced> all = new ArrayList<>();
        for (int i = 0; i < floating.size(); i++) {
            for (Choice choice : floating.get(i).choices()) {
                long value = choice.value() - prices[i];
                int length = Math.max(choice.length() / grain * grain, Math.min(choice.length(), cell));
                if (value > 0) {
                    all.add(new Priced(length, value, i, Starts.NONE));
                }
            }
        }
        all.sort(Comparator.comparingInt(Priced::length)
                .thenComparing(Comparator.comparingLong(Priced::value).reversed()));
        List<Priced> front = new ArrayList<>();
        Horizon horizon = work.horizon();
        boolean allKept = floating.stream()
                .allMatch(item -> Horizon.isKeptFromWatching(item.candidate().remark()));
        List<Starts.Stretch> closed = allKept ? horizon.closed() : horizon.quiets();
        for (Priced p : all) {
            if (front.isEmpty() || p.value() > front.get(front.size() - 1).value()) {
                Starts starts = Starts.within(horizon.freeFrom(), horizon.end() - p.length(), p.length(), closed, 0);
                front.add(new Priced(p.length(), p.value(), p.bit(), starts));
            }
        }
        return front;
    }

    /** How often the relaxed plan says each floating remark. */
    int[] uses() {
        int[] uses = new int[floating.size()];
        int stage = 0;
        int moment = from[0];
        while (stage <= stages) {
            if (moment > to[stage]) {
                stage++;
                continue;
            }
            int here = from[stage] + Math.max(0, moment - from[stage]) / cell * cell;
            long best = ahead(stage, here);
            int then = afterBound(stage, here, best);
            if (then != Tick.NEVER) {
                moment = then;
                stage++;
                continue;
            }
            Priced used = afterFloating(stage, here, best);
            if (used == null) {
                break;
            }
            uses[used.bit()]++;
            moment = used.starts().earliest(here) + used.length() + work.breath();
        }
        return uses;
    }

    private int afterBound(int stage, int here, long best) {
        if (stage == stages) {
            return Tick.NEVER;
        }
        if (best == ahead(stage + 1, here)) {
            return here;
        }
        for (Choice choice : bound[stage]) {
            int start = choice.starts().earliest(here);
            int then = start == Tick.NEVER ? Tick.NEVER : start + choice.length() + work.breath();
            if (then != Tick.NEVER && best == choice.value() + ahead(stage + 1, then)) {
                return then;
            }
        }
        return Tick.NEVER;
    }

    private @Nullable Priced afterFloating(int stage, int here, long best) {
        for (Priced choice : priced) {
            int start = choice.starts().earliest(here);
            if (start != Tick.NEVER && best == choice.value() + ahead(stage, start + choice.length() + work.breath())) {
                return choice;
            }
        }
        return null;
    }
}
