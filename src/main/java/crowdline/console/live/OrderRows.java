package crowdline.console.live;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The running order in Live: it lies over the row of what is flown, so that the words stay in sight. */
final class OrderRows extends JPanel {
    private static final double ROW_PX = 38;
    private static final String KEYS =
            "Running order: Alt+\u2190 \u2192 by a minute, Alt+Page Up/Down by ten, from here on"
                    + " (with Shift this one alone). Alt+\u2191 \u2193 order. Del cancel, Ins put in, Ctrl+Enter now, R close.";

    private final JTextArea label = PlainText.wrapped("Keys of the running order", KEYS);
    private final DefaultListModel<OrderView.Row> model = new DefaultListModel<>();
    private final JList<OrderView.Row> list = new JList<>(model);
    private transient List<OrderView.Row> rows = List.of();
    private final JScrollPane pane =
            new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);

    OrderRows(Appearance appearance) {
        label.setFocusable(false);
        list.setFocusable(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Running order");
        pane.setFocusable(false);
        getAccessibleContext().setAccessibleName("Running order");
        setVisible(false);
        wear(appearance);
    }

    /** Shows it, with the act chosen that was chosen before. */
    void show(OrderView view) {
        String chosen = chosenId();
        boolean isNew = !isVisible();
        if (!view.rows().equals(rows)) {
            rows = view.rows();
            int at = list.getSelectedIndex();
            model.clear();
            model.addAll(rows);
            list.setSelectedIndex(Math.min(at, model.size() - 1));
        }
        if (isNew || chosen == null) {
            choose(view.first());
            setVisible(true);
        } else {
            choose(indexOf(chosen));
        }
    }

    private int indexOf(String id) {
        for (int i = 0; i < model.size(); i++) {
            if (model.get(i).id().equals(id)) {
                return i;
            }
        }
        return list.getSelectedIndex();
    }

    /** Chooses the act so many rows further on, if there is one. */
    void move(int by) {
        choose(Math.max(0, Math.min(model.size() - 1, list.getSelectedIndex() + by)));
    }

    private void choose(int index) {
        if (index >= 0 && index != list.getSelectedIndex()) {
            list.setSelectedIndex(index);
        }
        if (index >= 0) {
            list.ensureIndexIsVisible(index);
        }
    }

    /** The id of the chosen act, or null if there is none. */
    @Nullable
    String chosenId() {
        OrderView.Row row = list.getSelectedValue();
        return row == null ? null : row.id();
    }

    final void wear(Appearance appearance) {
        removeAll();
        setLayout(new MigLayout(
                "insets " + appearance.room(6) + " " + appearance.room(18) + " " + appearance.room(8) + " "
                        + appearance.room(18) + ", gap 0px " + appearance.room(4) + ", wrap 1",
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill]"));
        setBackground(appearance.palette().sunk());
        label.setFont(appearance.plain(TextRole.LABEL));
        label.setForeground(appearance.palette().text());
        list.setBackground(appearance.palette().stage());
        list.setCellRenderer(cells(appearance));
        pane.setBorder(BorderFactory.createEmptyBorder());
        add(label, "wmin 0");
        add(pane);
        revalidate();
    }

    private static CellPainter<OrderView.Row> cells(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                ROW_PX,
                row -> row.title() + ", " + row.state().word() + ", slot " + row.slot() + " " + row.moved() + " "
                        + row.expected() + ", " + row.lasts(),
                OrderRows::paint);
    }

    private static void paint(Pen pen, OrderView.Row row, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.06);
        Box state = inner.left(inner.w() * 0.15);
        if (chosen) {
            pen.markOnChosen(row.state(), TextRole.BODY, state);
        } else {
            pen.mark(row.state(), TextRole.BODY, state);
        }
        Box rest = inner.right(inner.w() * 0.85);
        Box slot = rest.left(rest.w() * 0.24);
        pen.midway(pen.line(row.slot(), TextRole.VALUE, true, slot), slot, text);
        double taken = Math.min(
                slot.w(), pen.widthPx(row.slot(), true, pen.sizePx(TextRole.VALUE)) + pen.sizePx(TextRole.LABEL));
        Box beside = slot.right(slot.w() - taken);
        pen.midway(pen.line(row.moved(), TextRole.LABEL, false, beside), beside, text);
        Box times = rest.right(rest.w() * 0.22);
        String told = row.expected().isEmpty() ? row.lasts() : row.expected() + ", " + row.lasts();
        pen.atRight(pen.line(told, TextRole.BODY, false, times), times, soft);
        Box title = rest.right(rest.w() * 0.75).left(rest.w() * 0.52);
        pen.midway(pen.line(row.title(), TextRole.VALUE, false, title), title, text);
    }
}
