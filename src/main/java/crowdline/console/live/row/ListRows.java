package crowdline.console.live.row;

import crowdline.console.paint.CellPainter;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Zoom;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * A list of the day in Live: it lies over the row of what is flown, so that the words stay in sight. Nothing in it takes the
 * keys.
 *
 * @param <R> one row
 */
public final class ListRows<R extends ListRows.Row> extends JPanel {
    public static final double ROW_PX = 38;
    /** Fewer are no list: where larger type would leave less room, it grows no further. */
    public static final int LEAST_ROWS = 3;

    /** The keys on two lines and the edges, designed pixels. */
    private static final double AROUND_PX = 58;

    /** A row that is known again by its id. */
    public interface Row {
        String id();
    }

    private final JTextArea label;
    private final String keys;
    private final String none;
    private final DefaultListModel<R> model = new DefaultListModel<>();
    private final JList<R> list = new JList<>(model);
    private final transient Function<Appearance, CellPainter<R>> cells;
    private transient List<R> rows = List.of();
    private transient Appearance asked;
    private final JScrollPane pane =
            new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);

    /**
     * @param name what a screen reader calls it
     * @param keys which keys it has, in a sentence
     * @param none what to do while there is no row
     */
    public ListRows(
            Appearance appearance, String name, String keys, String none, Function<Appearance, CellPainter<R>> cells) {
        this.keys = keys;
        this.none = none;
        this.cells = cells;
        this.asked = appearance;
        label = PlainText.wrapped("Keys of the " + name.toLowerCase(Locale.ROOT), keys);
        label.setFocusable(false);
        list.setFocusable(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(name);
        pane.setFocusable(false);
        getAccessibleContext().setAccessibleName(name);
        setVisible(false);
        wear(appearance);
    }

    /**
     * Shows these, with the row chosen that was chosen before.
     *
     * @param first the row to begin with
     */
    public void show(List<R> next, int first) {
        String chosen = chosenId();
        boolean isNew = !isVisible();
        label.setText(next.isEmpty() ? none : keys);
        if (!next.equals(rows)) {
            rows = List.copyOf(next);
            int at = list.getSelectedIndex();
            model.clear();
            model.addAll(rows);
            list.setSelectedIndex(Math.min(at, model.size() - 1));
        }
        if (isNew || chosen == null) {
            choose(first);
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

    /** Chooses the row so many further on, if there is one. */
    public void move(int by) {
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

    /** The id of the chosen row, or null if there is none. */
    @Nullable
    public String chosenId() {
        R row = list.getSelectedValue();
        return row == null ? null : row.id();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean isOther = height != getHeight();
        super.setBounds(x, y, width, height);
        if (isOther) {
            dress();
        }
    }

    public final void wear(Appearance appearance) {
        asked = appearance;
        dress();
    }

    /** How many whole rows are seen at once. */
    public int seen() {
        return pane.getViewport().getHeight() / list.getCellBounds(0, 0).height;
    }

    private Zoom fitting() {
        double most = 100 * getHeight() / (AROUND_PX + LEAST_ROWS * ROW_PX);
        return new Zoom(
                (int) Math.max(Zoom.NONE.percent(), Math.min(asked.zoom().percent(), most)));
    }

    private void dress() {
        Appearance appearance = getHeight() > 0 ? asked.with(fitting()) : asked;
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
        list.setCellRenderer(cells.apply(appearance));
        pane.setBorder(BorderFactory.createEmptyBorder());
        add(label, "wmin 0");
        add(pane);
        revalidate();
    }
}
