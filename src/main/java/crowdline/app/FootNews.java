package crowdline.app;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.JournalHealth;
import crowdline.live.LiveSnapshot;
import java.util.ArrayList;
import java.util.List;

/** What the foot line is told; from any thread. */
final class FootNews {
    /** What was found on opening the journal is shown this long into a session, seconds. */
    private static final double NOTICES_S = 6;
    /** A session that goes on shows it until this snapshot, however old it is. */
    private static final int NOTICES_SNAPSHOT = 4;

    private final WindowAhead window;
    /** What is said until it is mended, beside whatever else is said. */
    private volatile List<Mark> standing = List.of();

    FootNews(WindowAhead window) {
        this.window = window;
    }

    /** Says this, in place of what was said before. */
    void say(Mark mark) {
        send(new ArrayList<>(List.of(mark)));
    }

    /** Says these beside whatever else is said from now on, until told others. */
    void stand(List<Mark> marks) {
        standing = List.copyOf(marks);
    }

    /** Says what there is to say of a running show. */
    void sayOf(LiveSnapshot snapshot, double nowS) {
        send(banners(snapshot, nowS));
    }

    private void send(List<Mark> marks) {
        marks.addAll(standing);
        window.send(w -> w.showBanners(marks));
    }

    private static List<Mark> banners(LiveSnapshot snapshot, double nowS) {
        List<Mark> marks = new ArrayList<>();
        if (snapshot.journal() instanceof JournalHealth.NotWriting not) {
            marks.add(new Mark(Form.STOP, Tone.ALARM, not.reason()));
        }
        String refusal = snapshot.refusal();
        if (refusal != null) {
            marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, refusal));
        }
        if (nowS < NOTICES_S || snapshot.number() < NOTICES_SNAPSHOT) {
            snapshot.notices().forEach(n -> marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, n)));
        }
        return marks;
    }
}
