package crowdline.sheet;

import java.util.List;

/** One thing drawn on a picture; lengths in pixels, y downwards, colours as 0xRRGGBB. */
sealed interface Ink {
    /** A place on the picture. */
    record Point(double x, double y) {}

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
    }

    /** An area with corners. */
    record Fill(List<Point> corners, int rgb) implements Ink {
        public Fill {
            corners = List.copyOf(corners);
        }
    }

    /** A disc with a rim. */
    record Disc(double x, double y, double radiusPx, int rgb, int rimRgb) implements Ink {}

    /** One line of words on its baseline. */
    record Words(String text, double x, double y, double sizePx, boolean strong, Anchor anchor, int rgb)
            implements Ink {}
}
