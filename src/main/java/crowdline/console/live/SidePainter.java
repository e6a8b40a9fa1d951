package crowdline.console.live;

import crowdline.console.live.SideView.Craft;
import crowdline.console.live.SideView.Spot;
import crowdline.console.live.SideView.Stretch;
import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.sheet.PathFrame;
import crowdline.sheet.PathView;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/** Paints a path seen from the crowd, to one scale along and up so that a round loop is round. */
public final class SidePainter {
    private SidePainter() {}

    /** Paints the view into a box; an empty view paints nothing. */
    public static void paint(Pen pen, SideView view, Box box) {
        if (view.isEmpty()) {
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
        strokes(pen, view, frame, PathView.SIDE);
        Craft craft = view.craft();
        if (craft != null) {
            craft(pen, frame, craft);
        }
    }

    /** Every stretch, the current one last and strongest. */
    static void strokes(Pen pen, SideView view, PathFrame frame, PathView from) {
        for (int i = 0; i < view.stretches().size(); i++) {
            if (i != view.current()) {
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
        double x = frame.x(0);
        Path2D here = new Path2D.Double();
        here.moveTo(x, y + pen.px(4));
        here.lineTo(x + pen.px(6), y + pen.px(14));
        here.lineTo(x - pen.px(6), y + pen.px(14));
        here.closePath();
        pen.surface().setColor(pen.palette().soft());
        pen.surface().fill(here);
        Box foot = new Box(box.x(), y + pen.px(2), box.w(), pen.px(18));
        TextBlock left = pen.line("left", TextRole.LABEL, false, foot);
        pen.midway(left, foot, pen.palette().soft());
        pen.atRight(
                pen.line("right", TextRole.LABEL, false, foot),
                foot,
                pen.palette().soft());
    }

    private static void stroke(Pen pen, PathFrame frame, PathView from, Stretch stretch, Color colour, double widthPx) {
        if (stretch.spots().size() < 2) {
            return;
        }
        Path2D path = new Path2D.Double();
        boolean first = true;
        for (Spot spot : stretch.spots()) {
            double x = frame.x(spot.alongM());
            double y = frame.y(spot.upM(from));
            if (first) {
                path.moveTo(x, y);
                first = false;
            } else {
                path.lineTo(x, y);
            }
        }
        Graphics2D g = pen.surface();
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) pen.px(widthPx), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private static void craft(Pen pen, PathFrame frame, Craft craft) {
        Graphics2D g = pen.surface();
        AffineTransform before = g.getTransform();
        g.translate(frame.x(craft.at().alongM()), frame.y(craft.at().heightM()));
        g.rotate(-craft.pathRad());
        double s = pen.px(15);
        Path2D dart = new Path2D.Double();
        dart.moveTo(s, 0);
        dart.lineTo(-s * 0.8, s * 0.72);
        dart.lineTo(-s * 0.4, 0);
        dart.lineTo(-s * 0.8, -s * 0.72);
        dart.closePath();
        g.setStroke(new BasicStroke((float) pen.px(5), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(pen.palette().ground());
        g.draw(dart);
        g.setColor(pen.palette().text());
        if (craft.predicted()) {
            g.setStroke(new BasicStroke((float) pen.px(2.4), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(pen.palette().ground());
            g.fill(dart);
            g.setColor(pen.palette().text());
            g.draw(dart);
        } else {
            g.fill(dart);
        }
        g.setTransform(before);
    }
}
