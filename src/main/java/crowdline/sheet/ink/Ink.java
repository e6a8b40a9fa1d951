package crowdline.sheet.ink;

import java.awt.Graphics2D;
import java.util.List;

/**
 * One thing drawn on a picture or a page; lengths in the picture's own unit, which is a point on paper, y downwards, colours as
 * 0xRRGGBB.
 */
public sealed interface Ink {
    /** The same elsewhere. */
    Ink moved(double dx, double dy);

    /** A place on the picture. */
    record Point(double x, double y) {
        Point moved(double dx, double dy) {
            return new Point(x + dx, y + dy);
        }

        private static List<Point> moved(List<Point> points, double dx, double dy) {
            return points.stream().map(p -> p.moved(dx, dy)).toList();
        }
    }

    /** Where a text stands against its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** A line through points; dashed if {@code dashPx} is above 0. */
    record Stroke(List<Point> points, int rgb, double widthPx, double dashPx) implements Ink {
        public Stroke {
            points = List.copyOf(points);
        }

        @Override
        public Stroke moved(double dx, double dy) {
            return new Stroke(Point.moved(points, dx, dy), rgb, widthPx, dashPx);
        }
    }

    /** An area with corners. */
    record Fill(List<Point> corners, int rgb) implements Ink {
        public Fill {
            corners = List.copyOf(corners);
        }

        @Override
        public Fill moved(double dx, double dy) {
            return new Fill(Point.moved(corners, dx, dy), rgb);
        }
    }

    /** A disc with a rim. */
    record Disc(double x, double y, double radiusPx, int rgb, int rimRgb) implements Ink {
        @Override
        public Disc moved(double dx, double dy) {
            return new Disc(x + dx, y + dy, radiusPx, rgb, rimRgb);
        }
    }

    /** One line of words on its baseline. */
    record Words(String text, double x, double y, double sizePx, boolean strong, Anchor anchor, int rgb)
            implements Ink {
        @Override
        public Words moved(double dx, double dy) {
            return new Words(text, x + dx, y + dy, sizePx, strong, anchor, rgb);
        }

        /** Where it begins at the left. */
        public double leftX() {
            double wide = Lettering.widthPx(text, sizePx, strong);
            return switch (anchor) {
                case START -> x;
                case MIDDLE -> x - wide / 2;
                case END -> x - wide;
            };
        }
    }

    /** Whatever draws itself into an area. */
    interface Drawn {
        /** Draws it; lengths in the picture's own unit. */
        void paint(Graphics2D g, double x, double y, double width, double height);
    }

    /** A drawing that is made by something else, such as a chart. */
    record Drawing(double x, double y, double width, double height, Drawn drawn) implements Ink {
        @Override
        public Drawing moved(double dx, double dy) {
            return new Drawing(x + dx, y + dy, width, height, drawn);
        }
    }

    /** A straight line. */
    static Stroke line(double x1, double y1, double x2, double y2, int rgb, double widthPx) {
        return new Stroke(List.of(new Point(x1, y1), new Point(x2, y2)), rgb, widthPx, 0);
    }

    /** A filled rectangle. */
    static Fill rectangle(double x, double y, double width, double height, int rgb) {
        return new Fill(
                List.of(
                        new Point(x, y),
                        new Point(x + width, y),
                        new Point(x + width, y + height),
                        new Point(x, y + height)),
                rgb);
    }
}
