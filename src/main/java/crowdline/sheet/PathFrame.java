package crowdline.sheet;

import crowdline.sight.PathExtent;

/**
 * From metres to a surface whose y grows downwards, to one scale along and up, so that a round loop is round.
 *
 * @param originX where the datum is
 * @param originY where the ground, or the display line, is
 * @param pxPerM the scale
 */
public record PathFrame(double originX, double originY, double pxPerM) {

    /** The largest frame in which an extent fits into a box, in the middle of it. */
    public static PathFrame fit(PathExtent extent, double x, double y, double width, double height) {
        double pxPerM = Math.min(width / extent.wideM(), height / extent.tallM());
        double originX = x + width / 2 - pxPerM * (extent.left() + extent.right()) / 2;
        double originY = y + height / 2 + pxPerM * (extent.low() + extent.high()) / 2;
        return new PathFrame(originX, originY, pxPerM);
    }

    public double x(double alongM) {
        return originX + pxPerM * alongM;
    }

    public double y(double upM) {
        return originY - pxPerM * upM;
    }
}
