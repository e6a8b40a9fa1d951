package crowdline.console.live;

import crowdline.console.live.NextView.Later;
import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.util.stream.Collectors;

/** Paints what comes: the next figure with its call, the two after it, and three facts with their numbers. */
final class NextRow extends Painted<NextView> {
    /** Below this many designed pixels across, the figures after the next give up their place; tuned by looking. */
    private static final double ROOM_FOR_LATER_PX = 800;

    NextRow(Appearance appearance) {
        super("Next", appearance);
    }

    @Override
    protected String spoken(NextView v) {
        Mark swapped = v.swapped();
        return v.caption() + " " + v.in() + ": " + v.name() + (swapped == null ? "" : ", " + swapped.word())
                + (v.where().isEmpty() ? "" : ", " + v.where()) + ". "
                + v.call()
                + v.later().stream()
                        .map(l -> " Then " + l.name() + (l.swapped() == null ? "." : ", swapped."))
                        .collect(Collectors.joining())
                + v.facts().stream()
                        .map(f -> " Fact " + f.key() + ": " + f.full().text())
                        .collect(Collectors.joining());
    }

    @Override
    protected void paint(Pen pen, NextView v, Box box) {
        Box inner = box.inset(pen.px(20), pen.px(10));
        boolean roomy = inner.w() / (pen.px(1) * pen.appearance().zoom().factor()) > ROOM_FOR_LATER_PX;
        double factsWidth = inner.w() * (roomy ? 0.35 : 0.42);
        double laterWidth = roomy ? inner.w() * 0.16 : 0;
        double gap = pen.px(22);
        next(pen, v, inner.leftOf(factsWidth + laterWidth + gap * (roomy ? 2 : 1)));
        Box right = inner.right(factsWidth);
        if (roomy) {
            later(pen, v, inner.leftOf(factsWidth + gap).right(laterWidth));
        }
        FactPainter.paint(pen, v.facts(), right);
    }

    private static void next(Pen pen, NextView v, Box box) {
        double captionHeight = Math.min(pen.sizePx(TextRole.VALUE) * 1.3, box.h() * 0.22);
        Box top = box.top(captionHeight);
        TextBlock caption = pen.line(v.caption(), TextRole.VALUE, false, top);
        pen.midway(caption, top, pen.palette().soft());
        Box in = top.rightOf(caption.widthPx() + pen.px(8));
        TextBlock seconds = pen.line(v.in(), TextRole.VALUE, true, in);
        pen.midway(seconds, in, pen.palette().text());
        Box where = in.rightOf(seconds.widthPx() + pen.px(18));
        Mark swapped = v.swapped();
        if (swapped != null) {
            where = where.rightOf(pen.mark(swapped, TextRole.SMALL, where) + pen.px(18));
        }
        pen.midway(
                pen.line(v.where(), TextRole.SMALL, false, where),
                where,
                pen.palette().soft());
        double nameHeight = Math.min(pen.sizePx(TextRole.NEXT) * 1.3, box.h() * 0.34);
        Box name = box.belowTop(captionHeight).top(nameHeight);
        pen.midway(
                pen.line(v.name(), TextRole.NEXT, true, name),
                name,
                pen.palette().text());
        Box call = box.belowTop(captionHeight + nameHeight + pen.px(2));
        pen.atTop(
                pen.lines(v.call(), TextRole.READ, false, call, 3),
                call,
                pen.palette().text());
    }

    private static void later(Pen pen, NextView v, Box box) {
        double captionHeight = Math.min(pen.sizePx(TextRole.VALUE) * 1.3, box.h() * 0.22);
        if (v.later().isEmpty()) {
            return;
        }
        Box top = box.top(captionHeight);
        pen.midway(
                pen.line("Then", TextRole.VALUE, false, top), top, pen.palette().soft());
        Box rest = box.belowTop(captionHeight);
        double each = rest.h() / 2;
        for (int i = 0; i < Math.min(2, v.later().size()); i++) {
            Later later = v.later().get(i);
            Box cell = rest.belowTop(i * each).top(each - pen.px(4));
            double inHeight = cell.h() * 0.36;
            Box name = cell.aboveBottom(inHeight);
            pen.midway(
                    pen.lines(later.name(), TextRole.SMALL, true, name, 2),
                    name,
                    pen.palette().text());
            Box in = cell.bottom(inHeight);
            Mark swapped = later.swapped();
            if (swapped != null) {
                pen.mark(swapped, TextRole.SMALL, in);
                continue;
            }
            pen.midway(
                    pen.line(later.in(), TextRole.SMALL, false, in),
                    in,
                    pen.palette().soft());
        }
    }
}
