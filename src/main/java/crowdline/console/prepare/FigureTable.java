package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.PrepareView.FigureView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Component;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/** The figures of a variant with what is predicted of each. */
final class FigureTable extends JTable {
    private static final String[] TITLES = {"", "Figure", "Begins", "Lasts", "Band", "Entry kt", "Height ft", "Load g"};
    private static final int[] WIDTHS_PX = {34, 220, 62, 58, 86, 70, 104, 96};

    private final Rows rows = new Rows();

    FigureTable(IntConsumer chosen) {
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName("Figures in the order flown");
        getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && getSelectedRow() >= 0) {
                chosen.accept(getSelectedRow());
            }
        });
        setDefaultRenderer(Object.class, new Cells());
        setShowHorizontalLines(true);
    }

    /** Fills the width if its columns have room there; otherwise it scrolls sideways instead of cutting numbers off. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getPreferredSize().width;
    }

    void show(List<FigureView> figures) {
        rows.figures = List.copyOf(figures);
        rows.fireTableDataChanged();
        if (!figures.isEmpty()) {
            setRowSelectionInterval(0, 0);
        }
    }

    void wear(Appearance appearance) {
        setFont(appearance.plain(TextRole.BODY));
        getTableHeader().setFont(appearance.plain(TextRole.LABEL));
        setRowHeight(appearance.px(28));
        setGridColor(appearance.palette().rule());
        for (int i = 0; i < WIDTHS_PX.length; i++) {
            TableColumn column = getColumnModel().getColumn(i);
            column.setMinWidth(0);
            column.setPreferredWidth(appearance.px(WIDTHS_PX[i]));
            column.setMinWidth(column.getPreferredWidth());
            column.setHeaderRenderer(null);
        }
        DefaultTableCellRenderer header =
                (DefaultTableCellRenderer) getTableHeader().getDefaultRenderer();
        header.setHorizontalAlignment(SwingConstants.LEFT);
    }

    private static final class Rows extends AbstractTableModel {
        private transient List<FigureView> figures = List.of();

        @Override
        public int getRowCount() {
            return figures.size();
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
        public Object getValueAt(int row, int column) {
            FigureView figure = figures.get(row);
            return switch (column) {
                case 0 -> Integer.toString(row + 1);
                case 1 -> figure.name();
                case 2 -> figure.start();
                case 3 -> figure.duration();
                case 4 -> figure.band();
                case 5 -> figure.entry();
                case 6 -> figure.height();
                default -> figure.load();
            };
        }
    }

    private static final class Cells extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            PlainText.plain(this);
            setHorizontalAlignment(SwingConstants.LEFT);
            return super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
        }
    }
}
