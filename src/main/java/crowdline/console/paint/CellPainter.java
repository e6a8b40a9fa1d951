package crowdline.console.paint;

import crowdline.console.theme.Appearance;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.util.function.Function;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.jspecify.annotations.Nullable;

/**
 * Paints the cells of a list from views.
 *
 * @param <V> the view of one cell
 */
public final class CellPainter<V> implements ListCellRenderer<V> {

    /** Paints one cell. */
    public interface Cell<V> {
        /**
         * Paints a cell into its box.
         *
         * @param chosen true if the cell is the selected one, and its ground the accent
         */
        void paint(Pen pen, V view, Box box, boolean chosen);
    }

    private final Surface surface;
    private final double heightPx;

    /**
     * @param heightPx of a cell at zoom 100 %
     * @param spoken what a screen reader says of a cell
     */
    public CellPainter(Appearance appearance, double heightPx, Function<V, String> spoken, Cell<V> cell) {
        this.heightPx = heightPx;
        surface = new Surface(appearance, spoken, cell);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends V> list, V value, int index, boolean isSelected, boolean cellHasFocus) {
        surface.chosen = isSelected;
        surface.focused = cellHasFocus;
        surface.show(value);
        surface.setPreferredSize(new Dimension(10, surface.worn.px(heightPx)));
        return surface;
    }

    private final class Surface extends Painted<V> {
        private final transient Appearance worn;
        private final transient Function<V, String> words;
        private final transient Cell<V> cell;
        private boolean chosen;
        private boolean focused;

        Surface(Appearance worn, Function<V, String> words, Cell<V> cell) {
            super("Row", worn);
            this.worn = worn;
            this.words = words;
            this.cell = cell;
            wear(worn, 1);
        }

        @Override
        protected String spoken(V shown) {
            String said = words.apply(shown);
            getAccessibleContext().setAccessibleName(said);
            return said;
        }

        @Override
        protected Color ground(Appearance now) {
            return chosen ? now.palette().chosen() : now.palette().stage();
        }

        @Override
        protected void paint(Pen pen, V shown, Box box) {
            cell.paint(pen, shown, box, chosen);
            if (focused) {
                pen.fill(
                        box.left(3),
                        chosen ? pen.palette().onChosen() : pen.palette().accent());
            }
            pen.fill(box.bottom(1), pen.palette().rule());
        }

        @Override
        public @Nullable String getToolTipText() {
            return null;
        }
    }
}
