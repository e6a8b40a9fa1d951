package crowdline.console.live.say;

import crowdline.console.live.row.LiveMoment;
import crowdline.flight.moment.FigureMoments;
import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import crowdline.live.now.Upcoming;
import crowdline.live.state.Talk;
import crowdline.loaded.ShowLookup;
import crowdline.patter.OwnTimes;
import crowdline.patter.PatterRules;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What F and the numbers can take at a moment. */
public final class Takeable {
    private Takeable() {}

    /**
     * Remarks of a kind within reach that are still to be said: of the figure, of the one after it, what can be told only now
     * of the one just flown, of the act, of the show.
     *
     * @param shownId the remark on the screen, which cannot be taken again, or null
     */
    public static List<Remark> of(
            LiveMoment moment, ShowLookup words, @Nullable Act act, RemarkKind kind, @Nullable String shownId) {
        Talk here = moment.state().talkHere();
        Talk ever = moment.state().talk();
        Set<String> untrue = words.shortened().untrue(act, moment.state().course());
        List<Remark> near = new ArrayList<>(ofFigures(moment, words, act));
        if (act != null) {
            near.addAll(act.remarks());
        }
        near.addAll(words.show().remarks());
        return near.stream()
                .distinct()
                .filter(r -> r.kind() == kind && !untrue.contains(r.id()))
                .filter(r -> !here.settled(r.id()) && !r.id().equals(shownId))
                .filter(r -> !(r.once() || kind == RemarkKind.FILLER) || !ever.settled(r.id()))
                .toList();
    }

    private static List<Remark> ofFigures(LiveMoment moment, ShowLookup words, @Nullable Act act) {
        LiveNow now = moment.now();
        List<Remark> near = new ArrayList<>();
        FigureNow figure = now.figure();
        if (figure != null) {
            near.addAll(inTime(words, moment, act, figure.figureId(), figure.timeInS()));
        }
        near.addAll(words.afterwards().ofJustFlown(act, moment.state().course()));
        if (!now.upcoming().isEmpty()) {
            Upcoming next = now.upcoming().get(0);
            Double inS = next.inS();
            near.addAll(inTime(words, moment, act, next.figureId(), inS == null ? 0 : -inS));
        }
        return near;
    }

    /** What may be said at a time of its figure: by its own times, or else by what it tells. */
    private static List<Remark> inTime(
            ShowLookup words, LiveMoment moment, @Nullable Act act, String figureId, double timeS) {
        FigureMoments moments =
                words.moments(moment.state().actId(), moment.state().variant(), figureId);
        return remarks(words, act, figureId).stream()
                .filter(r -> !words.afterwards().waits(r) && isInTime(r, moments, timeS))
                .toList();
    }

    private static boolean isInTime(Remark remark, FigureMoments moments, double timeS) {
        OwnTimes own = OwnTimes.of(remark, moments, PatterRules.DEFAULT);
        Double earliestS = own.earliestS();
        Double latestS = own.startByS() != null ? own.startByS() : own.latestS();
        return (earliestS == null || earliestS <= timeS) && (latestS == null || timeS <= latestS);
    }

    private static List<Remark> remarks(ShowLookup words, @Nullable Act act, String figureId) {
        return words.figure(act, figureId).map(Figure::remarks).orElse(List.of());
    }
}
