package crowdline.console.paint;

import crowdline.console.theme.Zoom;
import java.util.List;

/**
 * How large the texts of a place are at a zoom. At 100 % each is as large as it may be and as there is room for, the most
 * important first; from there all grow with the zoom, in the same order. None ever gets smaller: where there is no room
 * left it stays as it is, and where a more important one would fall too far behind the zoom, the least important leaves.
 *
 * <p>The way to a zoom leads through all smaller ones, so that no text is smaller at a larger zoom, and none comes back.
 */
public final class Growth {
    private static final int STEP_PERCENT = 10;
    /** Below this share of what the zoom asks of it a text has others leave for it. Tuned by looking. */
    private static final double LAG = 0.7;
    /** Nothing leaves for less than so much more size. */
    private static final double WORTH = 1.08;

    private static final double PRECISE_PX = 0.5;

    /**
     * A text, or several of one size.
     *
     * @param leastPx its size is never below this
     * @param mostPx its size at 100 % where there is room
     * @param mayLeave true if it may be left out for one more important
     * @param share how much of what the zoom adds it asks for: 1 for all, 0 for what does not grow
     */
    public record Item(double leastPx, double mostPx, boolean mayLeave, double share) {
        /** A text that is always there. */
        public static Item stays(double leastPx, double mostPx) {
            return new Item(leastPx, Math.max(leastPx, mostPx), false, 1);
        }

        /** A text that gives way. */
        public static Item leaves(double leastPx, double mostPx) {
            return new Item(leastPx, Math.max(leastPx, mostPx), true, 1);
        }

        /** The same, but asking for no more than a share of what the zoom adds. */
        public Item growingBy(double part) {
            return new Item(leastPx, mostPx, mayLeave, part);
        }

        /** Something that is there, of size 1, or gives way. */
        public static Item more() {
            return new Item(1, 1, true, 0);
        }
    }

    /** Whether a place has room for its texts. */
    public interface Room {
        /**
         * True if it has.
         *
         * @param sizesPx of the texts in the order of their importance; 0 for one left out
         */
        boolean holds(double[] sizesPx);
    }

    private final List<Item> items;
    private final Room room;
    private double[] sizes;

    private Growth(List<Item> items, Room room) {
        this.items = items;
        this.room = room;
        sizes = items.stream().mapToDouble(Item::leastPx).toArray();
    }

    /**
     * The sizes of texts.
     *
     * @param items the most important first
     * @return their sizes in pixels, 0 for what is left out
     */
    public static double[] sizes(List<Item> items, Room room, Zoom zoom) {
        Growth growth = new Growth(List.copyOf(items), room);
        growth.find(zoom.percent());
        return growth.sizes.clone();
    }

    private void find(int percent) {
        for (int i = items.size() - 1; i >= 0 && !room.holds(sizes); i--) {
            if (items.get(i).mayLeave()) {
                sizes[i] = 0;
            }
        }
        double[] base = items.stream().mapToDouble(Item::mostPx).toArray();
        grow(base);
        base = sizes.clone();
        for (int at = 100 + STEP_PERCENT; at <= percent; at += STEP_PERCENT) {
            double[] wished = new double[base.length];
            for (int i = 0; i < base.length; i++) {
                wished[i] = base[i] * (1 + items.get(i).share() * (at - 100) / 100.0);
            }
            grow(wished);
            makeRoom(wished);
        }
    }

    private void grow(double[] wished) {
        for (int i = 0; i < wished.length; i++) {
            sizes[i] = grown(sizes, i, wished[i]);
        }
    }

    /** How large one text can be, up to what is wished, with the others as they are. */
    private double grown(double[] others, int i, double wishedPx) {
        double[] trial = others.clone();
        if (trial[i] <= 0 || trial[i] >= wishedPx) {
            return trial[i];
        }
        trial[i] = wishedPx;
        if (room.holds(trial)) {
            return wishedPx;
        }
        double holds = others[i];
        double beyond = wishedPx;
        while (beyond - holds > PRECISE_PX) {
            trial[i] = (holds + beyond) / 2;
            if (room.holds(trial)) {
                holds = trial[i];
            } else {
                beyond = trial[i];
            }
        }
        return holds;
    }

    private void makeRoom(double[] wished) {
        for (int i = 0; i < wished.length; i++) {
            while (items.get(i).share() > 0 && sizes[i] > 0 && sizes[i] < LAG * wished[i] && leaves(i, wished)) {
                grow(wished);
            }
        }
    }

    /** Has the least important leave whose place lets this text grow; false if there is none. */
    private boolean leaves(int i, double[] wished) {
        for (int j = items.size() - 1; j > i; j--) {
            if (items.get(j).mayLeave() && sizes[j] > 0) {
                double[] without = sizes.clone();
                without[j] = 0;
                if (grown(without, i, wished[i]) >= sizes[i] * WORTH) {
                    sizes = without;
                    return true;
                }
            }
        }
        return false;
    }
}
