package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.sheet.PathFrame;
import crowdline.sight.PathView;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Stretch;
import java.awt.Color;
import java.awt.geom.Path2D;

/** Paints a path seen from the crowd, to one scale along and up so that a round loop is round. */
public final class SidePainter {
    private SidePainter() {}

    /** Paints the view into a box; an empty view paints nothing. */
    public static void paint(Pen pen, SideView view, Box box) {
        if (view.isEmpty() && view.craft() == null) {
            return;
        }
        double footHeight = pen.px(22);
        Box sky = box.aboveBottom(footHeight).inset(pen.px(6), pen.px(6));
        PathFrame frame = PathFrame.fit(view.extent(PathView.SIDE), sky.x(), sky.y(), sky.w(), sky.h());
        paint(pen, view, box, frame);
    }

    /** Paints the view in a frame of the caller's; the box is where its foot is. */
    static void paint(Pen pen, SideView view, Box box, PathFrame frame) {
        ground(pen, frame, box);
        strokes(pen, view, frame, PathView.SIDE, true);
        Craft craft = view.craft();
        if (craft != null) {
            CraftPainter.paint(pen, frame, PathView.SIDE, craft, view.eye(), box);
        }
    }

    /** Every stretch, or the current one and its neighbours; the current one last and strongest. */
    static void strokes(Pen pen, SideView view, PathFrame frame, PathView from, boolean whole) {
        for (int i = 0; i < view.stretches().size(); i++) {
            boolean near = whole || view.current() < 0 || Math.abs(i - view.current()) == 1;
            if (i != view.current() && near) {
                Color colour = pen.palette().path();
                stroke(pen, frame, from, view.stretches().get(i), colour, view.current() < 0 ? 1.8 : 1.1);
            }
        }
        if (view.current() >= 0 && view.current() < view.stretches().size()) {
            Stretch now = view.stretches().get(view.current());
            stroke(pen, frame, from, now, pen.palette().pathNow(), 4.5);
        }
    }

    private static void ground(Pen pen, PathFrame frame, Box box) {
        double y = frame.y(0);
        pen.fill(new Box(box.x(), y, box.w(), pen.px(1.5)), pen.palette().rule());
        foot(pen, frame.x(0), y, box);
    }

    /** The commentator under a line, between left and right. */
    static void foot(Pen pen, double x, double y, Box box) {
        here(pen, x, y);
        Box foot = new Box(box.x(), y + pen.px(2), box.w(), pen.px(18));
        TextBlock left = pen.line("left", TextRole.LABEL, false, foot);
        pen.midway(left, foot, pen.palette().soft());
        pen.atRight(
                pen.line("right", TextRole.LABEL, false, foot),
                foot,
                pen.palette().soft());
    }

    /** The commentator under a line. */
    public static void here(Pen pen, double x, double y) {
        Path2D here = new Path2D.Double();
        here.moveTo(x, y + pen.px(4));
        here.lineTo(x + pen.px(6), y + pen.px(14));
        here.lineTo(x - pen.px(6), y + pen.px(14));
        here.closePath();
        pen.surface().setColor(pen.palette().soft());
        pen.surface().fill(here);
    }

    private static void stroke(Pen pen, PathFrame frame, PathView from, Stretch stretch, Color colour, double widthPx) {
        PathStroke.line(pen, stretch.spots(), frame, from, widthPx, colour);
    }
}
