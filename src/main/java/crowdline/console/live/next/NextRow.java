package crowdline.console.live.next;

import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.next.NextView.Later;
import crowdline.console.live.row.LiveRow;
import crowdline.console.live.row.Settled;
import crowdline.console.paint.Box;
import crowdline.console.paint.Digits;
import crowdline.console.paint.Growth;
import crowdline.console.paint.Growth.Item;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Paints what comes: the next figure with its call, the two after it, and three facts with their numbers. */
public final class NextRow extends LiveRow<NextView> {
    private static final double FACTS_SHARE = 0.35;
    private static final double LATER_SHARE = 0.16;
    private static final double GAP_PX = 22;
    private static final double LEAST_NAME_PX = 22;
    private static final double LEAST_CALL_PX = 18;
    private static final int CALL_LINES = 3;

    /** In the order of their importance: the figure with its seconds, its call, the facts, the two more of them, then the rest. */
    private static final int NAME = 0;

    private static final int CALL = 1;
    private static final int CAPTION = 2;
    private static final int FACTS = 3;
    private static final int MORE_FACTS = 4;
    private static final int LATER = 5;

    private final transient Settled settled = new Settled();

    public NextRow(Appearance appearance) {
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
        Box inner = within(box).inset(pen.px(20), pen.px(8));
        double[] sizes = sizes(pen, v, inner);
        Parts parts = Parts.of(pen, v, inner, sizes);
        next(pen, v, sizes, parts.next());
        if (parts.laterShown()) {
            later(pen, v, sizes[LATER], parts.later());
        }
        if (parts.facts() > 0) {
            FactPainter.paint(pen, v.facts().subList(0, parts.facts()), parts.factsBox(), sizes[FACTS]);
        }
    }

    /** The columns that are shown; what nobody has leaves its room to the others at no zoom, so that nothing moves. */
    private record Parts(Box next, Box later, boolean laterShown, Box factsBox, int facts) {
        static Parts of(Pen pen, NextView v, Box inner, double[] sizes) {
            double gap = pen.px(GAP_PX);
            boolean facts = sizes[FACTS] > 0;
            boolean later = sizes[LATER] > 0;
            Box rest = facts ? inner.leftOf(inner.w() * FACTS_SHARE + gap) : inner;
            Box next = later ? rest.leftOf(inner.w() * LATER_SHARE + gap) : rest;
            int shown = facts
                    ? Math.min(
                            sizes[MORE_FACTS] > 0 ? FactPainter.PLACES : 1,
                            v.facts().size())
                    : 0;
            return new Parts(
                    next,
                    rest.right(inner.w() * LATER_SHARE),
                    later && !v.later().isEmpty(),
                    inner.right(inner.w() * FACTS_SHARE),
                    shown);
        }
    }

    /** What the sizes depend on; the digits of a countdown change nothing. */
    private record Texts(
            String caption,
            String in,
            String where,
            @Nullable Mark swapped,
            String name,
            String call,
            List<String> later,
            List<FactView> facts,
            Box box) {}

    private double[] sizes(Pen pen, NextView v, Box box) {
        Texts texts = new Texts(
                v.caption(),
                Digits.still(v.in()),
                v.where(),
                v.swapped(),
                v.name(),
                v.call(),
                v.later().stream().map(l -> l.name() + inWords(l)).toList(),
                v.facts(),
                box);
        double value = pen.designedPx(TextRole.VALUE);
        double small = pen.designedPx(TextRole.SMALL);
        double factsPx = FactPainter.sizePx(pen, v.facts(), FactPainter.words(pen, factCell(pen, box, 3), small));
        return settled.sizes(
                texts,
                pen,
                () -> Growth.sizes(
                        List.of(
                                Item.stays(pen.px(LEAST_NAME_PX), pen.designedPx(TextRole.NEXT)),
                                Item.leaves(pen.px(LEAST_CALL_PX), pen.designedPx(TextRole.READ)),
                                Item.stays(pen.px(16), value),
                                Item.leaves(factsPx, factsPx),
                                Item.more(),
                                Item.leaves(small, small)),
                        sizes -> holds(pen, v, box, sizes),
                        pen.appearance().zoom()));
    }

    private static Box factCell(Pen pen, Box inner, int facts) {
        return FactPainter.cell(pen, inner.right(inner.w() * FACTS_SHARE), facts);
    }

    private static String inWords(Later later) {
        Mark swapped = later.swapped();
        return Digits.still(swapped == null ? later.in() : swapped.word());
    }

    private static boolean holds(Pen pen, NextView v, Box inner, double[] sizes) {
        Parts parts = Parts.of(pen, v, inner, sizes);
        Box box = parts.next();
        TextBlock name = pen.at(v.name(), true, sizes[NAME], box, 1);
        TextBlock call = call(pen, v, sizes[CALL], box);
        double tall = pen.lineHeightPx(true, sizes[CAPTION]) + name.heightPx() + callHeight(pen, call, sizes[CALL]);
        boolean fits =
                (name.whole() || (sizes[NAME] <= pen.px(LEAST_NAME_PX) && !parts.laterShown() && parts.facts() == 0))
                        && (call.whole() || sizes[CALL] <= pen.px(LEAST_CALL_PX))
                        && captionWidth(pen, v, sizes[CAPTION]) <= Math.max(box.w(), pen.px(16) * 20)
                        && tall <= box.h();
        return fits
                && (parts.facts() == 0
                        || FactPainter.holds(pen, v.facts().subList(0, parts.facts()), parts.factsBox(), sizes[FACTS]))
                && (!parts.laterShown() || laterFits(pen, v, sizes[LATER], parts.later()));
    }

    private static double captionWidth(Pen pen, NextView v, double sizePx) {
        return pen.widthPx(v.caption(), false, sizePx) + pen.px(8) + pen.widthPx(Digits.still(v.in()), true, sizePx);
    }

    private static TextBlock call(Pen pen, NextView v, double sizePx, Box box) {
        return pen.at(v.call(), false, Math.max(1, sizePx), box, CALL_LINES);
    }

    private static double callHeight(Pen pen, TextBlock call, double sizePx) {
        return sizePx <= 0 || call.widthPx() <= 0 ? 0 : call.heightPx() + pen.px(2);
    }

    private static void next(Pen pen, NextView v, double[] sizes, Box box) {
        double sizePx = sizes[CAPTION];
        Box top = box.top(pen.lineHeightPx(true, sizePx));
        TextBlock caption = pen.at(v.caption(), false, sizePx, top, 1);
        pen.midway(caption, top, pen.palette().soft());
        Box in = top.rightOf(caption.widthPx() + pen.px(8));
        TextBlock seconds = pen.at(v.in(), true, sizePx, in, 1);
        pen.midway(seconds, in, pen.palette().text());
        Box where = in.rightOf(pen.widthPx(Digits.still(v.in()), true, sizePx) + pen.px(18));
        double smallPx = sizePx * 0.82;
        Mark swapped = v.swapped();
        if (swapped != null) {
            where = where.rightOf(pen.mark(swapped, smallPx, where) + pen.px(18));
        }
        TextBlock look = pen.at(v.where(), false, smallPx, where, 1);
        if (look.whole()) {
            pen.midway(look, where, pen.palette().soft());
        }
        TextBlock name = pen.at(v.name(), true, sizes[NAME], box, 1);
        Box below = box.belowTop(top.h());
        pen.atTop(name, below, pen.palette().text());
        if (sizes[CALL] > 0) {
            Box rest = below.belowTop(name.heightPx() + pen.px(2));
            pen.atTop(call(pen, v, sizes[CALL], rest), rest, pen.palette().text());
        }
    }

    private static double laterHead(Pen pen, double sizePx) {
        return pen.lineHeightPx(false, sizePx) * 1.1;
    }

    /** One of the figures after the next: its name in two lines at most, and under it when. */
    private static boolean laterFits(Pen pen, NextView v, double sizePx, Box box) {
        double small = pen.designedPx(TextRole.SMALL);
        Box rest = box.belowTop(laterHead(pen, sizePx));
        double tall = 0;
        boolean whole = true;
        for (Later later : v.later()) {
            TextBlock name = pen.at(later.name(), true, sizePx, rest, 2);
            whole &= name.whole() && pen.widthPx(inWords(later), false, sizePx) <= box.w();
            tall += name.heightPx() + pen.lineHeightPx(false, sizePx);
        }
        // At its smallest it is shown all the same, a name cut if need be.
        return sizePx <= small || (whole && tall <= rest.h());
    }

    /** Where on the second line of a long name its time goes, if the line has room for it; else 0. */
    private static double besideLast(Pen pen, Later later, TextBlock name, double sizePx, double widthPx) {
        if (name.lines().size() != 2 || !name.whole()) {
            return 0;
        }
        Mark swapped = later.swapped();
        double time = swapped != null ? pen.widthPx(swapped, sizePx) : pen.widthPx(later.in(), false, sizePx) + 1;
        double from = name.lines().get(1).widthPx() + sizePx * 0.5;
        return from + time <= widthPx ? from : 0;
    }

    private static void later(Pen pen, NextView v, double sizePx, Box box) {
        double head = laterHead(pen, sizePx);
        Box top = box.top(head);
        pen.midway(pen.at("Then", false, sizePx, top, 1), top, pen.palette().soft());
        Box rest = box.belowTop(head);
        double line = pen.lineHeightPx(true, sizePx);
        double y = rest.y();
        int lines = Math.max(1, (int)
                Math.floor((rest.h() / line - v.later().size()) / v.later().size()));
        for (Later later : v.later()) {
            Box cell = new Box(rest.x(), y, rest.w(), rest.maxY() - y);
            TextBlock name = pen.at(later.name(), true, sizePx, cell, 2);
            double beside = lines > 1 ? 0 : besideLast(pen, later, name, sizePx, cell.w());
            if (lines < 2 && beside <= 0) {
                name = pen.at(later.name(), true, sizePx, cell, 1);
            }
            pen.atTop(name, cell, pen.palette().text());
            Box in = cell.belowTop(name.heightPx() - (beside > 0 ? line : 0))
                    .top(line)
                    .rightOf(beside);
            Mark swapped = later.swapped();
            if (swapped != null) {
                pen.mark(swapped, sizePx, in);
            } else {
                pen.midway(
                        pen.at(later.in(), false, sizePx, in, 1),
                        in,
                        pen.palette().soft());
            }
            y += name.heightPx() + (beside > 0 ? 0 : line) + pen.px(3);
        }
    }
}
