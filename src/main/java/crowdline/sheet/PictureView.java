package crowdline.sheet;

import crowdline.flight.Track;
import crowdline.flight.body.Vec;
import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.Units;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Anchor;
import crowdline.sheet.ink.Ink.Point;
import crowdline.sheet.ink.Lettering;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;

/** One view of an act: its box with a scale, its lines, its paths and their numbers. */
final class PictureView {
    private static final double NUMBER_PX = 11;
    private static final double LINE_PX = 2;
    private static final double LABEL_PX = 12;

    private final IntUnaryOperator colours;
    private final IntToDoubleFunction dashes;
    private final PathView view;
    private final PathExtent extent;
    private final double x;
    private final double y;
    private final double width;
    private final double height;
    private final PathFrame frame;
    private final List<Ink> inks = new ArrayList<>();
    private final List<NumberPlaces.Bounds> taken = new ArrayList<>();

    /** In the colours of pictures. */
    PictureView(PathView view, PathExtent extent, double x, double y, double pxPerM) {
        this(view, extent, x, y, pxPerM, PictureStyle::lineRgb, PictureStyle::dashPx);
    }

    /**
     * In colours of the caller's.
     *
     * @param colours of the stretches
     * @param dashes of the stretches, 0 for a line without
     */
    PictureView(
            PathView view,
            PathExtent extent,
            double x,
            double y,
            double pxPerM,
            IntUnaryOperator colours,
            IntToDoubleFunction dashes) {
        this.colours = colours;
        this.dashes = dashes;
        this.view = view;
        this.extent = extent;
        this.x = x;
        this.y = y;
        width = pxPerM * extent.wideM();
        height = pxPerM * extent.tallM();
        frame = PathFrame.fit(extent, x, y, width, height);
        inks.add(new Ink.Fill(
                List.of(
                        new Point(x, y),
                        new Point(x + width, y),
                        new Point(x + width, y + height),
                        new Point(x, y + height)),
                PictureStyle.SKY));
    }

    double minX() {
        return x;
    }

    double maxX() {
        return x + width;
    }

    double maxY() {
        return y + height;
    }

    List<Ink> inks() {
        return List.copyOf(inks);
    }

    /** A line at one value of what goes up, with its value at the left of the box. */
    void tickUp(double upM, String words) {
        level(upM, PictureStyle.GRID, 1, 0);
        inks.add(new Ink.Words(words, x - 8, frame.y(upM) + 4, 12, false, Anchor.END, PictureStyle.SOFT));
    }

    /** Lines at round heights up to so many metres. */
    void heights(double toM, Measures measures) {
        boolean isMetric = measures.heights() == LengthUnit.METRES;
        double stepFt = toM > 1300 ? (isMetric ? Units.ftFromM(300) : 1000) : (isMetric ? Units.ftFromM(150) : 500);
        for (int i = 0; Units.mFromFt(i * stepFt) <= toM; i++) {
            tickUp(Units.mFromFt(i * stepFt), measures.height(i * stepFt));
        }
    }

    /** A line at one place along the A-axis, with words under the box if there are any. */
    void tickAlong(double alongM, String words) {
        double at = frame.x(alongM);
        inks.add(new Ink.Stroke(List.of(new Point(at, y), new Point(at, y + height)), PictureStyle.GRID, 1, 0));
        if (!words.isEmpty()) {
            inks.add(new Ink.Words(words, at, y + height + 16, 12, false, Anchor.MIDDLE, PictureStyle.SOFT));
        }
    }

    /** A line all along, with words over or under its right end; nothing if it is out of the view. */
    void line(double upM, String words, int rgb, boolean dashed, boolean wordsUnder) {
        if (upM < extent.low() || upM > extent.high()) {
            return;
        }
        level(upM, rgb, dashed ? 1.5 : 2, dashed ? 9 : 0);
        if (!words.isEmpty()) {
            label(words, x + width - 6, frame.y(upM) + (wordsUnder ? 14 : -5), Anchor.END, false, rgb);
        }
    }

    /** A dashed line across at one place along the A-axis; nothing if it is out of the view. */
    void wall(double alongM, int rgb) {
        if (alongM < extent.left() || alongM > extent.right()) {
            return;
        }
        double at = frame.x(alongM);
        inks.add(new Ink.Stroke(List.of(new Point(at, y), new Point(at, y + height)), rgb, 1.5, 9));
    }

    private void level(double upM, int rgb, double widthPx, double dashPx) {
        double at = frame.y(upM);
        inks.add(new Ink.Stroke(List.of(new Point(x, at), new Point(x + width, at)), rgb, widthPx, dashPx));
    }

    /** The datum: a triangle under its place. */
    void datum() {
        double at = frame.x(0);
        double ground = frame.y(0);
        inks.add(new Ink.Fill(
                List.of(new Point(at, ground + 2), new Point(at + 7, ground + 14), new Point(at - 7, ground + 14)),
                PictureStyle.TEXT));
        label("datum", at + 11, ground + 14, Anchor.START, true, PictureStyle.TEXT);
        taken.add(new NumberPlaces.Bounds(at - 8, ground, 16, 16));
    }

    /** Words inside the box, which no number may cover. */
    private void label(String words, double atX, double baselineY, Anchor anchor, boolean strong, int rgb) {
        double wide = Lettering.widthPx(words, LABEL_PX, strong);
        inks.add(new Ink.Words(words, atX, baselineY, LABEL_PX, strong, anchor, rgb));
        double left = anchor == Anchor.START ? atX : atX - wide;
        taken.add(new NumberPlaces.Bounds(left - 3, baselineY - LABEL_PX, wide + 6, LABEL_PX + 4));
    }

    /** Every stretch, then the numbers over them. */
    void path(Track track) {
        path(track, i -> true);
    }

    /** @param isNumbered whether a stretch has a number, from 0 */
    void path(Track track, IntPredicate isNumbered) {
        List<List<Vec>> stretches =
                track.stretches().stream().map(Track.Stretch::places).toList();
        for (int i = 0; i < stretches.size(); i++) {
            stretch(i, stretches.get(i));
        }
        NumberPlaces.Bounds bounds = new NumberPlaces.Bounds(x, y, width, height);
        for (NumberPlaces.Place place :
                NumberPlaces.find(stretches, frame, view, NUMBER_PX, bounds, taken, isNumbered)) {
            number(place);
        }
    }

    private void stretch(int index, List<Vec> places) {
        if (places.size() < 2) {
            return;
        }
        int rgb = colours.applyAsInt(index);
        inks.add(new Ink.Stroke(places.stream().map(this::point).toList(), rgb, LINE_PX, dashes.applyAsDouble(index)));
        arrow(places, places.size() / 3, rgb);
        arrow(places, places.size() * 5 / 6, rgb);
    }

    /** An arrowhead the way the path goes; none where it comes straight at the eye. */
    private void arrow(List<Vec> places, int index, int rgb) {
        Point from = point(places.get(Math.max(0, index - 1)));
        Point to = point(places.get(Math.min(places.size() - 1, index + 1)));
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        if (length < 0.5) {
            return;
        }
        double ux = (to.x() - from.x()) / length;
        double uy = (to.y() - from.y()) / length;
        inks.add(arrowHead(to.x(), to.y(), ux, uy, 8, rgb));
    }

    static Ink arrowHead(double tipX, double tipY, double ux, double uy, double sizePx, int rgb) {
        double backX = tipX - ux * sizePx;
        double backY = tipY - uy * sizePx;
        double half = sizePx * 0.45;
        return new Ink.Fill(
                List.of(
                        new Point(tipX, tipY),
                        new Point(backX - uy * half, backY + ux * half),
                        new Point(backX + uy * half, backY - ux * half)),
                rgb);
    }

    private void number(NumberPlaces.Place place) {
        int rgb = colours.applyAsInt(place.index());
        inks.add(new Ink.Stroke(
                List.of(new Point(place.ofX(), place.ofY()), new Point(place.x(), place.y())), rgb, 1, 0));
        inks.add(new Ink.Disc(place.x(), place.y(), NUMBER_PX - 1, PictureStyle.PAPER, rgb));
        inks.add(new Ink.Words(
                Integer.toString(place.index() + 1), place.x(), place.y() + 4, 11.5, true, Anchor.MIDDLE, rgb));
    }

    private Point point(Vec place) {
        return new Point(frame.x(place.x()), frame.y(view.upM(place)));
    }
}
