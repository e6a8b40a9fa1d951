package crowdline.sheet.page;

/** How words are set. */
public record Style(double sizePt, boolean strong, int rgb) {
    /** From one baseline to the next, in sizes of the type. */
    private static final double LEADING = 1.3;
    /** From the upper edge of a line to its baseline, in sizes of the type. */
    private static final double ASCENT = 1.0;

    public double leadingPt() {
        return sizePt * LEADING;
    }

    double ascentPt() {
        return sizePt * ASCENT;
    }
}
