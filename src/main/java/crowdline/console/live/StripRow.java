package crowdline.console.live;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;

/** Paints the strip: small, calm, always there, each value in a place of its own. */
final class StripRow extends Painted<StripView> {
    /** Shares of the width: act, time, drift, source, sureness, reading, hour; tuned to the longest words of each. */
    private static final double[] SHARES = {0.235, 0.14, 0.13, 0.115, 0.15, 0.14, 0.09};

    StripRow(Appearance appearance) {
        super("Strip", appearance);
    }

    @Override
    protected String spoken(StripView v) {
        return String.join(
                ", ",
                v.act(),
                v.timeInAct(),
                v.drift().word(),
                v.source().word(),
                v.sureness().word(),
                v.reading().word(),
                v.hour());
    }

    @Override
    protected void paint(Pen pen, StripView v, Box box) {
        Box inner = box.inset(pen.px(20), pen.px(5));
        double x = 0;
        Box[] cells = new Box[SHARES.length];
        for (int i = 0; i < SHARES.length; i++) {
            cells[i] = inner.rightOf(x).left(inner.w() * SHARES[i] - pen.px(12));
            x += inner.w() * SHARES[i];
        }
        words(pen, "Act", v.act(), cells[0]);
        words(pen, "Time in the act", v.timeInAct(), cells[1]);
        mark(pen, "Against the plan", v.drift(), cells[2]);
        mark(pen, "Moved by", v.source(), cells[3]);
        mark(pen, "Position", v.sureness(), cells[4]);
        mark(pen, "Last reading", v.reading(), cells[5]);
        words(pen, "Hour", v.hour(), cells[6]);
        pen.fill(box.bottom(pen.px(1)), pen.palette().rule());
    }

    private static void words(Pen pen, String label, String value, Box cell) {
        Box below = label(pen, label, cell);
        pen.midway(
                pen.line(value, TextRole.VALUE, true, below),
                below,
                pen.palette().text());
    }

    private static void mark(Pen pen, String label, Mark mark, Box cell) {
        pen.mark(mark, TextRole.VALUE, label(pen, label, cell));
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
