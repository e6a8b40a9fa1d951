package crowdline.console.pedals;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.pedals.PedalsView.Row;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;
import java.awt.Dimension;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.ListSelectionModel;

/** The commands a pedal may give, one a row, with what gives them. */
final class CommandList extends JList<Row> {
    private static final int ROW_PX = 31;
    private static final double[] SHARES = {0.2, 0.27, 0.23, 0.3};
    private static final Row TITLES = new Row(crowdline.console.keys.Command.NEXT, "Pedal", "Remote", "Keyboard");

    private final DefaultListModel<Row> rows = new DefaultListModel<>();

    CommandList(Appearance appearance) {
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new CellPainter<>(appearance, ROW_PX, CommandList::spoken, CommandList::cell));
        setBackground(appearance.palette().stage());
        setVisibleRowCount(PedalCommands.ALL.size());
        setPrototypeCellValue(TITLES);
        getAccessibleContext().setAccessibleName("Commands a pedal or a remote may give");
        getAccessibleContext().setAccessibleDescription("Enter learns a button, Delete forgets what was learned");
    }

    void show(List<Row> next) {
        int chosen = Math.max(0, getSelectedIndex());
        for (int i = 0; i < next.size(); i++) {
            if (i >= rows.size()) {
                rows.addElement(next.get(i));
            } else if (!rows.get(i).equals(next.get(i))) {
                rows.set(i, next.get(i));
            }
        }
        setSelectedIndex(chosen);
    }

    /** The titles of the columns. */
    static JComponent titles(Appearance appearance) {
        Titles titles = new Titles(appearance);
        titles.show(TITLES);
        return titles;
    }

    private static String spoken(Row row) {
        return row.command().label() + ". Pedal: " + row.pedals() + ". Remote: " + row.keys() + ". Keyboard: "
                + row.always();
    }

    private static void cell(Pen pen, Row row, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        columns(pen, new String[] {row.command().label(), row.pedals(), row.keys(), row.always()}, box, text, soft);
    }

    private static void columns(Pen pen, String[] words, Box box, Color text, Color soft) {
        Box inner = box.inset(box.h() * 0.3, 0);
        double x = 0;
        for (int i = 0; i < SHARES.length; i++) {
            Box cell = inner.rightOf(x).left(inner.w() * SHARES[i] - box.h() * 0.3);
            boolean last = i == SHARES.length - 1;
            pen.midway(pen.line(words[i], TextRole.BODY, i == 0, cell), cell, last ? soft : text);
            x += inner.w() * SHARES[i];
        }
    }

    private static final class Titles extends Painted<Row> {
        Titles(Appearance appearance) {
            super("Titles", appearance);
            wear(appearance, 1);
            setPreferredSize(new Dimension(10, appearance.px(ROW_PX - 7)));
        }

        @Override
        protected String spoken(Row shown) {
            return "Command, pedal, remote, keyboard";
        }

        @Override
        protected void paint(Pen pen, Row shown, Box box) {
            Color soft = pen.palette().soft();
            columns(pen, new String[] {"", shown.pedals(), shown.keys(), shown.always()}, box, soft, soft);
        }
    }
}
