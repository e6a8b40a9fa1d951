package crowdline.live.state;

import org.jspecify.annotations.Nullable;

/** Something the commentator wrote down, with the act and the figure at that moment. */
public record Note(
        double atS,
        String text,
        @Nullable String actId,
        @Nullable String figureId) {}
