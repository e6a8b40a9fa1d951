package crowdline.show.figure;

import org.jspecify.annotations.Nullable;

/** Figures drawn as before, of which something else was asked: nothing is laid out again for it. */
public final class Redrawn {
    private Redrawn() {}

    /**
     * A figure of which that was asked.
     *
     * @param transit whether it only leads from one figure to the next
     */
    public static Figure asked(Figure f, @Nullable Asked asked, boolean transit) {
        return new Figure(
                f.id(),
                f.figure(),
                f.title(),
                f.look(),
                f.elements(),
                f.durationS(),
                f.exit(),
                f.minEntryKt(),
                asked,
                transit,
                f.quiets(),
                f.remarks());
    }
}
