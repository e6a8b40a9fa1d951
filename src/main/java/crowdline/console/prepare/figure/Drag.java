package crowdline.console.prepare.figure;

/**
 * How far a figure was dragged on its picture.
 *
 * @param alongM metres to the right; 0 if it was dragged up or down
 * @param upM metres up; 0 if it was dragged along
 */
public record Drag(double alongM, double upM) {
    static final Drag NONE = new Drag(0, 0);

    /**
     * A hand that moves a figure moves it along the line or up and down, whichever it did more: both at once is seldom meant.
     *
     * @param dxPx to the right
     * @param dyPx downwards, as a screen counts
     * @param pxPerM the scale, above 0
     */
    public static Drag of(double dxPx, double dyPx, double pxPerM) {
        return Math.abs(dxPx) >= Math.abs(dyPx) ? new Drag(dxPx / pxPerM, 0) : new Drag(0, -dyPx / pxPerM);
    }
}
