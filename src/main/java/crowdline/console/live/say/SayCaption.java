package crowdline.console.live.say;

import crowdline.console.live.say.SayView.What;
import crowdline.console.paint.Box;
import crowdline.console.paint.Digits;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;

/** Paints the line over the words: when to say them, what they are, and whether they fit. */
final class SayCaption {
    private SayCaption() {}

    /** How wide the line is at a size. */
    static double widthPx(Pen pen, SayView v, double sizePx) {
        double kind = kindPx(v, sizePx);
        Mark verdict = v.verdict();
        return pen.widthPx(Digits.still(v.caption()), true, sizePx)
                + sizePx
                + pen.widthPx(v.kind(), true, kind)
                + (verdict == null ? 0 : sizePx + pen.widthPx(still(verdict), kind));
    }

    /** Beside the large word of words that wait their kind is as small as ever. */
    private static double kindPx(SayView v, double sizePx) {
        return v.what() == What.WAITING ? sizePx * 0.65 : sizePx;
    }

    private static Mark still(Mark mark) {
        return new Mark(mark.form(), mark.tone(), Digits.still(mark.word()));
    }

    static void paint(Pen pen, SayView v, double sizePx, Box box) {
        TextBlock caption = pen.at(v.caption(), v.what() != What.NOTHING, sizePx, box, 1);
        double x;
        if (v.what() == What.WORDS) {
            double pad = sizePx * 0.35;
            Box tag = box.left(caption.widthPx() + 2 * pad);
            pen.tag(tag, pen.palette().chosen());
            pen.midway(caption, tag.rightOf(pad), pen.palette().onChosen());
            x = tag.w() + sizePx * 0.5;
        } else {
            pen.midway(
                    caption,
                    box,
                    v.what() == What.WAITING
                            ? pen.palette().text()
                            : pen.palette().soft());
            x = caption.widthPx() + sizePx * 0.6;
        }
        double kindPx = kindPx(v, sizePx);
        Mark verdict = v.verdict();
        double verdictWidth = verdict == null ? 0 : pen.widthPx(verdict, kindPx);
        Box kind = box.rightOf(x).leftOf(verdictWidth + (verdict == null ? 0 : sizePx * 0.4));
        boolean waits = v.what() == What.WAITING;
        pen.midway(
                pen.at(v.kind(), !waits, kindPx, kind, 1),
                kind,
                waits ? pen.palette().soft() : pen.palette().text());
        if (verdict != null) {
            pen.mark(verdict, kindPx, box.right(verdictWidth));
        }
    }
}
