package crowdline.console.live;

import crowdline.live.FigureNow;
import crowdline.live.LiveNow;
import crowdline.live.Talk;
import crowdline.show.Act;
import crowdline.show.Remark;
import crowdline.show.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What F and the numbers can take at a moment. */
final class Takeable {
    private Takeable() {}

    /**
     * Remarks of a kind within reach that are still to be said, those of the figure first.
     *
     * @param shownId the remark on the screen, which cannot be taken again, or null
     */
    static List<Remark> of(
            Moment moment, ShowWords words, @Nullable Act act, RemarkKind kind, @Nullable String shownId) {
        LiveNow now = moment.now();
        List<String> figures = new ArrayList<>();
        FigureNow figure = now.figure();
        if (figure != null) {
            figures.add(figure.figureId());
        }
        if (!now.upcoming().isEmpty()) {
            figures.add(now.upcoming().get(0).figureId());
        }
        Talk here = moment.state().talkHere();
        Talk ever = moment.state().talk();
        return words.within(act, figures, kind).stream()
                .filter(r -> !here.settled(r.id()) && !r.id().equals(shownId))
                .filter(r -> !r.once() || !ever.settled(r.id()))
                .toList();
    }
}
