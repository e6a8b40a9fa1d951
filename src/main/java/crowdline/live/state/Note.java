package crowdline.live.state;

import org.jspecify.annotations.Nullable;

/**
 * A moment the commentator wants to come back to, with the act and the figure then.
 *
 * @param text what was written down; empty if only the time was noted
 */
public record Note(
        double atS,
        String text,
        @Nullable String actId,
        @Nullable String figureId) {}
