package crowdline.live.state;

/** How long each figure of the act being flown is expected to last. */
@FunctionalInterface
public interface Durations {
    /**
     * Expected length of one figure.
     *
     * @param index place of the figure in the variant, from 0
     * @return seconds, above 0
     */
    double secondsOf(int index);
}
