package crowdline.app.window.work;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.now.JournalHealth;
import crowdline.live.now.LiveSnapshot;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the foot line is told; from any thread. */
public final class FootMessages {
    private final PendingWindow window;
    /** What is being done just now. */
    private volatile @Nullable Mark doing;
    /** What there is to say of the running show. */
    private volatile List<Mark> ofShow = List.of();
    /** What is said until it is mended, beside whatever else is said. */
    private volatile List<Mark> standing = List.of();

    public FootMessages(PendingWindow window) {
        this.window = window;
    }

    /** Says this once, until it can have been read. */
    public void say(Mark mark) {
        window.send(w -> w.say(mark));
    }

    /** Says that this is being done, in place of what was before; null for nothing. */
    public void doing(@Nullable Mark mark) {
        doing = mark;
        send();
    }

    /** Says these beside whatever else is said from now on, until told others. */
    public void stand(List<Mark> marks) {
        standing = List.copyOf(marks);
        send();
    }

    /** Says what there is to say of a running show. */
    public void sayOf(LiveSnapshot snapshot) {
        List<Mark> marks = banners(snapshot);
        if (!marks.equals(ofShow)) {
            ofShow = marks;
            send();
        }
    }

    /** Says what was found when the journal of a show was opened. */
    public void sayFound(List<String> notices) {
        notices.forEach(n -> say(new Mark(Form.DIAMOND, Tone.CAUTION, n)));
    }

    private void send() {
        List<Mark> marks = new ArrayList<>(ofShow);
        Mark now = doing;
        if (now != null) {
            marks.add(now);
        }
        marks.addAll(standing);
        window.send(w -> w.stand(marks));
    }

    /** What is said of a show at this moment. */
    public static List<Mark> banners(LiveSnapshot snapshot) {
        List<Mark> marks = new ArrayList<>();
        if (snapshot.journal() instanceof JournalHealth.NotWriting not) {
            marks.add(new Mark(Form.STOP, Tone.ALARM, not.reason()));
        } else if (snapshot.journal() instanceof JournalHealth.Slow slow) {
            marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, slow(slow.waiting())));
        } else if (snapshot.journal() instanceof JournalHealth.WritingAgain again) {
            marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, again.said()));
        }
        String refusal = snapshot.refusal();
        if (refusal != null) {
            marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, refusal));
        }
        return marks;
    }

    private static String slow(int waiting) {
        return "The disk is slow: "
                + (waiting == 1 ? "1 event is not written yet." : waiting + " events are not written yet.");
    }
}
