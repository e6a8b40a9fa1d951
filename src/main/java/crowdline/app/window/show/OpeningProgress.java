package crowdline.app.window.show;

import crowdline.app.window.work.FootMessages;
import crowdline.app.window.work.PendingWindow;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.place.EmptyShow;
import crowdline.console.theme.Tone;
import java.nio.file.Path;

/** Says what is being opened and how far that is, in the foot line and where a show would be. From any thread. */
final class OpeningProgress {
    private final PendingWindow window;
    private final FootMessages foot;
    private volatile String name = "";

    OpeningProgress(PendingWindow window, FootMessages foot) {
        this.window = window;
        this.foot = foot;
    }

    void begin(Path file) {
        name = String.valueOf(file.getFileName());
        foot.doing(new Mark(Form.RING, Tone.CALM, "Opening " + name + "…"));
        is("Reading it");
    }

    /** What is done just now. */
    void is(String doing) {
        EmptyShow.Shown shown = EmptyShow.Shown.opening(name, doing);
        window.send(w -> w.showEmpty(shown));
    }

    /** It is open, or it is not. */
    void end(boolean open) {
        EmptyShow.Shown shown = open ? EmptyShow.Shown.open(name) : EmptyShow.Shown.NOTHING;
        foot.doing(null);
        window.send(w -> w.showEmpty(shown));
    }
}
