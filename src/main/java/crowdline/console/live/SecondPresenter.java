package crowdline.console.live;

import crowdline.console.live.Turns.OthersTurn;
import crowdline.console.live.next.NextView;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
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
                turn(moment, live, words),
                then(moment, live.handles().sayId(), words));
    }

    private static Mark turn(LiveMoment moment, LiveView live, ShowLookup words) {
        if (live.incident() != null) {
            return new Mark(Form.STOP, Tone.ALARM, "Incident: say nothing");
        }
        OthersTurn turn = Turns.of(moment, live.handles(), words).orElse(null);
        if (turn == null) {
            return new Mark(Form.RING, Tone.CALM, "The commentator speaks");
        }
        return new Mark(Form.UP, Tone.CAUTION, turn.now() ? "You speak now" : "You speak next");
    }

    /** @param sayId the remark on the screen, or null */
    private static String then(LiveMoment moment, @Nullable String sayId, ShowLookup words) {
        Placed placed = Turns.then(moment, sayId, words).orElse(null);
        if (placed == null) {
            return "";
        }
        Remark remark = words.remark(placed.remarkId()).orElseThrow();
        return "Then, in " + Seconds.left(placed.startS() - moment.now().nowS())
                + words.other(remark).map(name -> ", " + name).orElse("") + ": "
                + remark.words(placed.form() == RemarkForm.SHORT);
    }
}
