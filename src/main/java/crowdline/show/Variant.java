package crowdline.show;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One way an act can be flown, chosen by the cloud base.
 *
 * @param name such as "full", "rolling", "flat"
 * @param minCloudBaseFt lowest cloud base in feet for which this variant was agreed, or null if it was not given
 * @param order ids of the act's figures in the order flown, each at most once
 */
public record Variant(String name, @Nullable Double minCloudBaseFt, List<String> order) {
    public Variant {
        Most.mustBeText("variant name", name);
        if (minCloudBaseFt != null) {
            Quantity.MIN_CLOUD_BASE_FT.must(minCloudBaseFt);
        }
        Most.ORDER.must(order);
        order = List.copyOf(order);
    }

    /** The same with its figures in another order. */
    public Variant inOrder(List<String> ids) {
        return new Variant(name, minCloudBaseFt, ids);
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
