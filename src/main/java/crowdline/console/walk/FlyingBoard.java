package crowdline.console.walk;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.path.ActPainter;
import crowdline.console.path.SkyPainter;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.walk.WalkView.Flying;
import crowdline.console.walk.WalkView.Value;
import java.util.List;
import java.util.stream.Collectors;

/** Paints what is flown: the figure and its element in words, the side view, and the numbers under it. */
final class FlyingBoard extends Painted<Flying> {
    /** Shares of the height; tuned by looking at both ends of the zoom. */
    private static final double NAME = 0.16;

    private static final double WORDS = 0.17;
    private static final double VALUES = 0.16;
    private static final double LEAST_NAME_PX = 22;
    /** How much of the drawing the view from above takes. */
    private static final double PLAN = 0.34;
    /** Any less, and the words over two numbers read as one. */
    private static final double CELL_GAP_PX = 24;

    FlyingBoard(Appearance appearance) {
        super("What is flown", appearance);
    }

    @Override
    protected String spoken(Flying v) {
        return v.name() + ", " + v.place() + ". " + v.element() + ". " + v.look() + " "
                + v.values().stream().map(x -> x.label() + " " + x.value()).collect(Collectors.joining(", "));
    }

    @Override
    protected void paint(Pen pen, Flying v, Box box) {
        Box inner = box.inset(pen.px(20), pen.px(8));
        double nameHeight = inner.h() * NAME;
        Box name = inner.top(nameHeight);
        pen.midway(
                pen.block(
                        List.of(v.name()),
                        pen.strong(),
                        pen.sizePx(TextRole.FIGURE) * 0.7,
                        pen.px(LEAST_NAME_PX),
                        name.leftOf(inner.w() * 0.16),
                        2),
                name,
                pen.palette().text());
        Box place = name.right(inner.w() * 0.14);
        pen.atRight(
                pen.lineOrLines(v.place(), TextRole.VALUE, place, 2, 0.55),
                place,
                pen.palette().soft());
        Box words = inner.belowTop(nameHeight).top(inner.h() * WORDS);
        Box element = words.top(words.h() * 0.42);
        pen.midway(
                pen.line(v.element(), TextRole.LOOK, true, element),
                element,
                pen.palette().accent());
        Box look = words.belowTop(words.h() * 0.44);
        pen.atTop(
                pen.lines(v.look(), TextRole.READ, false, look, 3),
                look,
                pen.palette().text());
        double valuesHeight = inner.h() * VALUES;
        paths(pen, v, inner.belowTop(nameHeight + words.h() + pen.px(6)).aboveBottom(valuesHeight + pen.px(4)));
        values(pen, v.values(), inner.bottom(valuesHeight));
    }

    /** The figure as the crowd sees it, with its way from above; the whole act's where that is not known. */
    private static void paths(Pen pen, Flying v, Box box) {
        if (v.sky().isEmpty()) {
            ActPainter.paint(pen, v.side(), box);
            return;
        }
        double plan = v.side().hasDepth() ? box.h() * PLAN : 0;
        SkyPainter.paint(pen, v.sky(), box.aboveBottom(plan));
        if (plan > 0) {
            ActPainter.plan(pen, v.side(), box.bottom(plan));
        }
    }

    private static void values(Pen pen, List<Value> values, Box box) {
        // Where is the longest of the four.
        double[] shares = {0.2, 0.23, 0.2, 0.37};
        // One size for all four, the largest at which the longest fits.
        double sizePx = pen.sizePx(TextRole.NEXT);
        for (int i = 0; i < values.size() && i < shares.length; i++) {
            Box cell = new Box(0, 0, box.w() * shares[i] - pen.px(CELL_GAP_PX), box.h() * 0.68);
            sizePx = Math.min(
                    sizePx,
                    pen.line(values.get(i).value(), TextRole.NEXT, true, cell).sizePx());
        }
        double x = 0;
        for (int i = 0; i < values.size() && i < shares.length; i++) {
            Box cell = box.rightOf(x).left(box.w() * shares[i] - pen.px(CELL_GAP_PX));
            x += box.w() * shares[i];
            Box label = cell.top(cell.h() * 0.32);
            pen.midway(
                    pen.line(values.get(i).label(), TextRole.LABEL, false, label),
                    label,
                    pen.palette().soft());
            Box below = cell.belowTop(cell.h() * 0.32);
            TextBlock value = pen.at(values.get(i).value(), true, sizePx, below, 1);
            pen.midway(value, below, pen.palette().text());
        }
    }
}
