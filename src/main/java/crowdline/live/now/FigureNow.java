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
 * @param pause what lies between it and the next
 * @param waitsForHand true if the clock moves the act but was wrong about this figure, and waits for a step by hand
 */
public record FigureNow(
        int index,
        String figureId,
        double timeInS,
        double leftS,
        double overS,
        Pause pause,
        boolean held,
        boolean waitsForHand) {

    /**
     * Time between two figures that belongs to neither.
     *
     * @param goneS seconds of it that are over, 0 while the figure is flown
     * @param leftS seconds of it to come
     */
    public record Pause(double goneS, double leftS) {
        public static final Pause NONE = new Pause(0, 0);

        /** Of a length, at so many seconds after its beginning, negative before. */
        static Pause at(double lengthS, double sinceS) {
            double goneS = Math.max(0, Math.min(lengthS, sinceS));
            return new Pause(goneS, lengthS - goneS);
        }
    }

    /** With the next right after it. */
    public FigureNow(
            int index,
            String figureId,
            double timeInS,
            double leftS,
            double overS,
            boolean held,
            boolean waitsForHand) {
        this(index, figureId, timeInS, leftS, overS, Pause.NONE, held, waitsForHand);
    }

    /** True once it has had its time, whether or not the next is late. */
    public boolean isOver() {
        return overS > 0 || pause.goneS() > 0;
    }

    /** Seconds expected until the next begins. */
    public double untilNextS() {
        return leftS + pause.leftS();
    }

    /** How long it is expected to last, seconds. */
    public double wholeS() {
        return timeInS + leftS - overS - pause.goneS();
    }
}
