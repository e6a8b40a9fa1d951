package crowdline.console.prepare;

import crowdline.console.paint.RowFinding;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.day.AirframeNumbers;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;
import crowdline.show.aircraft.Airframe;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import org.jspecify.annotations.Nullable;

/** The numbers of an airframe: each with its value, and whether it was told or is typical of the kind. */
final class NumberTable extends JTable {
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("Kg", "kg"),
            Map.entry("Kw", "kW"),
            Map.entry("Kn", "kN"),
            Map.entry("M2", "m²"),
            Map.entry("Rpm", "rpm"),
            Map.entry("Kt", "kt"),
            Map.entry("DegPerS", "°/s"),
            Map.entry("FtPerTurn", "ft a turn"),
            Map.entry("M", "m"),
            Map.entry("G", "g"),
            Map.entry("S", "s"));

    private static final String[] TITLES = {"Number", "Value", "Where from"};

    private final Rows rows;
    private transient Measures measures = Measures.USUAL;

    /** @param told told the key and what was typed; blank for what is typical of the kind */
    NumberTable(BiConsumer<String, String> told) {
        rows = new Rows((key, typed) -> told.accept(key, measures.meant(typed, Dimension.of(words(key)))));
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        putClientProperty("terminateEditOnFocusLost", true);
        getTableHeader().setReorderingAllowed(false);
        setDefaultEditor(Object.class, new BlankCell());
        getAccessibleContext().setAccessibleName("Numbers of the aircraft; cleared, a number is typical of the kind");
        RowFinding.in(this, 0);
        setShowHorizontalLines(true);
    }

    void show(@Nullable Airframe airframe) {
        if (isEditing()) {
            getCellEditor().cancelCellEditing();
        }
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

    void wear(Appearance worn) {
        measures = worn.measures();
        setFont(worn.plain(TextRole.BODY));
        getTableHeader().setFont(worn.plain(TextRole.LABEL));
        ((DefaultTableCellRenderer) getTableHeader().getDefaultRenderer()).setHorizontalAlignment(SwingConstants.LEFT);
        setRowHeight(worn.px(28));
        setGridColor(worn.palette().rule());
    }

    /** A key of the show file in words, with its unit, such as "wing area, m²". */
    static String words(String key) {
        for (String end : List.of("FtPerTurn", "DegPerS", "Rpm", "M2", "Kg", "Kw", "Kn", "Kt", "M", "G", "S")) {
            if (key.endsWith(end)) {
                return plain(key.substring(0, key.length() - end.length())) + ", " + UNITS.get(end);
            }
        }
        return plain(key);
    }

    private static String plain(String camel) {
        return camel.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
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
                case 0 -> measures.label(words(number.key()));
                case 1 ->
                    measures.shown(
                            Numbers.text(Math.rint(number.value() * 1e4) / 1e4), Dimension.of(words(number.key())));
                default -> number.origin();
            };
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            told.accept(numbers.get(row).key(), String.valueOf(value));
        }
    }
}
