package crowdline.sheet.page;

import org.jspecify.annotations.Nullable;

/**
 * Words in a column of a row.
 *
 * @param name what they are, as in {@link Block}
 * @param x where the column begins, from the left of the page's room
 * @param width of the column
 * @param sign a shape before them, or null
 * @param atRight whether the lines end at the right of the column
 */
public record Cell(
        String name,
        double x,
        double width,
        String words,
        Style style,
        @Nullable Sign sign,
        boolean atRight) {
    public Cell(String name, double x, double width, String words, Style style) {
        this(name, x, width, words, style, null, false);
    }

    /** The same at the right of its column. */
    public Cell ending() {
        return new Cell(name, x, width, words, style, sign, true);
    }

    /** The same behind a shape. */
    public Cell with(@Nullable Sign shape) {
        return new Cell(name, x, width, words, style, shape, atRight);
    }
}
