package crowdline.console;

import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.Timer;

/** What the foot line says: what Live warns of while it is shown, and the messages, until they are read or mended. */
final class FootLine {
    private static final int LOOK_MS = 500;

    private final FootBar bar;
    private final BooleanSupplier inLive;
    private final BooleanSupplier inIncident;
    private final Messages messages = new Messages();
    private final Timer looking = new Timer(LOOK_MS, e -> pass());
    private String speaker = "";
    private List<Mark> warnings = List.of();
    private List<Mark> shown = List.of();

    /**
     * @param inLive whether Live is in front
     * @param inIncident whether the incident page is in front of it
     */
    FootLine(Appearance appearance, BooleanSupplier inLive, BooleanSupplier inIncident) {
        bar = new FootBar(appearance);
        this.inLive = inLive;
        this.inIncident = inIncident;
    }

    FootBar bar() {
        return bar;
    }

    /** Says this until it can have been read. */
    void say(double atS, Mark mark) {
        messages.say(atS, mark);
        show();
        looking.start();
    }

    /** Says these until told others. */
    void stand(double atS, List<Mark> marks) {
        messages.stand(atS, marks);
        show();
    }

    /** What is said now, the most pressing first. */
    List<Mark> marks() {
        return shown;
    }

    /** All messages of the session, the newest first. */
    List<Messages.Said> all() {
        return messages.all();
    }

    /** What Live warns of, while it is shown. */
    void warn(List<Mark> marks) {
        warnings = List.copyOf(marks);
    }

    /** The user has done something, so what has been read may go. */
    void acted() {
        messages.acted();
        show();
    }

    /** Good news is no longer true; what asks for something stays. */
    void forgetGoodNews() {
        messages.forgetGoodNews();
        show();
    }

    /** @param name whose pace the times are for; empty for the default's */
    void showSpeaker(String name) {
        speaker = name;
        show();
    }

    private void pass() {
        if (bar.isShowing() && !shown.isEmpty()) {
            messages.pass(LOOK_MS / 1000.0, shown.get(0));
        }
        show();
        if (!messages.isWaiting()) {
            looking.stop();
        }
    }

    /** Paints what there is to say now. */
    void show() {
        boolean incident = inIncident.getAsBoolean();
        shown = messages.now(inLive.getAsBoolean() && !incident ? warnings : List.of());
        bar.show(new FootBar.Foot(shown, incident ? "" : FootBar.hint(speaker), incident ? "" : speaker));
    }
}
