package crowdline.measure;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Finds a moment among things that follow each other in time. */
public final class InTime {
    private InTime() {}

    /**
     * How many are at this moment or before it, which is where the first after it stands.
     *
     * @param inOrder in the order of time
     * @param atS when each is, seconds
     */
    public static <T> int firstAfter(List<T> inOrder, ToDoubleFunction<? super T> atS, double tS) {
        int low = 0;
        int high = inOrder.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (atS.applyAsDouble(inOrder.get(middle)) <= tS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
