package crowdline.console.prepare.people;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.TypedCell;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.event.TableModelEvent;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** Pairs of texts, typed where they stand; the last row is empty, to add one, and a row with both cleared is gone. */
final class PairTable extends JTable {
    private final Rows rows;
    private String thing = "";

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
        goOnWithEnter();
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                if (getSelectedRow() < 0) {
                    changeSelection(getRowCount() - 1, 0, false, false);
                }
            }
        });
    }

    /** Two texts that belong together. */
    record Pair(String left, String right) {
        boolean isWhole() {
            return !left.isBlank() && !right.isBlank();
        }
    }

    /**
     * Shows pairs of a thing. Those that were known before a pair was typed are passed over until that one is answered: an
     * earlier change of something else may come back first.
     *
     * @param of the id of the thing
     */
    public void show(List<Pair> pairs, String of) {
        boolean same = of.equals(thing);
        boolean isEarlier = same && rows.isAsked && pairs.equals(rows.known);
        thing = of;
        if (isEarlier) {
            return;
        }
        rows.isAsked = false;
        rows.known = List.copyOf(pairs);
        if (rows.whole().equals(pairs)) {
            return;
        }
        if (!same && isEditing()) {
            getCellEditor().cancelCellEditing();
        }
        TypedCell.keep(this, rows::of, () -> {
            rows.pairs = new ArrayList<>(pairs);
            rows.fireTableDataChanged();
        });
    }

    /** The cell that was chosen stays chosen: what is typed next goes there. */
    @Override
    public void tableChanged(TableModelEvent changed) {
        int row = getSelectedRow();
        int column = getSelectedColumn();
        super.tableChanged(changed);
        if (row >= 0 && column >= 0 && row < getRowCount()) {
            changeSelection(row, column, false, false);
        }
    }

    /** What was typed last is not taken: the next pairs shown are what there is. */
    public void refused() {
        rows.isAsked = false;
    }

    /** Enter goes on as Tab does: from the first text to the second, and from there to the next pair. */
    private void goOnWithEnter() {
        Object next = getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke("TAB"));
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), next);
        setDefaultEditor(Object.class, new Cell(new JTextField()));
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
        /** What was shown last. */
        private transient List<Pair> known = List.of();
        /** Whether a pair was typed that nobody has answered yet. */
        private boolean isAsked;

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
            List<Pair> all = whole();
            if (isAsked || !all.equals(known)) {
                isAsked = true;
                told.accept(all);
            }
        }

        /** The pair of a row, or that it is the one for the next. */
        Object of(int row) {
            return row < pairs.size() ? pairs.get(row) : "the next";
        }

        List<Pair> whole() {
            return pairs.stream().filter(Pair::isWhole).toList();
        }
    }

    /** A text being typed; Enter is left to the table, which goes on with it. */
    private static final class Cell extends DefaultCellEditor {
        Cell(JTextField field) {
            super(field);
            field.removeActionListener(delegate);
            setClickCountToStart(2);
        }

        @Override
        public Component getTableCellEditorComponent(
                JTable table, Object value, boolean isSelected, int row, int column) {
            Component field = super.getTableCellEditorComponent(table, value, isSelected, row, column);
            field.setFont(table.getFont());
            ((JTextField) field).getAccessibleContext().setAccessibleName(table.getColumnName(column));
            return field;
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
