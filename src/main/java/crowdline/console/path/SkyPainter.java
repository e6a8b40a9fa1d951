package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.sheet.PathFrame;
import crowdline.show.aircraft.Outline;
import crowdline.sight.PathExtent;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Paints a figure as the crowd sees it, the aircraft larger than it would look so that its attitude can be seen: whole, or at
 * one moment with the smoke that is left. Those that keep together are as much further apart as they are larger.
 */
public final class SkyPainter {
    /** Smoke is gone after this time, seconds; tuned by looking. */
    private static final double SMOKE_S = 7;
    /** The drawn wing span against the smaller side of the picture, at one moment and for the whole figure. */
    private static final double MOMENT_SPAN = 0.2;

    private static final double WHOLE_SPAN = 0.11;
    /** The same for the whole figure of what is slow, and does not go far. */
    private static final double SLOW_SPAN = 0.16;
    /** What stands for the smaller side where it is much smaller, as a share of the larger; and at most so much of it. */
    private static final double WIDE = 0.45;

    private static final double TALL = 1.6;
    /** Where the wings are much longer than all the rest, the rest would be too small to see. */
    private static final double LONG_WINGS = 1.6;
    /**
     * The wing span of those that fly together against the size of their way: the gaps between them grow with it, so the
     * picture cannot.
     */
    private static final double TOGETHER_SPAN = 0.09;
    /** Room for the aircraft around its way, in its spans. */
    private static final double AROUND_SPANS = 1.5;

    /** Nothing is drawn larger than if it were this far across, metres. */
    private static final double LEAST_M = 120;
    /** The ground is drawn where it is no further below the figure than this share of the figure's size. */
    private static final double NEAR_GROUND = 0.45;

    private static final double CAPTION_PX = 26;

    private SkyPainter() {}

    /** From the pane to the surface, and how large the aircraft is drawn, metres. */
    record Place(PathFrame frame, double spanM) {}

    public static void paint(Pen pen, SkyView view, Box box) {
        if (view.isEmpty()) {
            return;
        }
        Box head = box.top(pen.px(CAPTION_PX));
        // Always kept free, so that nothing jumps when there is something to say.
        Box sky = view.atS().isEmpty() ? box : box.belowTop(head.h());
        Place place = place(view, sky);
        Shape before = pen.surface().getClip();
        pen.surface().clip(new Rectangle2D.Double(sky.x(), sky.y(), sky.w(), sky.h()));
        ground(pen, view.eye(), place.frame(), sky);
        if (view.atS().isPresent()) {
            List<SkyView.Seen> all = view.all(place.spanM());
            all.forEach(one -> line(pen, view.eye(), one.flown(), place.frame()));
            all.stream().filter(SkyView.Seen::smokes).forEach(one -> smoke(pen, view, one.flown(), place));
            aircraft(pen, view, all, view.atS().getAsDouble(), place);
        } else {
            StillPainter.paint(pen, view, sky, place);
        }
        pen.surface().setClip(before);
        if (!view.caption().isEmpty()) {
            TextBlock words = pen.line(view.caption(), TextRole.VALUE, true, head);
            pen.midway(words, head, pen.palette().text());
        }
    }

    static Place place(SkyView view, Box sky) {
        PathExtent one = extent(view, 0);
        boolean together = !view.flown().company().others().isEmpty();
        double spanPx = spanPx(view, sky);
        double togetherM = TOGETHER_SPAN * size(one);
        PathExtent own = together ? extent(view, togetherM) : one;
        double pxPerM =
                together ? pxPerM(own, sky, 0, AROUND_SPANS * togetherM) : pxPerM(own, sky, AROUND_SPANS * spanPx, 0);
        double spanM = together ? togetherM : spanPx / pxPerM;
        PathExtent all = withGround(own);
        double besideM = (sky.w() / pxPerM - all.wideM()) / 2;
        double overM = sky.h() / pxPerM - all.tallM();
        // What room is left is sky and not ground.
        double underM = all.low() < own.low() || own.low() <= 0 ? AROUND_SPANS / 2 * spanM : overM / 2;
        PathExtent roomy = new PathExtent(
                all.left() - besideM, all.right() + besideM, all.low() - underM, all.high() + overM - underM);
        return new Place(PathFrame.fit(roomy, sky.x(), sky.y(), sky.w(), sky.h()), spanM);
    }

    /** How large one alone is drawn. */
    private static double spanPx(SkyView view, Box sky) {
        double share = view.atS().isPresent()
                ? MOMENT_SPAN
                : view.flown().company().outline().isPresent() ? SLOW_SPAN : WHOLE_SPAN;
        // In a wide low picture it may be larger against its height.
        double sidePx = Math.min(Math.max(Math.min(sky.w(), sky.h()), WIDE * sky.w()), TALL * sky.h());
        return sidePx * share * (view.outline() == Outline.GLIDER ? LONG_WINGS : 1);
    }

    private static PathExtent extent(SkyView view, double spanM) {
        List<Eye.Spot> spots = view.all(spanM).stream()
                .flatMap(one -> spots(view.eye(), one.flown().poses()).stream())
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

    private static double pxPerM(PathExtent own, Box sky, double aroundPx, double aroundM) {
        PathExtent all = withGround(own);
        double wide = Math.max(all.wideM(), LEAST_M) + aroundM;
        double tall = Math.max(all.tallM(), LEAST_M / 4) + aroundM;
        return Math.min((sky.w() - aroundPx) / wide, (sky.h() - aroundPx) / tall);
    }

    static List<Eye.Spot> spots(Eye eye, List<Pose> poses) {
        return poses.stream().flatMap(p -> eye.see(p.place()).stream()).toList();
    }

    static void ground(Pen pen, Eye eye, PathFrame frame, Box sky) {
        double y = frame.y(eye.heightM());
        if (y < sky.maxY()) {
            pen.fill(new Box(sky.x(), y, sky.w(), sky.maxY() - y), pen.palette().sunk());
            pen.fill(new Box(sky.x(), y, sky.w(), pen.px(1.5)), pen.palette().rule());
        }
    }

    static void line(Pen pen, Eye eye, Flown flown, PathFrame frame) {
        Path2D path = new Path2D.Double();
        for (Eye.Spot spot : spots(eye, flown.poses())) {
            go(path, frame, spot);
        }
        Graphics2D g = pen.surface();
        g.setColor(faded(pen.palette().path(), 0.7));
        g.setStroke(new BasicStroke((float) pen.px(1.2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    static void go(Path2D path, PathFrame frame, Eye.Spot spot) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(frame.x(spot.alongM()), frame.y(spot.upM()));
        } else {
            path.lineTo(frame.x(spot.alongM()), frame.y(spot.upM()));
        }
    }

    /** Thin and strong behind the aircraft, wide and faint where it is old. */
    static void smoke(Pen pen, SkyView view, Flown flown, Place place) {
        double nowS = view.pose().tS();
        List<Pose> behind = flown.between(Math.max(flown.fromS(), nowS - SMOKE_S), nowS);
        Graphics2D g = pen.surface();
        for (int i = 1; i < behind.size(); i++) {
            Optional<Eye.Spot> a = view.eye().see(behind.get(i - 1).place());
            Optional<Eye.Spot> b = view.eye().see(behind.get(i).place());
            if (a.isPresent() && b.isPresent()) {
                double old = (nowS - behind.get(i).tS()) / SMOKE_S;
                double widthPx = place.frame().pxPerM() * place.spanM() * (0.05 + 0.22 * old);
                Path2D piece = new Path2D.Double();
                go(piece, place.frame(), a.get());
                go(piece, place.frame(), b.get());
                g.setStroke(new BasicStroke((float) widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
                g.setColor(faded(pen.palette().soft(), 0.7 * (1 - old)));
                g.draw(piece);
            }
        }
    }

    /** All of them at a moment, the furthest first. */
    static void aircraft(Pen pen, SkyView view, List<SkyView.Seen> all, double atS, Place place) {
        all.stream()
                .sorted(Comparator.comparingDouble((SkyView.Seen one) ->
                                one.flown().at(atS).place().y())
                        .reversed())
                .forEach(one -> aircraft(pen, view.eye(), one, one.flown().at(atS), place));
    }

    static void aircraft(Pen pen, Eye eye, SkyView.Seen one, Pose pose, Place place) {
        PathFrame frame = place.frame();
        eye.see(pose.place())
                .ifPresent(spot -> SolidPainter.paint(
                        pen,
                        one.outline(),
                        pose,
                        eye,
                        frame.x(spot.alongM()),
                        frame.y(spot.upM()),
                        one.size() * place.spanM() * frame.pxPerM() * spot.scale()));
    }

    static Color faded(Color colour, double share) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * share));
    }
}
