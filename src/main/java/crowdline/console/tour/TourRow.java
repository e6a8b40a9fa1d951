package crowdline.console.tour;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandActions;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.NamedAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The row under the screen that says the step; nothing of it takes a key. */
public final class TourRow extends JPanel {
    /** The largest zoom, per cent, at which the buttons stand beside the words. */
    private static final int BESIDE_TO = 130;

    private final JLabel where = new JLabel();
    private final JTextArea words = PlainText.wrapped("Tour", "");
    private final JButton back;
    private final JButton next;
    private final JButton leave;

    /** @param left leaves the tour */
    public TourRow(Appearance appearance, CommandActions actions, Runnable left) {
        back = new JButton(actions.of(Command.TOUR_BACK));
        next = new JButton(actions.of(Command.TOUR));
        leave = new JButton(new NamedAction("Leave  Esc", left));
        back.setText("Back  " + Command.TOUR_BACK.key());
        for (JButton button : new JButton[] {back, next, leave}) {
            button.setFocusable(false);
        }
        words.setFocusable(false);
        getAccessibleContext().setAccessibleName("Tour");
        setVisible(false);
        wear(appearance);
    }

    /** Shows a step. */
    public void show(Tour tour) {
        where.setText(tour.where());
        words.setText(tour.step().words());
        back.setEnabled(tour.at() > 0);
        next.setText((tour.isLast() ? "Done  " : "Next  ") + Command.TOUR.key());
        setVisible(true);
        revalidate();
    }

    public void wear(Appearance appearance) {
        removeAll();
        // Large buttons would leave the words a column that takes most of the window's height.
        boolean beside = appearance.zoom().percent() <= BESIDE_TO;
        setLayout(new MigLayout(
                "insets " + appearance.room(10) + " " + appearance.room(16) + " " + appearance.room(10) + " "
                        + appearance.room(16) + ", gap " + appearance.room(12) + " 0px",
                beside ? "[][0:0:,grow,fill][][][]" : "[][0:0:,grow,fill]",
                beside ? "[center]" : "[]" + appearance.room(10) + "[]"));
        setBackground(appearance.palette().sunk());
        setBorder(BorderFactory.createMatteBorder(
                appearance.px(3), 0, 0, 0, appearance.palette().accent()));
        where.setFont(appearance.plain(TextRole.BODY));
        where.setForeground(appearance.palette().soft());
        words.setFont(appearance.plain(TextRole.SMALL));
        words.setForeground(appearance.palette().text());
        add(where, "top");
        add(words, beside ? "wmin 0" : "wmin 0, wrap");
        add(back, beside ? "" : "span, split 3, align right");
        add(next);
        add(leave);
        revalidate();
    }
}
