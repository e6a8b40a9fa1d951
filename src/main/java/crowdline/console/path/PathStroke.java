package crowdline.console.path;

import crowdline.console.paint.Pen;
import crowdline.sheet.PathFrame;
import crowdline.sight.PathView;
import crowdline.sight.SideView.Spot;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** Draws a path as a line, and which way it goes. */
public final class PathStroke {
    /** Where along the path its direction is shown; the last is its end. */
    private static final double[] DIRECTIONS = {0.3, 0.65, 1};

    private static final double ARROW_PX = 11;

    private PathStroke() {}

    public static void line(Pen pen, List<Spot> spots, PathFrame frame, PathView from, double widthPx, Color colour) {
        if (spots.size() < 2) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(frame.x(spots.get(0).alongM()), frame.y(spots.get(0).upM(from)));
        for (Spot spot : spots) {
            path.lineTo(frame.x(spot.alongM()), frame.y(spot.upM(from)));
        }
        Graphics2D g = pen.surface();
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) pen.px(widthPx), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    /** A ring where the path begins and arrows along it, as the crowd sees it. */
    public static void directions(Pen pen, List<Spot> spots, PathFrame frame, Color colour) {
        double whole = length(spots);
        if (whole <= 0) {
            return;
        }
        for (double share : DIRECTIONS) {
            double gone = 0;
            for (int i = 1; i < spots.size(); i++) {
                gone += length(spots.subList(i - 1, i + 1));
                if (gone >= share * whole - 1e-6) {
                    arrow(pen, spots, i, frame, colour);
                    break;
                }
            }
        }
    }

    private static void arrow(Pen pen, List<Spot> spots, int at, PathFrame frame, Color colour) {
        Spot to = spots.get(at);
        double x = frame.x(to.alongM());
        double y = frame.y(to.heightM());
        double s = pen.px(ARROW_PX);
        // Back along the path until the direction can be told.
        for (int i = at - 1; i >= 0; i--) {
            double dx = x - frame.x(spots.get(i).alongM());
            double dy = y - frame.y(spots.get(i).heightM());
            if (Math.hypot(dx, dy) > s * 0.3) {
                Graphics2D g = pen.surface();
                AffineTransform before = g.getTransform();
                g.translate(x, y);
                g.rotate(Math.atan2(dy, dx));
                Path2D head = new Path2D.Double();
                head.moveTo(s * 0.7, 0);
                head.lineTo(-s * 0.6, s * 0.62);
                head.lineTo(-s * 0.6, -s * 0.62);
                head.closePath();
                g.setColor(colour);
                g.fill(head);
                g.setTransform(before);
                return;
            }
        }
    }

    /** The places of a path up to a length, metres, as the crowd sees it. */
    public static List<Spot> beginning(List<Spot> spots, double mostM) {
        List<Spot> beginning = new ArrayList<>();
        double gone = 0;
        for (int i = 0; i < spots.size() && gone <= mostM; i++) {
            beginning.add(spots.get(i));
            gone += i == 0 ? 0 : length(spots.subList(i - 1, i + 1));
        }
        return beginning;
    }

    private static double length(List<Spot> spots) {
        double length = 0;
        for (int i = 1; i < spots.size(); i++) {
            Spot a = spots.get(i - 1);
            Spot b = spots.get(i);
            length += Math.hypot(b.alongM() - a.alongM(), b.heightM() - a.heightM());
        }
        return length;
    }
}
