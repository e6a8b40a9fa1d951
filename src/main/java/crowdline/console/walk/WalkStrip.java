package crowdline.console.walk;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.walk.WalkView.Top;

/** Paints the line along the top: which act, from which times, how fast, where in it. */
final class WalkStrip extends Painted<Top> {
    /** Shares of the width; tuned to the longest words of each. */
    private static final double[] SHARES = {0.3, 0.13, 0.22, 0.15, 0.07, 0.13};

    WalkStrip(Appearance appearance) {
        super("Act and time", appearance);
    }

    @Override
    protected String spoken(Top v) {
        return String.join(", ", v.act(), v.variant(), v.times(), v.state().word(), v.speed(), v.clock());
    }

    @Override
    protected void paint(Pen pen, Top v, Box box) {
        Box inner = box.inset(pen.px(20), pen.px(5));
        double x = 0;
        Box[] cells = new Box[SHARES.length];
        for (int i = 0; i < SHARES.length; i++) {
            cells[i] = inner.rightOf(x).left(inner.w() * SHARES[i] - pen.px(12));
            x += inner.w() * SHARES[i];
        }
        words(pen, "Act", v.act(), cells[0]);
        words(pen, "Variant", v.variant(), cells[1]);
        words(pen, "Times from", v.times(), cells[2]);
        pen.mark(v.state(), TextRole.VALUE, label(pen, "State", cells[3]));
        words(pen, "Speed", v.speed(), cells[4]);
        words(pen, "Time in the act", v.clock(), cells[5]);
        pen.fill(box.bottom(pen.px(1)), pen.palette().rule());
    }

    private static void words(Pen pen, String label, String value, Box cell) {
        Box below = label(pen, label, cell);
        pen.midway(
                pen.line(value, TextRole.VALUE, true, below),
                below,
                pen.palette().text());
    }

    private static Box label(Pen pen, String label, Box cell) {
        double height = Math.min(pen.sizePx(TextRole.LABEL) * 1.25, cell.h() * 0.4);
        Box above = cell.top(height);
        pen.midway(
                pen.line(label, TextRole.LABEL, false, above),
                above,
                pen.palette().soft());
        return cell.belowTop(height);
    }
}
