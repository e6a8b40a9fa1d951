package crowdline.console.live.now;

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
import org.jspecify.annotations.Nullable;

/** Paints what is being flown: the name as large as fits, what to look for, the time left, and the figure as the crowd sees it. */
public final class NowRow extends LiveRow<NowView> {
    private static final double SIDE_SHARE = 0.36;
    private static final double LEAST_NAME_PX = 26;
    private static final double LEAST_LOOK_PX = 25;
    private static final double LEAST_CAPTION_PX = 20;
    /** A name that is large already leaves what the zoom adds to the smaller texts. Tuned by looking. */
    private static final double NAME_GROWS = 0.3;

    private static final double BAR_PX = 12;
    private static final int NAME_LINES = 2;
    private static final int LOOK_LINES = 3;

    private static final int NAME = 0;
    private static final int LEFT = 1;
    private static final int LOOK = 2;
    private static final int CAPTION = 3;

    private final transient Settled settled = new Settled();
    private final transient SketchImage sketches = new SketchImage();

    public NowRow(Appearance appearance) {
        super("Flying now", appearance);
    }

    @Override
    protected String spoken(NowView v) {
        Mark state = v.state();
        return (state == null ? "" : state.word() + ". ") + v.name() + ". " + v.look() + " "
                + (v.seen() == null || v.seen().words().isEmpty()
                        ? ""
                        : v.seen().words() + ". ")
                + (v.left().isEmpty() ? "" : v.left() + " left.")
                + (v.side().craft() == null
                        ? ""
                        : " Place of the aircraft: " + v.side().craft().word() + ".");
    }

    @Override
    protected void paint(Pen pen, NowView v, Box box) {
        Box inner = within(box).inset(pen.px(20), pen.px(8));
        double side = inner.w() * SIDE_SHARE;
        words(pen, v, inner.leftOf(side + pen.px(24)));
        FigurePainter.paint(pen, v.side(), v.sketch(), sketches, inner.right(side));
    }

    /** What the sizes depend on; the digits of a countdown change nothing. */
    private record Texts(
            String name,
            String look,
            String left,
            String caption,
            @Nullable Mark state,
            Box box) {}

    private double[] sizes(Pen pen, NowView v, Box box) {
        String left = Digits.still(v.left());
        Texts texts = new Texts(v.name(), v.look(), left, v.caption(), v.state(), box);
        return settled.sizes(
                texts,
                pen,
                () -> Growth.sizes(
                        List.of(
                                Item.stays(pen.px(LEAST_NAME_PX), pen.designedPx(TextRole.FIGURE))
                                        .growingBy(NAME_GROWS),
                                Item.stays(pen.designedPx(TextRole.NEXT), pen.designedPx(TextRole.NEXT)),
                                Item.leaves(pen.px(LEAST_LOOK_PX), pen.designedPx(TextRole.LOOK)),
                                Item.stays(pen.px(LEAST_CAPTION_PX), pen.designedPx(TextRole.VALUE))),
                        sizes -> holds(pen, v, left, box, sizes),
                        pen.appearance().zoom()));
    }

    private static boolean holds(Pen pen, NowView v, String left, Box box, double[] sizes) {
        TextBlock name = name(pen, v, sizes[NAME], box);
        TextBlock look = look(pen, v, sizes[LOOK], box);
        double leftWidth = left.isEmpty() ? 0 : pen.widthPx(left, true, sizes[LEFT]);
        Mark state = v.state();
        double captionWidth = pen.widthPx(v.caption(), false, sizes[CAPTION])
                + (state == null ? 0 : pen.px(24) + pen.widthPx(state, sizes[CAPTION]));
        boolean nameFits = name.whole() || sizes[NAME] <= pen.px(LEAST_NAME_PX);
        boolean lookFits = look.whole() || sizes[LOOK] <= pen.px(LEAST_LOOK_PX);
        double tall = pen.lineHeightPx(true, sizes[CAPTION])
                + name.heightPx()
                + lookHeight(pen, look, sizes[LOOK])
                + barHeight(pen, v, sizes);
        boolean captionFits = captionWidth <= box.w() || sizes[CAPTION] <= pen.px(LEAST_CAPTION_PX);
        return nameFits && lookFits && captionFits && leftWidth <= box.w() * 0.5 && tall <= box.h();
    }

    private static TextBlock name(Pen pen, NowView v, double sizePx, Box box) {
        return pen.at(v.name(), true, sizePx, box, NAME_LINES);
    }

    private static TextBlock look(Pen pen, NowView v, double sizePx, Box box) {
        return pen.at(v.look(), false, Math.max(1, sizePx), box, LOOK_LINES);
    }

    private static double lookHeight(Pen pen, TextBlock look, double sizePx) {
        return sizePx <= 0 ? 0 : look.heightPx() + pen.px(4);
    }

    /** The bar lies under a line for what is seen, which is kept free in every figure: what comes or goes moves nothing. */
    private static double barHeight(Pen pen, NowView v, double[] sizes) {
        double left = v.left().isEmpty() ? 0 : pen.lineHeightPx(true, sizes[LEFT]) + pen.px(2);
        return v.seen() == null ? left : Math.max(left, pen.lineHeightPx(true, sizes[CAPTION]) + pen.px(6 + BAR_PX));
    }

    private void words(Pen pen, NowView v, Box box) {
        double[] sizes = sizes(pen, v, box);
        double captionHeight = pen.lineHeightPx(true, sizes[CAPTION]);
        caption(pen, v, sizes[CAPTION], box.top(captionHeight));
        double barHeight = barHeight(pen, v, sizes);
        Box middle = box.belowTop(captionHeight).aboveBottom(barHeight);
        TextBlock look = look(pen, v, sizes[LOOK], middle);
        double lookHeight = lookHeight(pen, look, sizes[LOOK]);
        Box name = middle.aboveBottom(lookHeight);
        pen.midway(name(pen, v, sizes[NAME], name), name, pen.palette().text());
        if (lookHeight > 0) {
            pen.atTop(look, middle.bottom(lookHeight), pen.palette().text());
        }
        if (barHeight > 0) {
            bar(pen, v, sizes, box.bottom(barHeight));
        }
    }

    private static void caption(Pen pen, NowView v, double sizePx, Box box) {
        TextBlock caption = pen.at(v.caption(), false, sizePx, box, 1);
        pen.midway(caption, box, pen.palette().soft());
        Mark state = v.state();
        if (state != null) {
            pen.mark(state, sizePx, box.rightOf(caption.widthPx() + pen.px(24)));
        }
    }

    private static void seen(Pen pen, SeenView seen, double sizePx, Box box) {
        TextBlock both = pen.at(seen.words(), true, sizePx, box, 1);
        TextBlock told = both.whole() ? both : pen.at(seen.shorter(), true, sizePx, box, 1);
        pen.midway(told, box, pen.palette().accent());
    }

    private static void bar(Pen pen, NowView v, double[] sizes, Box box) {
        double sizePx = sizes[LEFT];
        double wordWidth = Math.max(sizePx * 3.4, pen.widthPx(Digits.still(v.left()), true, sizePx));
        Box bar = box.leftOf(wordWidth + pen.px(12));
        double thick = Math.min(pen.px(BAR_PX), box.h() * 0.4);
        SeenView seen = v.seen();
        double top = seen == null ? bar.midY() - thick / 2 : bar.maxY() - thick - pen.px(2);
        if (seen != null) {
            seen(pen, seen, sizes[CAPTION], bar.aboveBottom(thick + pen.px(4)));
        }
        pen.bar(
                new Box(bar.x(), top, bar.w(), thick),
                v.leftShare(),
                pen.palette().accent(),
                pen.palette().sunk());
        Box words = box.right(wordWidth);
        pen.midway(
                pen.at(v.left(), true, sizePx, words, 1), words, pen.palette().text());
    }
}
