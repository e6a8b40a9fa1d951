package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Placing;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One way an act can be flown, chosen by the cloud base.
 *
 * @param name such as "full", "rolling", "flat"
 * @param minCloudBaseFt lowest cloud base in feet for which this variant was agreed, or null if it was not given
 * @param entry where the aircraft is when its first figure begins; null for where the act begins
 * @param order ids of the act's figures in the order flown, each at most once
 */
public record Variant(
        String name,
        @Nullable Double minCloudBaseFt,
        @Nullable Placing entry,
        List<String> order) {
    public Variant {
        Most.mustBeText("variant name", name);
        if (minCloudBaseFt != null) {
            Quantity.MIN_CLOUD_BASE_FT.must(minCloudBaseFt);
        }
        Most.ORDER.must(order);
        order = List.copyOf(order);
    }

    /** A variant that begins where its act does. */
    public Variant(String name, @Nullable Double minCloudBaseFt, List<String> order) {
        this(name, minCloudBaseFt, null, order);
    }

    /** Whether no figure stands in it twice; a second one would need an id of its own. */
    public boolean fliesEachOnce() {
        return new HashSet<>(order).size() == order.size();
    }

    /** The same with its figures in another order. */
    public Variant inOrder(List<String> ids) {
        return new Variant(name, minCloudBaseFt, entry, ids);
    }

    /** The same begun elsewhere; null for where the act begins. */
    public Variant from(@Nullable Placing other) {
        return new Variant(name, minCloudBaseFt, other, order);
    }

    /** The same under another name, agreed for another cloud base. */
    public Variant agreed(String other, @Nullable Double baseFt) {
        return new Variant(other, baseFt, entry, order);
    }

    /**
     * Whether a variant may be flown under a cloud base: one without a base of its own serves any.
     *
     * @param minCloudBaseFt lowest cloud base it was agreed for, or null
     * @param cloudBaseFt the cloud base of the day, or null if none was measured
     */
    public static boolean isAgreed(@Nullable Double minCloudBaseFt, @Nullable Double cloudBaseFt) {
        return cloudBaseFt == null || minCloudBaseFt == null || minCloudBaseFt <= cloudBaseFt;
    }
}
