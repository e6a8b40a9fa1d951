package crowdline.live.state;

import java.util.List;

/** How long the figures of any act are expected to last. */
@FunctionalInterface
public interface ActDurations {
    /**
     * The durations of one variant.
     *
     * @param figureIds ids of its figures in the order flown, as the session knows them; the show file may have changed since
     */
    Durations of(String actId, String variant, List<String> figureIds);

    /** The durations of the act chosen in {@code state}; without an act there is no figure to ask about. */
    default Durations of(LiveState state) {
        String actId = state.actId();
        String variant = state.variant();
        return actId == null || variant == null
                ? index -> 0
                : of(actId, variant, state.course().figureIds());
    }
}
