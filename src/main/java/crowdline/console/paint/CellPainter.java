package crowdline.console.paint;

import crowdline.console.theme.Appearance;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.function.Function;
import javax.swing.JList;
import javax.swing.ListCellRenderer;
import org.jspecify.annotations.Nullable;

/**
 * Paints the cells of a list from views. All rows have the same sizes of type: what is too long for its row is cut with an
 * ellipsis, and the whole of it is in the tooltip and read by a screen reader.
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

    /** How high a cell is that goes by its words. */
    public interface Height<V> {
        /**
         * Its height on the surface.
         *
         * @param widthPx how wide the cell is
         */
        double px(Pen pen, V view, double widthPx);
    }

    private final Surface surface;
    private final Height<V> height;

    /**
     * @param heightPx of a cell at zoom 100 %
     * @param spoken what a screen reader says of a cell
     */
    public CellPainter(Appearance appearance, double heightPx, Function<V, String> spoken, Cell<V> cell) {
        this(appearance, (pen, view, widthPx) -> appearance.px(heightPx), spoken, cell);
    }

    /**
     * With cells as high as their words need.
     *
     * @param spoken what a screen reader says of a cell
     */
    public CellPainter(Appearance appearance, Height<V> height, Function<V, String> spoken, Cell<V> cell) {
        this.height = height;
        surface = new Surface(appearance, spoken, cell);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends V> list, V value, int index, boolean isSelected, boolean cellHasFocus) {
        surface.widthPx = list.getWidth();
        surface.chosen = isSelected;
        surface.focused = cellHasFocus;
        surface.show(value);
        surface.setPreferredSize(new Dimension(10, surface.highPx(value)));
        return surface;
    }

    private final class Surface extends Painted<V> {
        private final transient Appearance worn;
        private final transient Function<V, String> words;
        private final transient Cell<V> cell;
        private final transient Pen aside;
        private boolean chosen;
        private boolean focused;
        private int widthPx;

        Surface(Appearance worn, Function<V, String> words, Cell<V> cell) {
            super("Row", worn);
            this.worn = worn;
            this.words = words;
            this.cell = cell;
            wear(worn, 1);
            aside = aside();
        }

        /** A pen that writes where nobody sees it, to measure. */
        private Pen aside() {
            Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
            return pen(g, worn, 1, new TextFit());
        }

        private int highPx(V shown) {
            return (int) Math.ceil(height.px(aside, shown, widthPx));
        }

        @Override
        protected String spoken(V shown) {
            String said = words.apply(shown);
            getAccessibleContext().setAccessibleName(said);
            return said;
        }

        @Override
        protected Color ground(Appearance now) {
            return chosen ? now.palette().row() : now.palette().stage();
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
        Pen pen(Graphics2D g, Appearance now, double windowScale, TextFit remembering) {
            return Pen.ofRows(g, now, remembering);
        }

        /** The whole words of a row that is cut. */
        @Override
        public @Nullable String getToolTipText() {
            V shown = shown();
            if (shown == null) {
                return null;
            }
            Pen pen = aside();
            cell.paint(pen, shown, new Box(0, 0, widthPx, highPx(shown)), chosen);
            return pen.hasCut() ? PlainText.tip(words.apply(shown)) : null;
        }
    }
}
