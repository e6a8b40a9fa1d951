package crowdline.show.figure;

import crowdline.show.bounds.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A stretch in which nothing is said on purpose.
 *
 * @param fromS seconds after the start of its figure, 0 or more
 * @param toS seconds after the start of its figure, or null for the figure's end
 * @param why a word to the commentator, such as "let them hear the engine", or null
 */
public record Quiet(
        double fromS, @Nullable Double toS, @Nullable String why) {
    public Quiet {
        Quantity.QUIET_FROM_S.must(fromS);
        if (toS != null) {
            Quantity.QUIET_TO_S.must(toS);
        }
        if (toS != null && toS <= fromS) {
            throw new IllegalArgumentException("quiet toS is " + toS + "; it must be after fromS, " + fromS);
        }
    }
}
