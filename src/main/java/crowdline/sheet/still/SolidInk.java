package crowdline.sheet.still;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Point;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Solid;
import crowdline.sight.picture.Solids;
import java.util.ArrayList;
import java.util.List;

/** An aircraft as an eye sees it lie in the air, in any size anywhere on a surface. */
public final class SolidInk {
    /** The line round the whole, and between its pieces so that no ground shows there, in designed pixels. */
    private static final double EDGE_PX = 2;

    private static final double SEAM_PX = 0.4;

    private SolidInk() {}

    /**
     * The inks of it, from the hindmost to the foremost.
     *
     * @param x where its middle is on the surface
     * @param y where its middle is on the surface
     * @param spanPx how long its wings are drawn
     * @param px a designed pixel on the surface
     */
    public static List<Ink> of(
            Outline outline, Pose pose, Eye eye, double x, double y, double spanPx, Tones tones, double px) {
        List<Solid.Piece> pieces = Solids.of(outline).seen(eye, pose);
        List<Ink> edges = new ArrayList<>(3 * pieces.size());
        List<Ink> areas = new ArrayList<>(2 * pieces.size());
        for (Solid.Piece piece : pieces) {
            List<Point> corners = new ArrayList<>(piece.corners().size() + 1);
            for (Solid.Corner corner : piece.corners()) {
                corners.add(new Point(x + corner.right() * spanPx, y - corner.up() * spanPx));
            }
            int rgb = tones.of(piece.tone());
            areas.add(new Ink.Fill(corners, rgb));
            corners.add(corners.get(0));
            edges.add(new Ink.Stroke(corners, tones.edge(), EDGE_PX * px, 0));
            areas.add(new Ink.Stroke(corners, rgb, SEAM_PX * px, 0));
        }
        edges.addAll(areas);
        return edges;
    }
}
