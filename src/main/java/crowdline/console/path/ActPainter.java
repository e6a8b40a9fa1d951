package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.sheet.PathFrame;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Craft;
import java.util.Optional;

/**
 * Paints a path from the crowd and from above under it: to one scale, so that what is above each other is the same place,
 * unless a deep act would make both small; then each as large as its half allows.
 */
public final class ActPainter {
    /** One scale is given up if it would shrink the view from the crowd below this share; tuned by eye. */
    private static final double LEAST_SHARE = 0.6;

    private static final double FOOT_PX = 20;
    private static final double HEAD_PX = 17;
    private static final double BETWEEN_PX = 8;

    private ActPainter() {}

    /**
     * Paints both views into a box, or the one from the crowd alone where nothing is to be seen from above, which shows
     * only what is flown now, before and after it: of the whole act the lines would cover each other.
     */
    public static void paint(Pen pen, SideView view, Box box) {
        paint(pen, view, box, false);
    }

    /** The same with the whole act in the view from above. */
    public static void whole(Pen pen, SideView view, Box box) {
        paint(pen, view, box, true);
    }

    private static void paint(Pen pen, SideView view, Box box, boolean whole) {
        if (view.isEmpty() && view.craft() == null) {
            return;
        }
        Craft craft = view.craft();
        Box head = box.top(pen.px(HEAD_PX));
        if (craft != null && !craft.word().isEmpty()) {
            CraftPainter.word(pen, craft, view.craftWord(), head);
        }
        if (!view.hasDepth()) {
            SidePainter.paint(pen, view, box);
            return;
        }
        Places places = Places.of(pen, view, box);
        side(pen, view, places.side(), places.sideBox(), head);
        plan(pen, view, places.plan(), places.planBox(), head.h(), whole);
    }

    /** Paints the view from above alone: what is flown now, before and after it. */
    public static void plan(Pen pen, SideView view, Box box) {
        double headPx = pen.px(HEAD_PX);
        Box room = box.belowTop(headPx).aboveBottom(pen.px(FOOT_PX)).inset(pen.px(6), 0);
        plan(
                pen,
                view,
                frame(view.extent(PathView.PLAN), room),
                box.belowTop(headPx).aboveBottom(pen.px(FOOT_PX)),
                headPx,
                false);
    }

    /** From metres to the picture seen from the crowd, where both views are painted; empty where only one is. */
    public static Optional<PathFrame> sideFrame(Pen pen, SideView view, Box box) {
        return view.isEmpty() || !view.hasDepth()
                ? Optional.empty()
                : Optional.of(Places.of(pen, view, box).side());
    }

    /** Where both views are painted, and to which scale. */
    private record Places(PathFrame side, Box sideBox, PathFrame plan, Box planBox) {
        static Places of(Pen pen, SideView view, Box box) {
            Box head = box.top(pen.px(HEAD_PX));
            PathExtent side = view.extent(PathView.SIDE);
            PathExtent plan = view.extent(PathView.PLAN);
            Box paths = box.inset(pen.px(6), 0).belowTop(head.h()).aboveBottom(pen.px(FOOT_PX));
            double between = pen.px(BETWEEN_PX) + head.h();
            double room = paths.h() - between;
            double alone = Math.min(paths.w() / side.wideM(), paths.h() / side.tallM());
            double both =
                    Math.min(paths.w() / Math.max(side.wideM(), plan.wideM()), room / (side.tallM() + plan.tallM()));
            boolean oneScale = both >= LEAST_SHARE * alone;
            double slack = oneScale ? Math.max(0, room - both * (side.tallM() + plan.tallM())) / 2 : 0;
            double sideTall = oneScale ? both * side.tallM() : room / 2;
            double planTall = oneScale ? both * plan.tallM() : room / 2;
            Box upper = paths.belowTop(slack).top(sideTall);
            Box lower = paths.belowTop(slack + sideTall + between).top(planTall);
            return new Places(
                    frame(side, upper),
                    new Box(box.x(), head.maxY(), box.w(), upper.maxY() - head.maxY()),
                    frame(plan, lower),
                    new Box(box.x(), lower.y(), box.w(), lower.h()));
        }
    }

    private static void side(Pen pen, SideView view, PathFrame frame, Box box, Box head) {
        caption(pen, "from the crowd", head);
        line(pen, box, frame.y(0), 1.5);
        SidePainter.strokes(pen, view, frame, PathView.SIDE, true);
        Craft craft = view.craft();
        if (craft != null) {
            CraftPainter.paint(pen, frame, PathView.SIDE, craft, view.eye(), box);
        }
    }

    private static void plan(Pen pen, SideView view, PathFrame frame, Box box, double headPx, boolean whole) {
        caption(pen, "from above", new Box(box.x(), box.y() - headPx, box.w(), headPx));
        Double crowdM = view.crowdM();
        line(pen, box, frame.y(0), 1);
        double foot = frame.y(crowdM == null ? 0 : -crowdM);
        if (crowdM != null) {
            line(pen, box, foot, 3);
        }
        SidePainter.strokes(pen, view, frame, PathView.PLAN, whole);
        Craft craft = view.craft();
        if (craft != null) {
            CraftPainter.paint(pen, frame, PathView.PLAN, craft, view.eye(), box);
        }
        SidePainter.foot(pen, frame.x(0), foot, box);
        Box words = new Box(frame.x(0) + pen.px(12), foot + pen.px(2), box.maxX() - frame.x(0), pen.px(18));
        pen.midway(
                pen.line("crowd", TextRole.LABEL, false, words),
                words,
                pen.palette().soft());
    }

    private static void line(Pen pen, Box box, double y, double thickPx) {
        pen.fill(new Box(box.x(), y, box.w(), pen.px(thickPx)), pen.palette().rule());
    }

    private static PathFrame frame(PathExtent extent, Box box) {
        return PathFrame.fit(extent, box.x(), box.y(), box.w(), box.h());
    }

    private static void caption(Pen pen, String words, Box box) {
        TextBlock caption = pen.line(words, TextRole.LABEL, false, box);
        pen.midway(caption, box, pen.palette().soft());
    }
}
