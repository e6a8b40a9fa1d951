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

    /**
     * What lies between a figure and the one after it and belongs to neither, as where the list has a clock of its own.
     *
     * @param index place of the figure in the variant, from 0
     * @param next place of the one that is flown after it
     * @return seconds, 0 or more
     */
    default double pauseS(int index, int next) {
        return 0;
    }
}
