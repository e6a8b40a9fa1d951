package crowdline.console.live.say;

import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import crowdline.loaded.ShowLookup;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Quiet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A quiet that is on.
 *
 * @param fromS when it began, session's seconds
 * @param toS when it ends
 * @param why a word to the commentator, or empty
 */
record QuietNow(double fromS, double toS, String why) {

    /** The quiet of the figure being flown, if the moment lies in one; none on hold, when nothing of it is to be heard. */
    static @Nullable QuietNow of(LiveNow now, @Nullable Act act, ShowLookup words) {
        FigureNow figure = now.figure();
        if (figure == null || figure.held()) {
            return null;
        }
        double startS = now.nowS() - figure.timeInS();
        double endS = now.nowS() + figure.leftS();
        for (Quiet quiet :
                words.figure(act, figure.figureId()).map(Figure::quiets).orElse(List.of())) {
            Double to = quiet.toS();
            double fromS = startS + quiet.fromS();
            double toS = to == null ? endS : Math.min(endS, startS + to);
            if (fromS <= now.nowS() && now.nowS() < toS) {
                String why = quiet.why();
                return new QuietNow(fromS, toS, why == null ? "" : why);
            }
        }
        return null;
    }
}
