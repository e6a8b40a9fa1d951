package crowdline.console.prepare.figure;

import crowdline.console.paint.RowFinding;
import crowdline.console.paint.TextCells;
import crowdline.console.passes.PassesView;
import crowdline.console.prepare.field.BlankCell;
import crowdline.console.prepare.field.TypedCell;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Point;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import org.jspecify.annotations.Nullable;

/** The figures of a variant with what is predicted of each. */
public final class FigureTable extends JTable {
    private static final String[] TITLES = {"", "Figure", "Begins", "Lasts", "Band", "Entry kt", "Height ft", "Load g"};
    private static final int[] WIDTHS_PX = {34, 220, 62, 58, 86, 70, 104, 96};
    /** Where passes were timed, these stand after the band. */
    private static final String[] PASS_TITLES = {"Predicted", "Passes"};

    private static final int PASSES_AT = 5;
    private static final int PASS_WIDTH_PX = 74;

    private final Rows rows;
    /** The figure to choose once it is there. */
    private @Nullable String wanted;
    /** The figure that was chosen and is gone: it is chosen again if it comes back, as with undo. */
    private String lost = "";
    /** Whether the choice only follows what is shown. */
    private boolean following;

    private transient @Nullable Appearance worn;

    /**
     * @param chosen told the row that is chosen
     * @param typed told what was typed into a cell of the chosen row
     */
    public FigureTable(IntConsumer chosen, BiConsumer<PinField, String> typed) {
        rows = new Rows(typed);
        setModel(rows);
        // A number typed begins to be typed in the cell; only the keys of the cursor move on.
        putClientProperty("terminateEditOnFocusLost", true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getTableHeader().setReorderingAllowed(false);
        getAccessibleContext().setAccessibleName("Figures in the order flown");
        getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && getSelectedRow() >= 0) {
                lost = following ? lost : "";
                chosen.accept(getSelectedRow());
            }
        });
        setDefaultRenderer(Object.class, new TextCells());
        setDefaultEditor(Object.class, new BlankCell());
        RowFinding.in(this, 1);
        setShowHorizontalLines(true);
    }

    /** Fills the width if its columns have room there; otherwise it scrolls sideways instead of cutting numbers off. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() == null || getParent().getWidth() >= getPreferredSize().width;
    }

    /** Shows figures; the place chosen stays chosen if there is still one, and what is being typed stays. */
    public void show(List<FigureView> figures, PassesView passes) {
        following = true;
        try {
            TypedCell.keep(this, row -> rows.figures.get(row).edit().id(), () -> anew(figures, passes));
        } finally {
            following = false;
        }
    }

    private void anew(List<FigureView> figures, PassesView passes) {
        String before = wanted != null
                ? wanted
                : getSelectedRow() < 0 || getSelectedRow() >= rows.figures.size()
                        ? ""
                        : rows.figures.get(getSelectedRow()).edit().id();
        lost = getSelectedRow() < 0 ? "" : lost;
        int chosen = Math.max(0, getSelectedRow());
        boolean columns = rows.timed() == passes.passes().isEmpty();
        rows.figures = List.copyOf(figures);
        rows.passes = passes;
        if (columns) {
            rows.fireTableStructureChanged();
            if (worn != null) {
                wear(worn);
            }
        } else {
            rows.fireTableDataChanged();
        }
        if (!figures.isEmpty()) {
            boolean isBack = wanted == null
                    && figures.stream().anyMatch(f -> f.edit().id().equals(lost));
            boolean found = choose(isBack ? lost : before);
            wanted = found ? null : wanted;
            lost = isBack ? "" : found || !lost.isEmpty() ? lost : before;
            if (!found) {
                int row = Math.min(chosen, figures.size() - 1);
                setRowSelectionInterval(row, row);
            }
        }
    }

    /** Chooses the figure at a point, if there is one. */
    public void chooseAt(Point at) {
        int row = rowAtPoint(at);
        if (row >= 0) {
            setRowSelectionInterval(row, row);
        }
    }

    /** Chooses a figure as soon as it is shown. */
    public void chooseNext(String figureId) {
        wanted = figureId;
        if (choose(figureId)) {
            wanted = null;
        }
    }

    /** Chooses a figure; false if it is not there. */
    private boolean choose(String figureId) {
        int row = rows.figures.stream().map(f -> f.edit().id()).toList().indexOf(figureId);
        if (row < 0 || figureId.isEmpty()) {
            return false;
        }
        setRowSelectionInterval(row, row);
        scrollRectToVisible(getCellRect(row, 0, true));
        return true;
    }

    public void wear(Appearance appearance) {
        worn = appearance;
        setFont(appearance.plain(TextRole.BODY));
        getTableHeader().setFont(appearance.plain(TextRole.LABEL));
        setRowHeight(appearance.px(28));
        setGridColor(appearance.palette().rule());
        for (int i = 0; i < getColumnCount(); i++) {
            TableColumn column = getColumnModel().getColumn(i);
            int always = rows.always(i);
            column.setMinWidth(0);
            column.setPreferredWidth(appearance.px(always < 0 ? PASS_WIDTH_PX : WIDTHS_PX[always]));
            column.setMinWidth(column.getPreferredWidth());
            column.setHeaderRenderer(null);
            column.setHeaderValue(appearance.measures().label(rows.getColumnName(i)));
        }
        DefaultTableCellRenderer header =
                (DefaultTableCellRenderer) getTableHeader().getDefaultRenderer();
        header.setHorizontalAlignment(SwingConstants.LEFT);
    }

    private static final class Rows extends AbstractTableModel {
        private transient List<FigureView> figures = List.of();
        private transient PassesView passes = PassesView.NONE;
        private final transient BiConsumer<PinField, String> typed;

        Rows(BiConsumer<PinField, String> typed) {
            this.typed = typed;
        }

        /** What a number typed into a column tells. */
        private @Nullable PinField field(int column) {
            return switch (always(column)) {
                case 3 -> PinField.SECONDS;
                case 5 -> PinField.SPEED;
                case 6 -> PinField.HEIGHT;
                default -> null;
            };
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            PinField field = field(column);
            return field != null && figures.get(row).edit().pins().stream().anyMatch(p -> p.field() == field);
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            PinField field = field(column);
            if (field != null && !value.equals(getValueAt(row, column))) {
                typed.accept(field, String.valueOf(value));
            }
        }

        private boolean timed() {
            return !passes.passes().isEmpty();
        }

        /** Which of the columns that are always there stands at this place; −1 for one about passes. */
        private int always(int column) {
            if (!timed() || column < PASSES_AT) {
                return column;
            }
            return column < PASSES_AT + PASS_TITLES.length ? -1 : column - PASS_TITLES.length;
        }

        @Override
        public int getRowCount() {
            return figures.size();
        }

        @Override
        public int getColumnCount() {
            return TITLES.length + (timed() ? PASS_TITLES.length : 0);
        }

        @Override
        public String getColumnName(int column) {
            int always = always(column);
            return always < 0 ? PASS_TITLES[column - PASSES_AT] : TITLES[always];
        }

        @Override
        public Object getValueAt(int row, int column) {
            FigureView figure = figures.get(row);
            return switch (always(column)) {
                case -1 -> aboutPasses(row, column - PASSES_AT);
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

        private String aboutPasses(int row, int which) {
            if (row >= passes.figures().size()) {
                return "";
            }
            PassesView.FigureLine line = passes.figures().get(row);
            return which == 0 ? line.predicted() : line.passes();
        }
    }
}
