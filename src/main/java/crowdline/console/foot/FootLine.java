package crowdline.console.foot;

import crowdline.console.keys.CommandAction;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.BorderLayout;
import java.awt.Insets;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Timer;

/** What the foot line says: what Live warns of while it is shown, and the messages, until they are read or mended. */
public final class FootLine {
    private static final int LOOK_MS = 500;
    /** The words of the button fill this much of the line's height; tuned. */
    private static final double LARGEST_OF_HEIGHT = 0.5;

    private final FootBar bar;
    private final JPanel row = new Row();
    private final JButton incident;
    private final BooleanSupplier inLive;
    private final BooleanSupplier inIncident;
    private final Messages messages = new Messages();
    private final Timer looking = new Timer(LOOK_MS, e -> pass());
    private String speaker = "";
    private List<Mark> warnings = List.of();
    private List<Mark> shown = List.of();

    /**
     * @param incident opens the incident page
     * @param inLive whether Live is in front
     * @param inIncident whether the incident page is in front of it
     */
    public FootLine(Appearance appearance, CommandAction incident, BooleanSupplier inLive, BooleanSupplier inIncident) {
        bar = new FootBar(appearance);
        this.incident = new JButton(incident);
        this.incident.setText(incident.keyInWords() + " " + incident.command().label());
        this.incident.setToolTipText(null);
        this.incident.setFocusable(false);
        this.incident.setMargin(new Insets(0, 8, 0, 8));
        row.add(this.incident, BorderLayout.WEST);
        row.add(bar, BorderLayout.CENTER);
        dress(appearance);
        this.inLive = inLive;
        this.inIncident = inIncident;
    }

    public FootBar bar() {
        return bar;
    }

    /** The way to the incident page, which no message covers, and the messages beside it. */
    public JComponent row() {
        return row;
    }

    public void dress(Appearance appearance) {
        bar.dress(appearance);
        row.setBackground(appearance.palette().ground());
        double most = bar.getPreferredSize().height * LARGEST_OF_HEIGHT;
        incident.setFont(appearance.theme().typeface().strong(Math.min(appearance.sizePx(TextRole.SMALL, 1), most)));
    }

    /** Says this until it can have been read. */
    public void say(double atS, Mark mark) {
        messages.say(atS, mark);
        show();
        look();
    }

    /** What waits goes on waiting when its window is closed, but a timer that runs on would keep the program from ending. */
    private void look() {
        if (row.isDisplayable() && messages.isWaiting()) {
            looking.start();
        } else {
            looking.stop();
        }
    }

    boolean isLooking() {
        return looking.isRunning();
    }

    private final class Row extends JPanel {
        Row() {
            super(new BorderLayout());
        }

        @Override
        public void addNotify() {
            super.addNotify();
            look();
        }

        @Override
        public void removeNotify() {
            super.removeNotify();
            look();
        }
    }

    /** Says these until told others. */
    public void stand(double atS, List<Mark> marks) {
        messages.stand(atS, marks);
        show();
    }

    /** What is said now, the most pressing first. */
    List<Mark> marks() {
        return shown;
    }

    /** All messages of the session, the newest first. */
    public List<Messages.Said> all() {
        return messages.all();
    }

    /** What Live warns of, while it is shown. */
    public void warn(List<Mark> marks) {
        warnings = List.copyOf(marks);
    }

    /** The user has done something, so what has been read may go. */
    public void acted() {
        messages.acted();
        show();
    }

    /** Good news is no longer true; what asks for something stays. */
    public void forgetGoodNews() {
        messages.forgetGoodNews();
        show();
    }

    /** These words are no longer true: what went wrong went right since. */
    public void unsay(String words) {
        messages.unsay(words);
        show();
    }

    /**
     * Says whose pace the times are for.
     *
     * @param name whose pace the times are for; empty for the default's
     */
    public void showSpeaker(String name) {
        speaker = name;
        show();
    }

    private void pass() {
        if (bar.isShowing() && !shown.isEmpty()) {
            messages.pass(LOOK_MS / 1000.0, shown.get(0));
        }
        show();
        look();
    }

    /** Paints what there is to say now. */
    public void show() {
        boolean open = inIncident.getAsBoolean();
        shown = messages.now(inLive.getAsBoolean() && !open ? warnings : List.of());
        bar.show(new FootBar.Foot(shown, open ? "" : FootBar.hint(speaker), open ? "" : speaker));
    }
}
