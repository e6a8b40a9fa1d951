package crowdline.console.debrief;

import crowdline.console.debrief.DebriefView.FigureRow;
import crowdline.console.paint.TextCells;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.FontMetrics;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;

/** The figures of a run, planned and flown. */
final class FlownTable extends JTable {
    private static final String[] TITLES = {"Figure", "Due", "Began", "Late", "Planned s", "Flown s", "Differs"};
    private static final int[] WIDTHS_PX = {240, 70, 66, 76, 82, 76, 130};

    /** What a cell keeps free beside its words. */
    private static final int CELL_PX = 4;

    private final Rows rows = new Rows();

    FlownTable() {
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName("Figures planned and flown");
        setDefaultRenderer(Object.class, new TextCells());
        setShowHorizontalLines(true);
    }

    /** Fills the width if what stands in it has room there; otherwise it scrolls sideways instead of cutting numbers off. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= leastWidth();
    }

    private int leastWidth() {
        return Collections.list(getColumnModel().getColumns()).stream()
                .mapToInt(TableColumn::getMinWidth)
                .sum();
    }

    void show(List<FigureRow> figures) {
        rows.figures = List.copyOf(figures);
        rows.fireTableDataChanged();
        fit();
    }

    /** Lets no column become narrower than its words. */
    private void fit() {
        FontMetrics cells = getFontMetrics(getFont());
        FontMetrics heads = getFontMetrics(getTableHeader().getFont());
        int gap = cells.charWidth('0') + CELL_PX;
        for (int i = 0; i < TITLES.length; i++) {
            int column = i;
            int widest = IntStream.range(0, rows.getRowCount())
                    .map(row -> cells.stringWidth(String.valueOf(rows.getValueAt(row, column))))
                    .max()
                    .orElse(0);
            TableColumn shown = getColumnModel().getColumn(i);
            shown.setMinWidth(
                    Math.min(Math.max(widest, heads.stringWidth(TITLES[i])) + gap, shown.getPreferredWidth()));
        }
    }

    void wear(Appearance appearance) {
        setFont(appearance.plain(TextRole.BODY));
        getTableHeader().setFont(appearance.plain(TextRole.LABEL));
        setRowHeight(appearance.px(26));
        setGridColor(appearance.palette().rule());
        for (int i = 0; i < WIDTHS_PX.length; i++) {
            TableColumn column = getColumnModel().getColumn(i);
            column.setMinWidth(0);
            column.setPreferredWidth(appearance.px(WIDTHS_PX[i]));
        }
        fit();
        if (getTableHeader().getDefaultRenderer() instanceof DefaultTableCellRenderer header) {
            header.setHorizontalAlignment(SwingConstants.LEFT);
        }
    }

    private static final class Rows extends AbstractTableModel {
        private transient List<FigureRow> figures = List.of();

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
            FigureRow figure = figures.get(row);
            return switch (column) {
                case 0 -> figure.name();
                case 1 -> figure.planned();
                case 2 -> figure.began();
                case 3 -> figure.late();
                case 4 -> figure.plannedS();
                case 5 -> figure.flownS();
                default -> figure.differs();
            };
        }
    }
}
