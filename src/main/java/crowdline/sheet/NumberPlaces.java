package crowdline.sheet;

import crowdline.flight.body.Vec;
import crowdline.sight.PathView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Finds a place for the number of each stretch near its middle, where it covers neither another number nor, if that can
 * be, any path. The same path gives the same places.
 */
public final class NumberPlaces {
    private static final int DIRECTIONS = 16;
    private static final int RINGS = 40;
    /** What covering one point of a path is worth in radii of distance; tuned by eye. */
    private static final double COVER_COST = 0.5;

    /**
     * A place.
     *
     * @param index of the stretch
     * @param x centre of the number
     * @param y centre of the number
     * @param ofX the point of the path it belongs to
     * @param ofY the point of the path it belongs to
     */
    public record Place(int index, double x, double y, double ofX, double ofY) {}

    /** A box on the surface. */
    public record Bounds(double x, double y, double width, double height) {
        boolean isReached(double px, double py, double radius) {
            return px + radius > x && px - radius < x + width && py + radius > y && py - radius < y + height;
        }

        boolean holds(double px, double py, double radius) {
            return px - radius >= x && px + radius <= x + width && py - radius >= y && py + radius <= y + height;
        }
    }

    private final PathFrame frame;
    private final PathView view;
    private final double radius;
    private final Bounds bounds;
    private final List<Bounds> taken;
    private final List<double[]> points = new ArrayList<>();
    private final List<Place> placed = new ArrayList<>();

    private NumberPlaces(PathFrame frame, PathView view, double radius, Bounds bounds, List<Bounds> taken) {
        this.frame = frame;
        this.view = view;
        this.radius = radius;
        this.bounds = bounds;
        this.taken = taken;
    }

    /**
     * The places of all numbers; a stretch without a path, or without any room left, has none.
     *
     * @param radius room a number needs round its centre
     * @param bounds within which all must stay
     * @param taken boxes no number may reach into
     */
    public static List<Place> find(
            List<List<Vec>> stretches,
            PathFrame frame,
            PathView view,
            double radius,
            Bounds bounds,
            List<Bounds> taken) {
        return find(stretches, frame, view, radius, bounds, taken, i -> true);
    }

    /** The same for those that have a number. */
    static List<Place> find(
            List<List<Vec>> stretches,
            PathFrame frame,
            PathView view,
            double radius,
            Bounds bounds,
            List<Bounds> taken,
            IntPredicate isNumbered) {
        NumberPlaces search = new NumberPlaces(frame, view, radius, bounds, taken);
        for (List<Vec> stretch : stretches) {
            // Every third sample is closer than a number is wide.
            for (int i = 0; i < stretch.size(); i += 3) {
                search.points.add(search.at(stretch.get(i)));
            }
        }
        for (int i = 0; i < stretches.size(); i++) {
            List<Vec> own = stretches.get(i);
            if (!own.isEmpty() && isNumbered.test(i)) {
                search.place(i, search.at(own.get(own.size() / 2))).ifPresent(search.placed::add);
            }
        }
        return List.copyOf(search.placed);
    }

    private double[] at(Vec place) {
        return new double[] {frame.x(place.x()), frame.y(view.upM(place))};
    }

    private Optional<Place> place(int index, double[] of) {
        Place best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int ring = 0; ring < RINGS; ring++) {
            double away = radius * (1.3 + 0.5 * ring);
            if (away / radius > least) {
                break;
            }
            for (int d = 0; d < DIRECTIONS; d++) {
                double angle = Math.PI / 2 + 2 * Math.PI * d / DIRECTIONS;
                double x = of[0] + away * Math.cos(angle);
                double y = of[1] - away * Math.sin(angle);
                if (bounds.holds(x, y, radius) && isFree(x, y)) {
                    double cost = away / radius + COVER_COST * covered(x, y);
                    if (cost < least) {
                        least = cost;
                        best = new Place(index, x, y, of[0], of[1]);
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean isFree(double x, double y) {
        return taken.stream().noneMatch(box -> box.isReached(x, y, radius))
                && placed.stream().allMatch(p -> Math.hypot(p.x() - x, p.y() - y) >= 2 * radius + 1);
    }

    private long covered(double x, double y) {
        return points.stream()
                .filter(p -> Math.hypot(p[0] - x, p[1] - y) < radius)
                .count();
    }
}
