package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.sheet.PathFrame;
import crowdline.sheet.still.Place;
import crowdline.sight.PathExtent;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * Paints the sky as the crowd has it before it: the aircraft and its smoke over the ground, in a frame that does not move. The
 * aircraft is drawn larger than it would look, as everywhere.
 */
public final class CrowdPicture extends Painted<CrowdView> {
    /** Room around the display, as a share of its size; what flies further out is not seen. */
    private static final double ROOM = 0.12;
    /** Ground in the picture, as a share of its height. */
    private static final double GROUND = 0.1;
    /** The drawn wing span against the height and the width of the picture, whichever gives less; tuned by looking. */
    private static final double SPAN_OF_HEIGHT = 0.2;

    private static final double SPAN_OF_WIDTH = 0.07;
    private static final double LEAST_M = 120;

    public CrowdPicture(Appearance appearance) {
        super("The sky", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(CrowdView shown) {
        return "The sky as the crowd sees it";
    }

    @Override
    protected void paint(Pen pen, CrowdView shown, Box box) {
        if (shown.sky().isEmpty()) {
            return;
        }
        Place place = place(shown, box);
        Shape before = pen.surface().getClip();
        pen.surface().clip(new Rectangle2D.Double(box.x(), box.y(), box.w(), box.h()));
        SkyPainter.ground(pen, shown.sky().eye(), place.frame(), box);
        SkyPainter.smoke(pen, shown.sky(), shown.sky().flown(), place);
        SkyPainter.aircraft(
                pen,
                shown.sky(),
                shown.sky().subject().all(place.spanM()),
                shown.sky().pose().tS(),
                place);
        pen.surface().setClip(before);
        pen.fill(box.bottom(pen.px(2)), pen.palette().rule());
    }

    private static Place place(CrowdView shown, Box box) {
        PathExtent looksAt = shown.looksAt();
        double wideM = Math.max(LEAST_M, looksAt.wideM() * (1 + 2 * ROOM));
        double tallM = Math.max(LEAST_M, looksAt.tallM() * (1 + ROOM)) / (1 - GROUND);
        double pxPerM = Math.min(box.w() / wideM, box.h() / tallM);
        double middleM = (looksAt.left() + looksAt.right()) / 2;
        PathFrame frame =
                new PathFrame(box.x() + box.w() / 2 - pxPerM * middleM, box.maxY() - GROUND * box.h(), pxPerM);
        double spanPx = Math.min(SPAN_OF_HEIGHT * box.h(), SPAN_OF_WIDTH * box.w());
        return new Place(frame, spanPx / pxPerM);
    }
}
