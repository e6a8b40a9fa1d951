package crowdline.console.live.now;

import crowdline.console.live.row.LiveMoment;
import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.live.now.FigureNow;
import crowdline.loaded.ShowLookup;
import crowdline.show.figure.MomentKind;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Says which moment of its figure the aircraft is in. Where the aircraft is followed and sure, that is where it is in the
 * figure; else it is the figure's clock. By the clock a moment is said from its most likely time on, never from the early
 * end of its band, and what is to come is called so: what surely has not come is never said to be there. Once the figure
 * is over its time, or stands still, nothing more is expected.
 */
final class SeenPresenter {
    private SeenPresenter() {}

    static SeenView of(LiveMoment moment, ShowLookup words, FigureNow figure) {
        FigureMoments moments =
                words.moments(moment.state().actId(), moment.state().variant(), figure.figureId());
        OptionalDouble byAircraft =
                moment.tracking().inFigureS(figure.index(), moment.now().nowS(), figure.wholeS());
        boolean followed = byAircraft.isPresent() && !figure.held();
        double inS = followed ? byAircraft.getAsDouble() : figure.timeInS();
        String now = "";
        String next = "";
        for (Moment seen : moments.moments()) {
            String word = word(seen);
            if (!word.isEmpty() && seen.afterS() <= inS) {
                now = word;
            } else if (!word.isEmpty() && next.isEmpty()) {
                next = word;
            }
        }
        boolean standsStill = figure.held() || (!followed && figure.isOver());
        return new SeenView(
                now.isEmpty() ? "" : now.substring(0, 1).toUpperCase(Locale.ROOT) + now.substring(1),
                standsStill ? "" : next);
    }

    /** The rows of figures say already that one begins and that it is over; which of several it is, everybody sees. */
    private static String word(Moment moment) {
        MomentKind kind = moment.name().kind();
        return kind == MomentKind.BEGINS || kind == MomentKind.FLIES_OUT ? "" : kind.words();
    }
}
