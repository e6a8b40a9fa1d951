package crowdline.console.live.say;

import crowdline.console.live.say.SayView.Bars;
import crowdline.console.live.say.SayView.What;
import crowdline.console.paint.Box;
import crowdline.console.paint.Digits;
import crowdline.console.paint.Pen;
import java.awt.Color;

/** Paints the time there is and the time it takes as two bars on one scale, with the seconds beside them. */
final class SayBars {
    private SayBars() {}

    /** How high they are with the seconds at a size; for words that wait there are only the seconds they take. */
    static double heightPx(Pen pen, What what, double sizePx) {
        return pen.lineHeightPx(true, sizePx) * (what == What.WAITING ? 1 : 2);
    }

    /** How wide the words beside the bars are at a size. */
    static double widthPx(Pen pen, SayView v, double sizePx) {
        Bars bars = v.bars();
        return bars == null
                ? 0
                : Math.max(
                        pen.widthPx(Digits.still(bars.thereIs()), true, sizePx),
                        pen.widthPx(Digits.still(bars.takes()), true, sizePx));
    }

    static void paint(Pen pen, SayView v, Bars bars, double sizePx, Box box) {
        if (v.what() == What.WAITING) {
            pen.midway(
                    pen.at(bars.takes(), false, sizePx, box, 1),
                    box,
                    pen.palette().soft());
            return;
        }
        double scaleS = Math.max(1, Math.max(bars.thereIsS(), bars.takesAtMostS()));
        // As wide as the longest words there can be, so that the bars keep their length from remark to remark.
        double wordWidth = Math.max(widthPx(pen, v, sizePx), pen.widthPx("00 s of quiet", true, sizePx));
        Box upper = box.top(box.h() / 2);
        Box lower = box.bottom(box.h() / 2);
        stretch(
                pen,
                upper.leftOf(wordWidth + pen.px(16)),
                bars.thereIsS() / scaleS,
                0,
                bars.goneS() / scaleS,
                pen.palette().accent());
        label(pen, bars.thereIs(), sizePx, upper.right(wordWidth));
        if (bars.takesS() > 0) {
            stretch(
                    pen,
                    lower.leftOf(wordWidth + pen.px(16)),
                    bars.takesS() / scaleS,
                    bars.takesAtMostS() / scaleS,
                    bars.goneS() / scaleS,
                    SayRow.isAlarm(v) ? pen.palette().alarm() : pen.palette().text());
            label(pen, bars.takes(), sizePx, lower.right(wordWidth));
        }
    }

    private static void stretch(Pen pen, Box line, double share, double atMostShare, double goneShare, Color colour) {
        double thick = Math.min(pen.px(14), line.h() * 0.55);
        Box bar = new Box(line.x(), line.midY() - thick / 2, line.w(), thick);
        if (atMostShare > share) {
            Box band = bar.left(bar.w() * atMostShare).rightOf(bar.w() * share);
            double thin = thick * 0.34;
            pen.fill(new Box(band.x(), band.midY() - thin / 2, band.w(), thin), colour);
        }
        pen.fill(bar.left(bar.w() * share), colour);
        Box gone = bar.left(bar.w() * Math.min(share, goneShare));
        pen.fill(gone, pen.palette().sunk());
    }

    private static void label(Pen pen, String words, double sizePx, Box box) {
        pen.midway(pen.at(words, true, sizePx, box, 1), box, pen.palette().text());
    }
}
