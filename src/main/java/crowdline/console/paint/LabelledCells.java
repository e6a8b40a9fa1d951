package crowdline.console.paint;

import crowdline.console.paint.Growth.Item;
import crowdline.console.theme.TextRole;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cells side by side along the top of a place, each a value under its label; filled from the left, one after the other.
 * All values have one size, and so have all labels. A state is never cut.
 */
public final class LabelledCells {
    private static final double GAP_PX = 12;
    private static final double LEAST_VALUE_PX = 14;
    private static final double LEAST_LABEL_PX = 11;

    /** A cell: a name in the whole of it, words under a label, or a state. */
    private record Cell(
            String label, String value, @Nullable Mark mark, boolean isName) {}

    private final Pen pen;
    private final Box inner;
    private final double[] shares;
    private final List<Cell> cells = new ArrayList<>();

    /**
     * Paints the rule under the cells; they are empty yet.
     *
     * @param shares of the width, one for each cell
     */
    public LabelledCells(Pen pen, Box box, double... shares) {
        this.pen = pen;
        this.shares = shares.clone();
        inner = box.inset(pen.px(20), pen.px(3));
        pen.fill(box.bottom(pen.px(1)), pen.palette().rule());
    }

    /** A name in the next cell, with no label, in two lines if it must, and cut if it is too long even then. */
    public LabelledCells name(String value) {
        cells.add(new Cell("", value, null, true));
        return this;
    }

    /** Words in the next cell. */
    public LabelledCells words(String label, String value) {
        cells.add(new Cell(label, value, null, false));
        return this;
    }

    /** A state in the next cell. */
    public LabelledCells mark(String label, Mark mark) {
        cells.add(new Cell(label, "", mark, false));
        return this;
    }

    /** Paints the cells. */
    public void paint() {
        List<Item> items = List.of(
                Item.stays(pen.px(LEAST_VALUE_PX), pen.designedPx(hasLabels() ? TextRole.VALUE : TextRole.LOOK)),
                Item.stays(pen.px(LEAST_LABEL_PX), pen.designedPx(TextRole.LABEL)));
        double[] sizes = Growth.sizes(items, this::holds, pen.appearance().zoom());
        double labelHeight = labelHeight(sizes[1]);
        double slack = Math.max(0, inner.h() - labelHeight - pen.lineHeightPx(true, sizes[0])) / 2;
        double x = 0;
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Box box = inner.rightOf(x).left(width(i)).inset(0, slack);
            x += inner.w() * shares[i];
            if (cell.isName()) {
                name(cell.value(), sizes[0], box);
                continue;
            }
            Box above = box.top(labelHeight);
            if (labelHeight > 0) {
                pen.midway(
                        pen.at(cell.label(), false, sizes[1], above, 1),
                        above,
                        pen.palette().soft());
            }
            Box below = box.belowTop(labelHeight);
            Mark mark = cell.mark();
            if (mark == null) {
                pen.midway(
                        pen.at(cell.value(), true, sizes[0], below, 1),
                        below,
                        pen.palette().text());
            } else {
                pen.mark(mark, sizes[0], below);
            }
        }
    }

    private boolean hasLabels() {
        return cells.stream().anyMatch(cell -> !cell.label().isEmpty());
    }

    /** Values that say by themselves what they are have the whole height. */
    private double labelHeight(double sizePx) {
        return hasLabels() ? pen.lineHeightPx(false, sizePx) : 0;
    }

    private void name(String name, double valuePx, Box box) {
        double least = pen.px(LEAST_VALUE_PX);
        TextBlock block = pen.block(List.of(name), pen.strong(), valuePx, least, box, 2);
        pen.midway(block, box, pen.palette().text());
    }

    private double width(int i) {
        return inner.w() * shares[i] - pen.px(GAP_PX);
    }

    private boolean holds(double[] sizes) {
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Mark mark = cell.mark();
            double value = mark == null
                    ? pen.widthPx(Digits.still(cell.value()), true, sizes[0])
                    : pen.widthPx(new Mark(mark.form(), mark.tone(), Digits.still(mark.word())), sizes[0]);
            boolean valueFits = cell.isName() || sizes[0] <= pen.px(LEAST_VALUE_PX) || value <= width(i);
            boolean labelFits =
                    sizes[1] <= pen.px(LEAST_LABEL_PX) || pen.widthPx(cell.label(), false, sizes[1]) <= width(i);
            if (!valueFits || !labelFits) {
                return false;
            }
        }
        return pen.lineHeightPx(true, sizes[0]) + labelHeight(sizes[1]) <= inner.h();
    }
}
