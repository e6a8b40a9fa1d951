package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.sheet.PathFrame;
import crowdline.sight.PathView;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Lies;
import crowdline.sight.SideView.Spot;
import crowdline.sight.picture.Eye;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/** Paints the aircraft as a dart, full where it was read and hollow where it is predicted, with its trail. */
public final class CraftPainter {
    private static final double DART_PX = 15;
    /** Pixels at scale 1: the span of the wings as drawn. */
    private static final double SPAN_PX = 52;

    private CraftPainter() {}

    /**
     * Paints it into a frame; beyond the box it stays at the edge. From the side it is seen as it lies in the air, if that is
     * known, from the eye.
     */
    public static void paint(Pen pen, PathFrame frame, PathView from, Craft craft, Eye eye, Box box) {
        trail(pen, frame, from, craft, box);
        Lies lies = craft.lies();
        if (lies != null && from == PathView.SIDE) {
            SolidPainter.paint(
                    pen,
                    lies.outline(),
                    lies.pose(),
                    eye,
                    across(box, frame.x(craft.at().alongM())),
                    down(box, frame.y(craft.at().upM(from))),
                    pen.px(SPAN_PX));
            return;
        }
        dart(
                pen,
                across(box, frame.x(craft.at().alongM())),
                down(box, frame.y(craft.at().upM(from))),
                craft.turnedRad(from),
                pen.px(DART_PX),
                craft.predicted());
    }

    /** Without its trail and smaller, where there is little room. */
    public static void small(Pen pen, PathFrame frame, PathView from, Craft craft, Box box) {
        dart(
                pen,
                across(box, frame.x(craft.at().alongM())),
                down(box, frame.y(craft.at().upM(from))),
                craft.turnedRad(from),
                pen.px(DART_PX * 0.6),
                craft.predicted());
    }

    /** True if it is within the box in this frame. */
    public static boolean isIn(PathFrame frame, PathView from, Craft craft, Box box) {
        double x = frame.x(craft.at().alongM());
        double y = frame.y(craft.at().upM(from));
        return x >= box.x() && x <= box.maxX() && y >= box.y() && y <= box.maxY();
    }

    /** The shape and the word of where the place comes from, at the right of a box. */
    public static void word(Pen pen, Craft craft, String said, Box box) {
        TextBlock word = pen.line(said, TextRole.BODY, true, box);
        double size = word.heightPx() * 0.42;
        dart(pen, box.maxX() - word.widthPx() - size * 2.2, box.midY(), 0, size, craft.predicted());
        pen.atRight(word, box, pen.palette().text());
    }

    private static double across(Box box, double x) {
        return Math.max(box.x(), Math.min(box.maxX(), x));
    }

    private static double down(Box box, double y) {
        return Math.max(box.y(), Math.min(box.maxY(), y));
    }

    private static void trail(Pen pen, PathFrame frame, PathView from, Craft craft, Box box) {
        if (craft.trail().isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        Spot first = craft.trail().get(0);
        path.moveTo(across(box, frame.x(first.alongM())), down(box, frame.y(first.upM(from))));
        for (Spot spot : craft.trail()) {
            path.lineTo(across(box, frame.x(spot.alongM())), down(box, frame.y(spot.upM(from))));
        }
        path.lineTo(
                across(box, frame.x(craft.at().alongM())),
                down(box, frame.y(craft.at().upM(from))));
        Graphics2D g = pen.surface();
        g.setColor(pen.palette().text());
        g.setStroke(new BasicStroke((float) pen.px(2.6), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private static void dart(Pen pen, double x, double y, double turnedRad, double s, boolean hollow) {
        Graphics2D g = pen.surface();
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.rotate(-turnedRad);
        Path2D dart = new Path2D.Double();
        dart.moveTo(s, 0);
        dart.lineTo(-s * 0.8, s * 0.72);
        dart.lineTo(-s * 0.4, 0);
        dart.lineTo(-s * 0.8, -s * 0.72);
        dart.closePath();
        g.setColor(pen.palette().ground());
        g.setStroke(line(s / 3));
        g.draw(dart);
        g.setColor(hollow ? pen.palette().ground() : pen.palette().text());
        g.fill(dart);
        if (hollow) {
            g.setColor(pen.palette().text());
            g.setStroke(line(s * 0.16));
            g.draw(dart);
        }
        g.setTransform(before);
    }

    private static BasicStroke line(double widthPx) {
        return new BasicStroke((float) widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
}
