package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Facet.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An aircraft as a few dozen flat pieces, one wing span across.
 *
 * @param facets its skin, the same to the left and to the right
 */
public record Solid(List<Facet> facets) {
    public Solid {
        facets = List.copyOf(facets);
    }

    /**
     * A piece as it is on the pane.
     *
     * @param corners in order round it
     * @param tone of the side that is seen
     */
    public record Piece(List<Eye.Spot> corners, Tone tone) {
        public Piece {
            corners = List.copyOf(corners);
        }
    }

    private record Far(Facet facet, double distanceM) {}

    /**
     * What an eye sees of it, the furthest first, so that what is nearer is painted over it.
     *
     * @param spanM how large it is drawn
     */
    public List<Piece> seen(Eye eye, Pose pose, double spanM) {
        List<Far> all = new ArrayList<>(facets.size());
        for (Facet facet : facets) {
            all.add(new Far(facet, eye.distanceM(pose.point(facet.middle(), spanM))));
        }
        all.sort(Comparator.comparingDouble(Far::distanceM).reversed());
        List<Piece> pieces = new ArrayList<>(facets.size());
        for (Far one : all) {
            Facet facet = one.facet();
            List<Eye.Spot> corners = new ArrayList<>(facet.corners().size());
            for (Vec corner : facet.corners()) {
                Optional<Eye.Spot> spot = eye.see(pose.point(corner, spanM));
                if (spot.isEmpty()) {
                    return List.of();
                }
                corners.add(spot.get());
            }
            boolean outside = eye.faces(pose.point(facet.middle(), spanM), pose.turned(facet.outward()));
            pieces.add(new Piece(corners, outside ? facet.outside() : facet.inside()));
        }
        return List.copyOf(pieces);
    }
}
