package crowdline.console.glossary;

import crowdline.sight.SideView.Spot;
import crowdline.sight.picture.Flown;
import java.util.ArrayList;
import java.util.List;

/**
 * The shape of a drawing, to tell whether two figures can be told apart by it: points at equal steps along the path, from
 * its middle, to one size.
 *
 * @param points along the path, or none
 * @param heightM how high the drawing is
 */
record FigureShape(List<Spot> points, double heightM) {
    private static final int POINTS = 40;
    /** Two drawings whose points lie this far apart on average, against their size, look different; tuned by looking. */
    private static final double DIFFERENT = 0.06;

    static FigureShape of(Flown flown) {
        if (flown.isEmpty()) {
            return new FigureShape(List.of(), 0);
        }
        List<Spot> spots = flown.poses().stream()
                .map(p -> new Spot(p.place().x(), p.place().z()))
                .toList();
        double[] along = new double[spots.size()];
        for (int i = 1; i < along.length; i++) {
            Spot a = spots.get(i - 1);
            Spot b = spots.get(i);
            along[i] = along[i - 1] + Math.hypot(b.alongM() - a.alongM(), b.heightM() - a.heightM());
        }
        double low = spots.stream().mapToDouble(Spot::heightM).min().orElse(0);
        double high = spots.stream().mapToDouble(Spot::heightM).max().orElse(0);
        double left = spots.stream().mapToDouble(Spot::alongM).min().orElse(0);
        double right = spots.stream().mapToDouble(Spot::alongM).max().orElse(0);
        double size = Math.max(1, Math.max(high - low, right - left));
        List<Spot> points = new ArrayList<>();
        int at = 0;
        for (int k = 0; k < POINTS; k++) {
            double wanted = along[along.length - 1] * k / (POINTS - 1);
            while (at < along.length - 1 && along[at] < wanted) {
                at++;
            }
            Spot spot = spots.get(at);
            points.add(
                    new Spot((spot.alongM() - (left + right) / 2) / size, (spot.heightM() - (low + high) / 2) / size));
        }
        return new FigureShape(points, high - low);
    }

    boolean differsFrom(FigureShape other) {
        if (points.size() != other.points.size() || points.isEmpty()) {
            return points.size() != other.points.size();
        }
        double sum = 0;
        for (int i = 0; i < points.size(); i++) {
            Spot a = points.get(i);
            Spot b = other.points.get(i);
            sum += Math.hypot(a.alongM() - b.alongM(), a.heightM() - b.heightM());
        }
        return sum / points.size() > DIFFERENT;
    }
}
