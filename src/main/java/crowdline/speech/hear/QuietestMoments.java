package crowdline.speech.hear;

import java.util.ArrayDeque;
import java.util.Deque;

/** The quietest fifth of a second within the last four seconds of one band. Speech always leaves such a moment. */
final class QuietestMoments {
    /** Frames a level is smoothed over. Tuned. */
    private static final int MOMENT = 20;
    /** Frames looked back over. Tuned: longer than anybody speaks without a gap between words. */
    private static final int WITHIN = 400;

    private record Moment(long frame, double db) {}

    private final Deque<Double> recent = new ArrayDeque<>();
    /** Ever louder and later: the first is the quietest that is still within. */
    private final Deque<Moment> rising = new ArrayDeque<>();

    private double sumDb;
    private long frame;

    /**
     * Takes the next level.
     *
     * @return the quietest moment's, or {@link SoundLevels#SILENT_DB} before there were four seconds
     */
    double next(double db) {
        frame++;
        recent.addLast(db);
        sumDb += db;
        if (recent.size() > MOMENT) {
            sumDb -= recent.removeFirst();
        }
        double moment = nowDb();
        while (!rising.isEmpty() && rising.getLast().db() >= moment) {
            rising.removeLast();
        }
        rising.addLast(new Moment(frame, moment));
        if (rising.getFirst().frame() <= frame - WITHIN) {
            rising.removeFirst();
        }
        return frame < WITHIN ? SoundLevels.SILENT_DB : rising.getFirst().db();
    }

    /** The last fifth of a second's level. */
    double nowDb() {
        return sumDb / recent.size();
    }
}
