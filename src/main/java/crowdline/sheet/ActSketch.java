package crowdline.sheet;

import crowdline.flight.Flight;
import crowdline.flight.Track;
import crowdline.measure.Measures;
import crowdline.sheet.ink.Ink;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import java.util.List;

/** An act from the crowd, as wide as a page, with its figures numbered: what stands at the head of a running sheet. */
public final class ActSketch {
    private static final double LEFT_PT = 46;
    private static final double TALLEST_PT = 200;

    private final PathExtent extent;
    private final double pxPerM;
    private final Track track;
    private final Measures measures;

    /**
     * A sketch.
     *
     * @param widthPt what it may be wide
     * @param measures what its heights are told in
     */
    public ActSketch(Flight flight, double widthPt, Measures measures) {
        this.measures = measures;
        track = Track.of(flight);
        PathExtent all = new PathExtent(-250, 250, 0, 100);
        for (Track.Stretch stretch : track.stretches()) {
            all = all.with(PathView.SIDE, stretch.places());
        }
        all = new PathExtent(all.left() - 60, all.right() + 60, all.low() - 25, all.high() * 1.08 + 10);
        pxPerM = Math.min((widthPt - LEFT_PT) / all.wideM(), TALLEST_PT / all.tallM());
        double more = ((widthPt - LEFT_PT) / pxPerM - all.wideM()) / 2;
        extent = new PathExtent(all.left() - more, all.right() + more, all.low(), all.high());
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
        side.path(track);
        return side.inks();
    }
}
