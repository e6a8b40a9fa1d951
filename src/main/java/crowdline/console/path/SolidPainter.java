package crowdline.console.path;

import crowdline.console.paint.Pen;
import crowdline.sheet.ink.InkPainter;
import crowdline.sheet.still.SolidInk;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Pose;

/** Paints an aircraft as an eye sees it lie in the air, in any size anywhere on the surface. */
final class SolidPainter {
    private SolidPainter() {}

    /**
     * Paints it.
     *
     * @param x where its middle is on the surface
     * @param y where its middle is on the surface
     * @param spanPx how long its wings are drawn
     */
    static void paint(Pen pen, Outline outline, Pose pose, Eye eye, double x, double y, double spanPx) {
        new InkPainter(pen.surface())
                .paint(SolidInk.of(outline, pose, eye, x, y, spanPx, PaletteTones.of(pen.palette()), pen.px(1)));
    }
}
