package crowdline.console.prepare.aircraft;

import crowdline.console.paint.RowFinding;
import crowdline.console.prepare.field.BlankCell;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.TypedCell;
import crowdline.console.prepare.glance.NumberWords;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.day.AirframeNumbers;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;
import crowdline.show.aircraft.Airframe;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;

/** The numbers of an airframe: each with its value, and whether it was told or is typical of the kind. */
final class NumberTable extends JTable {
    private static final String[] TITLES = {"Number", "Value", "Where from"};

    private final Rows rows;
    private transient Measures measures = Measures.USUAL;

    /** @param told told the key and what was typed; blank for what is typical of the kind */
    NumberTable(BiConsumer<String, String> told) {
        rows = new Rows((key, typed) -> told.accept(key, measures.meant(typed, Dimension.of(NumberWords.of(key)))));
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        putClientProperty("terminateEditOnFocusLost", true);
        getTableHeader().setReorderingAllowed(false);
        setDefaultEditor(Object.class, new BlankCell());
        getAccessibleContext().setAccessibleName("Numbers of the aircraft; cleared, a number is typical of the kind");
        RowFinding.in(this, 0);
        setShowHorizontalLines(true);
    }

    public void show(@Nullable Airframe airframe) {
        TypedCell.keep(this, row -> rows.numbers.get(row).key(), () -> anew(airframe));
    }

    private void anew(@Nullable Airframe airframe) {
        int row = getSelectedRow();
        rows.numbers.clear();
        if (airframe != null) {
            AirframeNumbers.of(airframe)
                    .forEach((key, value) -> rows.numbers.add(
                            new Row(key, value, airframe.assumed().contains(key) ? "○ typical, assumed" : "● told")));
        }
        rows.fireTableDataChanged();
        if (row >= 0 && row < rows.numbers.size()) {
            setRowSelectionInterval(row, row);
        }
    }

    public void wear(Appearance worn) {
        measures = worn.measures();
        setFont(worn.plain(TextRole.BODY));
        getTableHeader().setFont(worn.plain(TextRole.LABEL));
        ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer()).setHorizontalAlignment(SwingConstants.LEFT);
        setRowHeight(worn.px(28));
        setGridColor(worn.palette().rule());
    }

    private record Row(String key, double value, String origin) {}

    private final class Rows extends AbstractTableModel {
        private final transient List<Row> numbers = new ArrayList<>();
        private final transient BiConsumer<String, String> told;

        Rows(BiConsumer<String, String> told) {
            this.told = told;
        }

        @Override
        public int getRowCount() {
            return numbers.size();
        }

        @Override
        public int getColumnCount() {
            return TITLES.length;
        }

        @Override
        public String getColumnName(int column) {
            return TITLES[column];
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column == 1;
        }

        @Override
        public Object getValueAt(int row, int column) {
            Row number = numbers.get(row);
            return switch (column) {
                case 0 -> measures.label(NumberWords.of(number.key()));
                case 1 ->
                    measures.shown(
                            Numbers.text(Math.rint(number.value() * 1e4) / 1e4),
                            Dimension.of(NumberWords.of(number.key())));
                default -> number.origin();
            };
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            told.accept(numbers.get(row).key(), String.valueOf(value));
        }
    }
}
