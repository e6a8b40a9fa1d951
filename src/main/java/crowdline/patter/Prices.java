package crowdline.patter;

import java.util.List;

/**
 * What a moment of each floating remark costs in the bound of a {@link Relaxation}, so that the bound is tight: a remark
 * that the relaxation would use twice becomes dearer, one it leaves out cheaper.
 */
final class Prices {
    /** Numbers the relaxation may fill in all its solutions, times choices; tuned likewise. 30,000 to 120,000 do. */
    private static final long RELAXATION_EFFORT = 60_000;

    private static final int MOST_SOLUTIONS = 30;

    private final Workload work;
    private final List<Item> floating;
    private final Relaxation relaxation;
    private long[] found;

    Prices(Workload work, List<Item> floating, Relaxation relaxation) {
        this.work = work;
        this.floating = floating;
        this.relaxation = relaxation;
        found = new long[floating.size()];
    }

    /**
     * Looks for the prices with the tightest bound, and leaves the relaxation solved with them.
     *
     * @param enough the least value that would be better than what is known
     * @return whether the bound alone shows that nothing better exists
     */
    boolean suffice(long enough) {
        long[] trial = firstPrices();
        long unit = unitOfPrice();
        long tightest = Long.MAX_VALUE;
        long effort = relaxation.cells() * Math.min(14, 2 + 2L * floating.size());
        int solutions = (int) Math.max(2, Math.min(MOST_SOLUTIONS, RELAXATION_EFFORT / Math.max(1, effort)));
        for (int round = 0; round < solutions; round++) {
            long bound = relaxation.solve(trial);
            if (bound < tightest) {
                tightest = bound;
                found = trial.clone();
            }
            if (tightest < enough) {
                return true;
            }
            int[] uses = relaxation.uses();
            double step = unit * 0.6 / (1 + round);
            boolean changed = false;
            for (int i = 0; i < trial.length; i++) {
                long greatest = floating.get(i).greatestValue();
                long moved = Math.round(trial[i] + step * (uses[i] - 1));
                moved = Math.max(0, Math.min(greatest, moved));
                changed |= moved != trial[i];
                trial[i] = moved;
            }
            if (!changed) {
                break;
            }
        }
        relaxation.solve(found);
        return false;
    }

    /** The prices found, one of each floating remark. */
    long[] found() {
        return found;
    }

    /** Prices that leave every floating remark worth the same for each tick it takes. */
    private long[] firstPrices() {
        double perTick = floating.stream()
                .mapToDouble(this::valuePerTick)
                .sorted()
                .skip(floating.size() / 2)
                .findFirst()
                .orElse(0);
        long[] first = new long[floating.size()];
        for (int i = 0; i < first.length; i++) {
            Item item = floating.get(i);
            double worthOfTime = perTick * (item.choices().get(0).length() + work.breath());
            first[i] = Math.max(0, item.greatestValue() - Math.round(worthOfTime));
        }
        return first;
    }

    private double valuePerTick(Item item) {
        return item.greatestValue() / (double) (item.choices().get(0).length() + work.breath());
    }

    private long unitOfPrice() {
        long[] values =
                floating.stream().mapToLong(Item::greatestValue).sorted().toArray();
        return values.length == 0 ? 0 : values[values.length / 2];
    }
}
