package crowdline.console.prepare.people;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** Pairs of texts, typed where they stand; the last row is empty, to add one, and a row with both cleared is gone. */
final class PairTable extends JTable {
    private final Rows rows;

    /**
     * @param name for screen readers
     * @param left title of the first column
     * @param right title of the second
     * @param usual what stands in the second until something else is typed; empty if nothing does
     * @param told told all whole pairs whenever one was typed
     */
    PairTable(String name, String left, String right, String usual, Consumer<List<Pair>> told) {
        rows = new Rows(left, right, usual, told);
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        putClientProperty("terminateEditOnFocusLost", true);
        putClientProperty("JTable.autoStartsEdit", true);
        setSurrendersFocusOnKeystroke(true);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName(name);
        setDefaultRenderer(Object.class, new Cells());
        setShowHorizontalLines(true);
    }

    /** Two texts that belong together. */
    record Pair(String left, String right) {
        boolean isWhole() {
            return !left.isBlank() && !right.isBlank();
        }
    }

    public void show(List<Pair> pairs) {
        List<Pair> whole = rows.pairs.stream().filter(Pair::isWhole).toList();
        if (whole.equals(pairs)) {
            return;
        }
        if (isEditing()) {
            getCellEditor().cancelCellEditing();
        }
        rows.pairs = new ArrayList<>(pairs);
        rows.fireTableDataChanged();
    }

    public void wear(Appearance worn) {
        setFont(worn.plain(TextRole.BODY));
        getTableHeader().setFont(worn.plain(TextRole.LABEL));
        ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer()).setHorizontalAlignment(SwingConstants.LEFT);
        setRowHeight(worn.px(28));
        setGridColor(worn.palette().rule());
    }

    private static final class Rows extends AbstractTableModel {
        private final String[] titles;
        private final String usual;
        private final transient Consumer<List<Pair>> told;
        private transient List<Pair> pairs = new ArrayList<>();

        Rows(String left, String right, String usual, Consumer<List<Pair>> told) {
            this.usual = usual;
            titles = new String[] {left, right};
            this.told = told;
        }

        @Override
        public int getRowCount() {
            return pairs.size() + 1;
        }

        @Override
        public int getColumnCount() {
            return titles.length;
        }

        @Override
        public String getColumnName(int column) {
            return titles[column];
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return true;
        }

        @Override
        public Object getValueAt(int row, int column) {
            if (row >= pairs.size()) {
                return "";
            }
            return column == 0 ? pairs.get(row).left() : pairs.get(row).right();
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            String text = String.valueOf(value).strip();
            if (text.equals(getValueAt(row, column))) {
                return;
            }
            Pair before = row < pairs.size() ? pairs.get(row) : new Pair("", usual);
            Pair after = column == 0 ? new Pair(text, before.right()) : new Pair(before.left(), text);
            if (row < pairs.size()) {
                pairs.set(row, after);
            } else {
                pairs.add(after);
            }
            pairs.removeIf(pair -> pair.left().isBlank()
                    && (pair.right().isBlank() || pair.right().equals(usual)));
            fireTableDataChanged();
            told.accept(pairs.stream().filter(Pair::isWhole).toList());
        }
    }

    private static final class Cells extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            PlainText.plain(this);
            Component cell = super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
            setToolTipText(getText().isEmpty() ? null : PlainText.tip(getText()));
            return cell;
        }
    }
}
