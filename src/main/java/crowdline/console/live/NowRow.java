package crowdline.console.live;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.util.List;

/** Paints what is being flown: the name as large as fits, what to look for, the time left, and the path from the crowd and from above. */
final class NowRow extends Painted<NowView> {
    private static final double SIDE_SHARE = 0.36;
    /** How much of the room between caption and bar the sentence may take from the name; tuned by looking. */
    private static final double LOOK_SHARE = 0.43;

    private static final double LEAST_NAME_PX = 26;

    NowRow(Appearance appearance) {
        super("Flying now", appearance);
    }

    @Override
    protected String spoken(NowView v) {
        Mark state = v.state();
        return (state == null ? "" : state.word() + ". ") + v.name() + ". " + v.look() + " "
                + (v.left().isEmpty() ? "" : v.left() + " left.")
                + (v.side().craft() == null
                        ? ""
                        : " Place of the aircraft: " + v.side().craft().word() + ".");
    }

    @Override
    protected void paint(Pen pen, NowView v, Box box) {
        Box inner = box.inset(pen.px(20), pen.px(8));
        double side = inner.w() * SIDE_SHARE;
        words(pen, v, inner.leftOf(side + pen.px(24)));
        ActPainter.paint(pen, v.side(), inner.right(side));
    }

    private static void words(Pen pen, NowView v, Box box) {
        double captionHeight = Math.min(pen.sizePx(TextRole.VALUE) * 1.3, box.h() * 0.15);
        caption(pen, v, box.top(captionHeight));
        double barHeight = Math.min(pen.sizePx(TextRole.NEXT) * 1.15, box.h() * 0.2);
        Box middle = box.belowTop(captionHeight).aboveBottom(barHeight + pen.px(6));
        TextBlock look = pen.lines(v.look(), TextRole.LOOK, false, middle.top(middle.h() * LOOK_SHARE), 3);
        double lookHeight = look.heightPx() + pen.px(4);
        Box name = middle.aboveBottom(lookHeight);
        TextBlock big =
                pen.block(List.of(v.name()), pen.strong(), pen.sizePx(TextRole.FIGURE), pen.px(LEAST_NAME_PX), name, 2);
        pen.midway(big, name, pen.palette().text());
        pen.atTop(look, middle.bottom(lookHeight), pen.palette().text());
        bar(pen, v, box.bottom(barHeight));
    }

    private static void caption(Pen pen, NowView v, Box box) {
        TextBlock caption = pen.line(v.caption(), TextRole.VALUE, false, box);
        pen.midway(caption, box, pen.palette().soft());
        Mark state = v.state();
        if (state != null) {
            pen.mark(state, TextRole.VALUE, box.rightOf(caption.widthPx() + pen.px(24)));
        }
    }

    private static void bar(Pen pen, NowView v, Box box) {
        double wordWidth = pen.sizePx(TextRole.NEXT) * 3.4;
        if (v.left().isEmpty()) {
            return;
        }
        Box bar = box.leftOf(wordWidth + pen.px(12));
        double thick = pen.px(12);
        pen.bar(
                new Box(bar.x(), bar.midY() - thick / 2, bar.w(), thick),
                v.leftShare(),
                pen.palette().accent(),
                pen.palette().sunk());
        Box words = box.right(wordWidth);
        pen.midway(
                pen.line(v.left(), TextRole.NEXT, true, words),
                words,
                pen.palette().text());
    }
}
