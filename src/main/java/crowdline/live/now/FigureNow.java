package crowdline.live.now;

/**
 * The figure being flown.
 *
 * @param index its place in the variant, from 0
 * @param figureId its id
 * @param timeInS seconds on its clock, without holds
 * @param leftS seconds expected until its end, 0 when it is over its time
 * @param overS seconds it is over its time, 0 or more
 * @param held true while its clock stands still
 * @param waitsForHand true if the clock moves the act but was wrong about this figure, and waits for a step by hand
 */
public record FigureNow(
        int index, String figureId, double timeInS, double leftS, double overS, boolean held, boolean waitsForHand) {

    /** How long it is expected to last, seconds. */
    public double wholeS() {
        return timeInS + leftS - overS;
    }
}
