package crowdline.sheet.still;

import crowdline.sheet.PathFrame;
import crowdline.show.aircraft.Outline;
import crowdline.sight.PathExtent;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.List;

/**
 * From the pane to a surface, and how large the aircraft is drawn. Those that keep together are as much further apart as they
 * are larger.
 *
 * @param spanM how long its wings are drawn, metres
 */
public record Place(PathFrame frame, double spanM) {
    /** The drawn wing span against the smaller side of the picture, at one moment and for the whole figure. */
    private static final double MOMENT_SPAN = 0.2;

    private static final double WHOLE_SPAN = 0.11;
    /** The same for the whole figure of what is slow, and does not go far. */
    private static final double SLOW_SPAN = 0.16;
    /** What stands for the smaller side where it is much smaller, as a share of the larger; and at most so much of it. */
    private static final double WIDE = 0.45;

    private static final double TALL = 1.6;
    /** In a small picture it is drawn larger against it, to be seen at all: this long, but as at one moment at most. */
    private static final double LEAST_SPAN = 17;
    /** Where the wings are much longer than all the rest, the rest would be too small to see. */
    private static final double LONG_WINGS = 1.6;
    /**
     * The wing span of those that fly together against the size of their way: the gaps between them grow with it, so the
     * picture cannot.
     */
    private static final double TOGETHER_SPAN = 0.09;
    /** Room for the aircraft around its way, in its spans; and where its beginning and its end are marked. */
    private static final double AROUND_SPANS = 1.5;

    private static final double AROUND_WHOLE_SPANS = 1.8;

    /** Nothing is drawn larger than if it were this far across, metres. */
    private static final double LEAST_M = 120;
    /** The ground is drawn where it is no further below the figure than this share of the figure's size. */
    private static final double NEAR_GROUND = 0.45;

    /**
     * The largest place in a box.
     *
     * @param whole true for the whole figure at once, false for one moment after the other
     */
    public static Place of(Subject subject, boolean whole, double x, double y, double w, double h) {
        boolean together = !subject.flown().company().others().isEmpty();
        PathExtent one = extent(subject, 0);
        double spanPx = spanPx(subject, whole, w, h);
        double togetherM = TOGETHER_SPAN * size(one);
        PathExtent own = together ? extent(subject, togetherM) : one;
        double around = whole && !together ? AROUND_WHOLE_SPANS : AROUND_SPANS;
        double pxPerM = together ? pxPerM(own, w, h, 0, around * togetherM) : pxPerM(own, w, h, around * spanPx, 0);
        double spanM = together ? togetherM : spanPx / pxPerM;
        PathExtent all = withGround(own);
        double besideM = (w / pxPerM - all.wideM()) / 2;
        double overM = h / pxPerM - all.tallM();
        // What room is left is sky and not ground.
        double underM = all.low() < own.low() || own.low() <= 0 ? AROUND_SPANS / 2 * spanM : overM / 2;
        PathExtent roomy = new PathExtent(
                all.left() - besideM, all.right() + besideM, all.low() - underM, all.high() + overM - underM);
        return new Place(PathFrame.fit(roomy, x, y, w, h), spanM);
    }

    /** How much taller than wide a figure is with the room around it. */
    static double tallOfWide(Subject subject) {
        PathExtent own = withGround(extent(subject, 0));
        double around = AROUND_SPANS * WHOLE_SPAN * size(own);
        return (Math.max(own.tallM(), LEAST_M / 4) + around) / (Math.max(own.wideM(), LEAST_M) + around);
    }

    /** How large one alone is drawn. */
    private static double spanPx(Subject subject, boolean whole, double w, double h) {
        double share =
                !whole ? MOMENT_SPAN : subject.flown().company().outline().isPresent() ? SLOW_SPAN : WHOLE_SPAN;
        // In a wide low picture it may be larger against its height.
        double sidePx = Math.min(Math.max(Math.min(w, h), WIDE * w), TALL * h);
        double spanPx = Math.max(sidePx * share, Math.min(LEAST_SPAN, sidePx * MOMENT_SPAN));
        return spanPx * (subject.outline() == Outline.GLIDER ? LONG_WINGS : 1);
    }

    private static PathExtent extent(Subject subject, double spanM) {
        List<Eye.Spot> spots = subject.all(spanM).stream()
                .flatMap(one -> spots(subject.eye(), one.flown()).stream())
                .toList();
        Eye.Spot first = spots.get(0);
        PathExtent own = new PathExtent(first.alongM(), first.alongM(), first.upM(), first.upM());
        for (Eye.Spot spot : spots) {
            own = own.with(spot.alongM(), spot.upM());
        }
        return own;
    }

    private static PathExtent withGround(PathExtent own) {
        return own.low() <= NEAR_GROUND * size(own) ? own.with(own.left(), 0) : own;
    }

    private static double size(PathExtent own) {
        return Math.max(LEAST_M, Math.max(own.wideM(), own.tallM()));
    }

    private static double pxPerM(PathExtent own, double w, double h, double aroundPx, double aroundM) {
        PathExtent all = withGround(own);
        double wide = Math.max(all.wideM(), LEAST_M) + aroundM;
        double tall = Math.max(all.tallM(), LEAST_M / 4) + aroundM;
        return Math.min((w - aroundPx) / wide, (h - aroundPx) / tall);
    }

    /** Where a flight is on the pane. */
    public static List<Eye.Spot> spots(Eye eye, Flown flown) {
        return flown.poses().stream()
                .map(Pose::place)
                .flatMap(place -> eye.see(place).stream())
                .toList();
    }
}
