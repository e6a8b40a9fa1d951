package crowdline.patter;

import java.util.List;

/** What floating remarks are worth at the most, together: sums of eight bits at a time, for the innermost loop. */
final class Worths {
    private static final int BITS = 8;
    private static final int SUMS = 1 << BITS;

    private final long[] sums;

    /** @param floating the remarks, by their bits, at most {@link Search#MOST_FLOATING} */
    Worths(List<Item> floating) {
        int count = floating.size();
        sums = new long[(count + BITS - 1) / BITS * SUMS];
        for (int at = 0; at < sums.length; at++) {
            int bits = at % SUMS;
            if (bits != 0) {
                int bit = at / SUMS * BITS + Integer.numberOfTrailingZeros(bits);
                long worth = bit < count ? floating.get(bit).greatestValue() : 0;
                sums[at] = worth + sums[at - (bits & -bits)];
            }
        }
    }

    /** The sum of the greatest values of a set of remarks, a bit for each. */
    long of(long set) {
        long sum = 0;
        int table = 0;
        for (long left = set; left != 0; left >>>= BITS) {
            sum += sums[table + (int) (left & (SUMS - 1))];
            table += SUMS;
        }
        return sum;
    }
}
