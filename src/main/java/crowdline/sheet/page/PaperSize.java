package crowdline.sheet.page;

/** A size of paper, standing. */
public enum PaperSize {
    A4(595.276, 841.89),
    /** A quarter of an A4. */
    A6(297.638, 420.945);

    private final double widthPt;
    private final double heightPt;

    PaperSize(double widthPt, double heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    public double widthPt() {
        return widthPt;
    }

    public double heightPt() {
        return heightPt;
    }

    public Area area() {
        return new Area(0, 0, widthPt, heightPt);
    }
}
