package crowdline.console.live;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.sheet.PathExtent;
import crowdline.sheet.PathFrame;
import crowdline.sheet.PathView;

/** Paints a path from the crowd and, where there is room, from above under it, to one scale. */
public final class ActPainter {
    /** The view from above is left out if it would shrink the one from the crowd below this share; tuned by eye. */
    private static final double LEAST_SHARE = 0.6;

    private static final double FOOT_PX = 22;
    private static final double HEAD_PX = 20;

    private ActPainter() {}

    /** Paints both views into a box, or the one from the crowd alone; an empty view paints nothing. */
    public static void paint(Pen pen, SideView view, Box box) {
        PathExtent side = view.extent(PathView.SIDE);
        PathExtent plan = view.extent(PathView.PLAN);
        double foot = pen.px(FOOT_PX);
        double head = pen.px(HEAD_PX);
        Box paths = box.inset(pen.px(6), 0);
        double alone = Math.min(paths.w() / side.wideM(), (box.h() - foot) / side.tallM());
        double room = box.h() - 2 * foot - 2 * head;
        double both = Math.min(paths.w() / side.wideM(), room / (side.tallM() + plan.tallM()));
        if (view.isEmpty() || !view.hasDepth() || both < LEAST_SHARE * alone) {
            SidePainter.paint(pen, view, box);
            return;
        }
        double slack = Math.max(0, room - both * (side.tallM() + plan.tallM())) / 2;
        double sideTall = both * side.tallM();
        double planTall = both * plan.tallM();
        Box upper = box.belowTop(head + slack / 2).top(sideTall);
        SidePainter.paint(pen, view, upper, frame(side, upper));
        caption(pen, "from the crowd", box.top(head));
        Box under = box.belowTop(head + slack / 2 + sideTall + foot + slack / 2);
        caption(pen, "from above", under.top(head));
        Box lower = under.belowTop(head).top(planTall);
        PathFrame frame = frame(plan, lower);
        pen.fill(
                new Box(box.x(), frame.y(0), box.w(), pen.px(1.5)),
                pen.palette().rule());
        SidePainter.strokes(pen, view, frame, PathView.PLAN);
        Box words = new Box(box.x(), lower.maxY() + pen.px(2), box.w(), pen.px(18));
        TextBlock crowd = pen.line("crowd", TextRole.LABEL, false, words);
        pen.midway(
                crowd,
                words.rightOf((words.w() - crowd.widthPx()) / 2),
                pen.palette().soft());
    }

    private static PathFrame frame(PathExtent extent, Box box) {
        return PathFrame.fit(extent, box.x(), box.y(), box.w(), box.h());
    }

    private static void caption(Pen pen, String words, Box box) {
        pen.midway(
                pen.line(words, TextRole.LABEL, false, box), box, pen.palette().soft());
    }
}
