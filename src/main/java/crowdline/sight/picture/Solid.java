package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Facet.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
     * A corner as an eye sees it, in wing spans from the middle of the aircraft, across the line of sight.
     *
     * @param right to the eye's right
     * @param up upwards, as far as that is across the line of sight
     */
    public record Corner(double right, double up) {}

    /**
     * A piece as an eye sees it.
     *
     * @param corners in order round it
     * @param tone of the side that is seen
     */
    public record Piece(List<Corner> corners, Tone tone) {
        public Piece {
            corners = List.copyOf(corners);
        }
    }

    private record Far(Facet facet, double depth) {}

    /**
     * What an eye sees of it, the furthest first, so that what is nearer is painted over it. The aircraft is small against its
     * distance, so that no part of it looks larger for being nearer.
     */
    public List<Piece> seen(Eye eye, Pose pose) {
        Vec sight = eye.sight(pose.place());
        Vec right = sight.cross(Vec.UP).unit();
        Vec up = right.cross(sight);
        List<Far> all = new ArrayList<>(facets.size());
        for (Facet facet : facets) {
            all.add(new Far(facet, pose.turned(facet.middle()).dot(sight)));
        }
        all.sort(Comparator.comparingDouble(Far::depth).reversed());
        List<Piece> pieces = new ArrayList<>(facets.size());
        for (Far one : all) {
            Facet facet = one.facet();
            List<Corner> corners = new ArrayList<>(facet.corners().size());
            for (Vec body : facet.corners()) {
                Vec corner = pose.turned(body);
                corners.add(new Corner(corner.dot(right), corner.dot(up)));
            }
            boolean outside = pose.turned(facet.outward()).dot(sight) < 0;
            pieces.add(new Piece(corners, outside ? facet.outside() : facet.inside()));
        }
        return List.copyOf(pieces);
    }
}
