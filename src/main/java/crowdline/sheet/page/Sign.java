package crowdline.sheet.page;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Point;
import java.util.List;

/** A small shape before words, which says the same as they do. */
public enum Sign {
    SQUARE,
    TRIANGLE,
    RING,
    DISC,
    DIAMOND,
    CROSS,
    BOX;

    /**
     * The shape round its middle.
     *
     * @param size its width and height
     */
    public List<Ink> at(double midX, double midY, double size, int rgb) {
        double r = size / 2;
        return switch (this) {
            case SQUARE -> List.of(Ink.rectangle(midX - r, midY - r, size, size, rgb));
            case BOX ->
                List.of(new Ink.Stroke(
                        List.of(
                                new Point(midX - r, midY - r),
                                new Point(midX + r, midY - r),
                                new Point(midX + r, midY + r),
                                new Point(midX - r, midY + r),
                                new Point(midX - r, midY - r)),
                        rgb,
                        size / 8,
                        0));
            case TRIANGLE ->
                List.of(new Ink.Fill(
                        List.of(
                                new Point(midX - r, midY - r),
                                new Point(midX + r, midY),
                                new Point(midX - r, midY + r)),
                        rgb));
            case DIAMOND ->
                List.of(new Ink.Fill(
                        List.of(
                                new Point(midX, midY - 1.2 * r),
                                new Point(midX + 1.2 * r, midY),
                                new Point(midX, midY + 1.2 * r),
                                new Point(midX - 1.2 * r, midY)),
                        rgb));
            case DISC -> List.of(new Ink.Disc(midX, midY, 0.85 * r, rgb, rgb));
            case RING -> List.of(new Ink.Disc(midX, midY, 0.85 * r, 0xFFFFFF, rgb));
            case CROSS ->
                List.of(
                        Ink.line(midX - r, midY - r, midX + r, midY + r, rgb, size / 5),
                        Ink.line(midX - r, midY + r, midX + r, midY - r, rgb, size / 5));
        };
    }
}
