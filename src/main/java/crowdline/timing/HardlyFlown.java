package crowdline.timing;

import java.util.Optional;

/**
 * Whether the times of a pass can hardly be those of a flight: a rehearsal that was clicked through, or left standing. More
 * than half of its figures have to say so, for one figure may be flown in another way, or was only given a time. By judgement,
 * no source: no pilot flies a loop in half the time of the tightest one.
 */
public final class HardlyFlown {
    /** Shorter than this share of the lower end of its band. */
    private static final double SHORT = 0.5;
    /** Longer than this many times the upper end. */
    private static final double LONG = 3;

    private HardlyFlown() {}

    /**
     * True if more than half of its figures lasted so.
     *
     * @param expected how long its figures were thought to last
     */
    public static boolean in(Pass pass, ActTimes expected) {
        int judged = 0;
        int hardly = 0;
        for (Pass.TimedFigure timed : pass.figures()) {
            Optional<FigureTime> usual = expected.figures().stream()
                    .filter(f -> f.figureId().equals(timed.figureId()))
                    .findFirst();
            if (usual.isPresent()) {
                judged++;
                double lastsS = timed.durationS();
                hardly += lastsS < SHORT * usual.get().lowS()
                                || lastsS > LONG * usual.get().highS()
                        ? 1
                        : 0;
            }
        }
        return 2 * hardly > judged;
    }
}
