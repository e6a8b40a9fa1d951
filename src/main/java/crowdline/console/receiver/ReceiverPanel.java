package crowdline.console.receiver;

import crowdline.console.keys.Command;
import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.receiver.ReceiverRow.Way;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.console.window.TextMenu;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Asks where the aircraft's position comes from: a list of what was found, and a field for what was not. */
final class ReceiverPanel extends JPanel {
    private static final Mark IN_USE = new Mark(Form.DISC, Tone.GOOD, "In use");

    private final JList<ReceiverRow> list;
    private final JTextField typed = PlainText.plain(TextMenu.on(new JTextField()));
    private final transient Chosen chosen;
    private final transient Supplier<Optional<Path>> log;
    private final transient Runnable done;

    /** Takes what was chosen: where positions come from, and how much faster than flown a flight log is played. */
    public interface Chosen {
        void use(String where, double faster);
    }

    /**
     * @param log asks for a flight log; empty if nobody wants one after all
     * @param done told before anything is used, to close the window
     */
    ReceiverPanel(Appearance appearance, Receivers found, Chosen chosen, Supplier<Optional<Path>> log, Runnable done) {
        this.chosen = chosen;
        this.log = log;
        this.done = done;
        String gap = appearance.room(14);
        setLayout(new MigLayout(
                "insets " + gap + ", gap 0px " + appearance.room(8), "[0:0:,grow,fill]", "[][0:0:,grow,fill][][]"));
        List<ReceiverRow> rows = ReceiverRow.of(found);
        list = new JList<>(rows.toArray(ReceiverRow[]::new));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(found.inUse().isEmpty() ? 0 : inUse(rows));
        list.setCellRenderer(new CellPainter<>(
                appearance, 38, row -> row.name() + (row.inUse() ? ", in use" : ""), ReceiverPanel::paint));
        list.getAccessibleContext().setAccessibleName(Command.RECEIVER.help());
        list.registerKeyboardAction(e -> choose(), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
        JTextArea what = PlainText.wrapped("What to do", ReceiverRow.said(found));
        what.setFont(appearance.plain(TextRole.BODY));
        // Tab goes between the list and the field, and nowhere else.
        what.setFocusable(false);
        JLabel label = new JLabel("A port by its name, such as /dev/ttyUSB0 or COM3");
        label.setLabelFor(typed);
        label.setFont(appearance.plain(TextRole.BODY));
        typed.setFont(appearance.plain(TextRole.BODY));
        typed.getAccessibleContext().setAccessibleName("A port by its name");
        typed.addActionListener(e -> take());
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(what, "wmin 0, wrap");
        add(scroll, "grow, wmin 0, hmin 0, wrap");
        add(label, "wmin 0, wrap");
        add(typed, "wmin 0");
        list.ensureIndexIsVisible(list.getSelectedIndex());
    }

    private static int inUse(List<ReceiverRow> rows) {
        int at = 0;
        while (!rows.get(at).inUse()) {
            at++;
        }
        return at;
    }

    JList<ReceiverRow> choices() {
        return list;
    }

    JTextField typed() {
        return typed;
    }

    private void choose() {
        ReceiverRow row = list.getSelectedValue();
        if (row == null) {
            return;
        }
        done.run();
        if (row.way() == Way.USE) {
            chosen.use(row.where(), 1);
        } else {
            log.get().ifPresent(file -> chosen.use(file.toAbsolutePath().toString(), row.faster()));
        }
    }

    private void take() {
        String where = typed.getText().strip();
        if (!where.isEmpty()) {
            done.run();
            chosen.use(where, 1);
        }
    }

    private static void paint(Pen pen, ReceiverRow row, Box box, boolean isChosen) {
        Box inner = box.inset(pen.px(10), box.h() * 0.1);
        Box state = inner.right(row.inUse() ? pen.sizePx(TextRole.LABEL) * 5.5 : 0);
        Box name = row.inUse() ? inner.leftOf(pen.sizePx(TextRole.LABEL) * 6) : inner;
        pen.midway(
                pen.lines(row.name(), TextRole.BODY, row.inUse(), name, 2),
                name,
                isChosen ? pen.palette().onChosen() : pen.palette().text());
        if (row.inUse() && isChosen) {
            pen.markOnChosen(IN_USE, TextRole.LABEL, state);
        } else if (row.inUse()) {
            pen.mark(IN_USE, TextRole.LABEL, state);
        }
    }
}
