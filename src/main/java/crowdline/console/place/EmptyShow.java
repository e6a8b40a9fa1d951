package crowdline.console.place;

import crowdline.console.keys.Command;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.bounds.Written;
import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** What stands where a show would be: what to do, and the two ways to do it, or what is being opened. */
public final class EmptyShow extends JPanel {
    private static final String[] STEPS = {
        "Begin a new show with " + Command.NEW_SHOW.key()
                + " and paste the pilot's list into it with " + Command.PASTE_LIST.key()
                + "; or open a show file with " + Command.OPEN.key()
                + ". The demo show is a good place to look around.",
        "Read what the check found, on the left: it says what is missing.",
        "Go through the figures. Under each are its remarks, with how long they take and how long there is.",
        "On the day press " + Command.LIVE.key() + " for Live. " + Command.HELP.key()
                + " shows the keys, in every place.",
    };

    private static final int LONGEST_NAME = 60;
    /** As many as fit below the rest at the largest zoom; the menu has the others. */
    private static final int MOST_LAST = 3;

    private final transient Ways ways;
    private transient Appearance appearance;
    private transient Shown shown = Shown.NOTHING;
    private JButton fresh = new JButton();

    /**
     * What is said there.
     *
     * @param title in large type
     * @param doing what is being done, or empty where the user is to do something
     */
    public record Shown(String title, String doing) {
        /** There is no show, and none is coming. */
        public static final Shown NOTHING = new Shown("No show is open", "");

        /** A show is coming. */
        public static Shown opening(String name, String doing) {
            return new Shown("Opening " + Written.brief(name, LONGEST_NAME) + "…", doing);
        }

        /** A show is open; what belongs here is not computed yet, or the show has nothing for it. */
        public static Shown open(String name) {
            return new Shown(
                    Written.brief(name, LONGEST_NAME) + " is open",
                    "Its acts appear here once they are predicted, if it has any.");
        }
    }

    public EmptyShow(Appearance appearance, Ways ways) {
        this.ways = ways;
        this.appearance = appearance;
        lay();
    }

    public void wear(Appearance next) {
        appearance = next;
        lay();
    }

    /** Says this from now on. */
    public void show(Shown next) {
        if (!next.equals(shown)) {
            shown = next;
            lay();
        }
    }

    private void lay() {
        removeAll();
        setLayout(new MigLayout(
                "insets " + appearance.room(40) + ", align center center",
                "[60px:" + appearance.room(760) + ":" + appearance.room(860) + ",fill]"));
        JLabel title = new JLabel();
        PlainText.plain(title);
        title.setText(shown.title());
        title.setFont(appearance.strong(TextRole.NEXT));
        add(title, "wmin 0, wrap " + appearance.room(18));
        if (shown.doing().isEmpty()) {
            for (int i = 0; i < STEPS.length; i++) {
                String number = Integer.toString(i + 1);
                add(line("Step", number), "split 2, aligny top, w " + appearance.room(24) + "!");
                add(line("Step " + number, STEPS[i]), "wmin 0, growx, wrap " + appearance.room(8));
            }
            add(buttons(), "gaptop " + appearance.room(14) + ", wrap " + appearance.room(18));
            again();
        } else {
            add(line("What is being done", shown.doing()), "wmin 0, growx");
        }
        revalidate();
        repaint();
    }

    /** What was open last, a button for each: most often it is one of those. */
    private void again() {
        List<Action> last = ways.again().get();
        if (last.isEmpty()) {
            return;
        }
        add(line("Opened last", "Opened last:"), "wmin 0, growx, wrap " + appearance.room(6));
        for (Action one : last.subList(0, Math.min(MOST_LAST, last.size()))) {
            JButton button = PlainText.plain(new JButton(one));
            button.setFont(appearance.plain(TextRole.SMALL));
            button.setHorizontalAlignment(SwingConstants.LEADING);
            add(button, "wmin 0, growx, wrap " + appearance.room(6));
        }
    }

    private JTextArea line(String name, String words) {
        JTextArea line = PlainText.wrapped(name, words);
        line.setFont(appearance.plain(TextRole.SMALL));
        line.setForeground(appearance.palette().text());
        line.setFocusable(false);
        return line;
    }

    /** The keys go to the first thing there is to do; false if there is nothing to do but wait. */
    public boolean takeFocus() {
        return shown.doing().isEmpty() && fresh.requestFocusInWindow();
    }

    private JPanel buttons() {
        fresh = new JButton(ways.fresh());
        fresh.setFont(appearance.strong(TextRole.SMALL));
        fresh.putClientProperty("JButton.buttonType", "default");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap " + appearance.room(10) + " 0px"));
        buttons.setOpaque(false);
        buttons.add(fresh);
        for (Action way : List.of(ways.open(), ways.demo())) {
            JButton button = new JButton(way);
            button.setFont(appearance.plain(TextRole.SMALL));
            buttons.add(button);
        }
        return buttons;
    }
}
