package crowdline.console.path;

import crowdline.console.paint.Pen;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Solid;
import crowdline.sight.picture.Solids;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

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
        List<Solid.Piece> pieces = Solids.of(outline).seen(eye, pose);
        List<Path2D> shapes = new ArrayList<>(pieces.size());
        for (Solid.Piece piece : pieces) {
            Path2D shape = new Path2D.Double();
            for (Solid.Corner corner : piece.corners()) {
                double px = x + corner.right() * spanPx;
                double py = y - corner.up() * spanPx;
                if (shape.getCurrentPoint() == null) {
                    shape.moveTo(px, py);
                } else {
                    shape.lineTo(px, py);
                }
            }
            shape.closePath();
            shapes.add(shape);
        }
        Tones tones = Tones.of(pen.palette());
        Graphics2D g = pen.surface();
        g.setColor(pen.palette().text());
        g.setStroke(new BasicStroke((float) pen.px(2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        shapes.forEach(g::draw);
        g.setStroke(new BasicStroke((float) pen.px(0.4), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int i = 0; i < shapes.size(); i++) {
            g.setColor(tones.of(pieces.get(i).tone()));
            g.fill(shapes.get(i));
            g.draw(shapes.get(i));
        }
    }
}
