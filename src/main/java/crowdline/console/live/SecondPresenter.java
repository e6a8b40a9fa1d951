package crowdline.console.live;

import crowdline.console.live.next.NextView;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.live.state.Talk;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Decides what the second window shows. Pure. */
public final class SecondPresenter {
    private SecondPresenter() {}

    /**
     * What is seen of a moment: nothing that only a key could take.
     *
     * @param live what Live shows of it
     */
    public static SecondView of(LiveMoment moment, LiveView live, ShowLookup words) {
        NextView next = live.next();
        NextView read = new NextView(
                next.caption(),
                next.in(),
                next.swapped(),
                next.where(),
                next.name(),
                next.call(),
                next.later(),
                List.of());
        return new SecondView(
                new LiveView(
                        live.strip(), live.now(), live.say(), read, live.incident(), List.of(), Handles.NONE, null),
                turn(moment, live),
                then(moment, live.handles().sayId(), words));
    }

    private static Mark turn(LiveMoment moment, LiveView live) {
        if (live.incident() != null) {
            return new Mark(Form.STOP, Tone.ALARM, "Incident: say nothing");
        }
        return moment.state().otherSpeaks()
                ? new Mark(Form.UP, Tone.CAUTION, "You speak next")
                : new Mark(Form.RING, Tone.CALM, "The commentator speaks");
    }

    /** @param sayId the remark on the screen, or null */
    private static String then(LiveMoment moment, @Nullable String sayId, ShowLookup words) {
        Talk here = moment.state().talkHere();
        double nowS = moment.now().nowS();
        for (Placed placed : moment.plan().placed()) {
            Remark remark = words.remark(placed.remarkId()).orElse(null);
            if (remark != null && !placed.remarkId().equals(sayId) && !here.settled(placed) && placed.startS() > nowS) {
                return "Then, in " + Seconds.left(placed.startS() - nowS) + ": "
                        + remark.words(placed.form() == RemarkForm.SHORT);
            }
        }
        return "";
    }
}
