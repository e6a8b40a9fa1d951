package crowdline.console.paint;

import crowdline.console.theme.TextRole;

/** Cells side by side along the top of a place, each a value under its label; filled from the left, one after the other. */
public final class LabelledCells {
    private final Pen pen;
    private final Box inner;
    private final double[] shares;
    private int next;
    private double x;

    /**
     * Paints the rule under the cells; they are empty yet.
     *
     * @param shares of the width, one for each cell
     */
    public LabelledCells(Pen pen, Box box, double... shares) {
        this.pen = pen;
        this.shares = shares.clone();
        inner = box.inset(pen.px(20), pen.px(5));
        pen.fill(box.bottom(pen.px(1)), pen.palette().rule());
    }

    /** Words in the next cell. */
    public LabelledCells words(String label, String value) {
        Box below = label(label);
        pen.midway(
                pen.line(value, TextRole.VALUE, true, below),
                below,
                pen.palette().text());
        return this;
    }

    /** A state in the next cell. */
    public LabelledCells mark(String label, Mark mark) {
        pen.mark(mark, TextRole.VALUE, label(label));
        return this;
    }

    private Box label(String label) {
        double wide = inner.w() * shares[next++];
        Box cell = inner.rightOf(x).left(wide - pen.px(12));
        x += wide;
        double height = Math.min(pen.sizePx(TextRole.LABEL) * 1.25, cell.h() * 0.4);
        Box above = cell.top(height);
        pen.midway(
                pen.line(label, TextRole.LABEL, false, above),
                above,
                pen.palette().soft());
        return cell.belowTop(height);
    }
}
