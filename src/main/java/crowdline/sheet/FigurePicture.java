package crowdline.sheet;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Point;
import crowdline.sight.PathExtent;
import crowdline.sight.SideView.Spot;
import java.util.ArrayList;
import java.util.List;

/** One figure as the crowd sees it: a line from a dot where it begins to the point of an arrow where it ends. */
public final class FigurePicture {
    /** So little path is no figure, metres. */
    private static final double LEAST_M = 5;
    /** Smaller than that is not made as large as the room, metres. */
    private static final double SMALLEST_M = 120;

    /** Room round the path, of the smaller side. */
    private static final double EDGE = 0.07;
    /** The lowest box, of its width. */
    private static final double LEAST_TALL = 0.25;

    private FigurePicture() {}

    /** Whether there is a path to draw. */
    public static boolean has(List<Spot> spots) {
        return spots.size() > 1
                && spots.stream()
                        .anyMatch(s -> Math.hypot(
                                        s.alongM() - spots.get(0).alongM(),
                                        s.heightM() - spots.get(0).heightM())
                                > LEAST_M);
    }

    /** The path in a box, to one scale along and up. */
    public static List<Ink> inks(List<Spot> spots, double x, double y, double width, double height, int rgb) {
        if (!has(spots)) {
            return List.of();
        }
        double edge = EDGE * Math.min(width, height);
        PathFrame frame = PathFrame.fit(extent(spots), x + edge, y + edge, width - 2 * edge, height - 2 * edge);
        List<Point> points = spots.stream()
                .map(s -> new Point(frame.x(s.alongM()), frame.y(s.heightM())))
                .toList();
        double thick = Math.max(1.2, Math.min(2.2, width / 50));
        List<Ink> inks = new ArrayList<>();
        inks.add(new Ink.Stroke(points, rgb, thick, 0));
        Point start = points.get(0);
        inks.add(new Ink.Disc(start.x(), start.y(), thick * 1.5, rgb, rgb));
        Point end = points.get(points.size() - 1);
        Point before = before(points, 4 * thick);
        double length = Math.hypot(end.x() - before.x(), end.y() - before.y());
        if (length > 0) {
            double ux = (end.x() - before.x()) / length;
            double uy = (end.y() - before.y()) / length;
            inks.add(PictureView.arrowHead(end.x() + 2 * thick * ux, end.y() + 2 * thick * uy, ux, uy, 6 * thick, rgb));
        }
        return inks;
    }

    /** How high the path is drawn in a box of this width and at most as high as it is wide. */
    public static double height(List<Spot> spots, double width) {
        PathExtent extent = extent(spots);
        double tall = width * (1 - 2 * EDGE) * extent.tallM() / extent.wideM();
        return Math.min(width, Math.max(LEAST_TALL * width, tall / (1 - 2 * EDGE)));
    }

    private static PathExtent extent(List<Spot> spots) {
        double first = spots.get(0).alongM();
        double level = spots.get(0).heightM();
        PathExtent extent = new PathExtent(first, first, level, level);
        for (Spot spot : spots) {
            extent = extent.with(spot.alongM(), spot.heightM());
        }
        double half = SMALLEST_M / 2;
        double midX = (extent.left() + extent.right()) / 2;
        double midY = (extent.low() + extent.high()) / 2;
        return extent.with(midX - half, midY).with(midX + half, midY);
    }

    /** The point of the path so far before its end. */
    private static Point before(List<Point> points, double away) {
        Point end = points.get(points.size() - 1);
        for (int i = points.size() - 2; i >= 0; i--) {
            Point p = points.get(i);
            if (Math.hypot(p.x() - end.x(), p.y() - end.y()) >= away) {
                return p;
            }
        }
        return points.get(0);
    }
}
