package crowdline.sheet;

import crowdline.flight.Flight;
import crowdline.flight.Track;
import crowdline.measure.Measures;
import crowdline.sheet.ink.Ink;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import java.util.List;
import java.util.function.IntPredicate;

/** An act from the crowd, as wide as a page, with its figures numbered, the ways between them if they are to be: what stands at the head of a running sheet. */
public final class ActSketch {
    private static final double LEFT_PT = 46;
    private static final double TALLEST_PT = 200;
    /** A low and wide act has sky above it, or its numbers would bury it. */
    private static final double LEAST_TALL_PT = 110;

    private final PathExtent extent;
    private final double pxPerM;
    private final Track track;
    private final Measures measures;
    private final IntPredicate isNumbered;

    /**
     * A sketch.
     *
     * @param isNumbered whether a figure has a number in it, by its place in the flight, from 0
     * @param widthPt what it may be wide
     * @param measures what its heights are told in
     */
    public ActSketch(Flight flight, IntPredicate isNumbered, double widthPt, Measures measures) {
        this.measures = measures;
        this.isNumbered = isNumbered;
        track = Track.of(flight);
        PathExtent all = new PathExtent(-250, 250, 0, 100);
        for (Track.Stretch stretch : track.stretches()) {
            all = all.with(PathView.SIDE, stretch.places());
        }
        all = new PathExtent(all.left() - 60, all.right() + 60, all.low() - 25, all.high() * 1.08 + 10);
        pxPerM = Math.min((widthPt - LEFT_PT) / all.wideM(), TALLEST_PT / all.tallM());
        double more = ((widthPt - LEFT_PT) / pxPerM - all.wideM()) / 2;
        double high = Math.max(all.high(), all.low() + LEAST_TALL_PT / pxPerM);
        extent = new PathExtent(all.left() - more, all.right() + more, all.low(), high);
    }

    /** Whether anything of the act can be drawn. */
    public boolean isEmpty() {
        return track.stretches().stream().allMatch(s -> s.places().size() < 2);
    }

    public double heightPt() {
        return pxPerM * extent.tallM() + 4;
    }

    public List<Ink> inks(double x, double y) {
        PictureView side = new PictureView(
                PathView.SIDE,
                extent,
                x + LEFT_PT,
                y,
                pxPerM,
                i -> i % 2 == 0 ? PictureStyle.ACCENT : PictureStyle.TEXT,
                i -> 0);
        side.heights(extent.high(), measures);
        side.line(0, "", PictureStyle.GROUND, false, false);
        side.datum();
        side.path(track, isNumbered);
        return side.inks();
    }
}
