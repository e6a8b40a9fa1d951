package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.flight.body.Vec;
import crowdline.sheet.PathFrame;
import crowdline.show.aircraft.Outline;
import crowdline.sight.PathExtent;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Pose;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Paints a figure as the crowd sees it, the aircraft larger than it would look so that its attitude can be seen. Of the whole
 * figure it paints what the wings sweep, pale on top and dark beneath, so that every roll is a twist of it; at one moment the
 * aircraft and the smoke it leaves.
 */
public final class SkyPainter {
    /** Smoke is gone after this time, seconds; tuned by looking. */
    private static final double SMOKE_S = 7;
    /** The drawn wing span against the smaller side of the picture, at one moment and for the whole figure. */
    private static final double MOMENT_SPAN = 0.2;

    private static final double WHOLE_SPAN = 0.11;
    /** What stands for the smaller side where it is much smaller, as a share of the larger; and at most so much of it. */
    private static final double WIDE = 0.45;

    private static final double TALL = 1.6;
    /** Where the wings are much longer than all the rest, the rest would be too small to see. */
    private static final double LONG_WINGS = 1.6;
    /** Room for the aircraft around its way, in its spans. */
    private static final double AROUND_SPANS = 1.5;

    /** How much of the wings sweeps the band. */
    private static final double SWEEPS = 0.7;
    /** In the whole figure an aircraft stands each time it has gone so many of its spans, at most this often. */
    private static final double APART_SPANS = 2.1;

    /** Nearer to one that stands there already none is drawn. */
    private static final double CLEAR_SPANS = 1;

    private static final int MOST_AIRCRAFT = 9;
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
            line(pen, view, place.frame());
            smoke(pen, view, place);
            aircraft(pen, view, view.pose(), place);
        } else {
            sweep(pen, view, place);
            along(view, place).forEach(pose -> aircraft(pen, view, pose, place));
        }
        pen.surface().setClip(before);
        if (!view.caption().isEmpty()) {
            TextBlock words = pen.line(view.caption(), TextRole.VALUE, true, head);
            pen.midway(words, head, pen.palette().text());
        }
    }

    private static Place place(SkyView view, Box sky) {
        List<Eye.Spot> spots = spots(view, view.flown().poses());
        Eye.Spot first = spots.get(0);
        PathExtent own = new PathExtent(first.alongM(), first.alongM(), first.upM(), first.upM());
        for (Eye.Spot spot : spots) {
            own = own.with(spot.alongM(), spot.upM());
        }
        double sizeM = Math.max(LEAST_M, Math.max(own.wideM(), own.tallM()));
        PathExtent all = own.low() <= NEAR_GROUND * sizeM ? own.with(own.left(), 0) : own;
        double wide = Math.max(all.wideM(), LEAST_M);
        double tall = Math.max(all.tallM(), LEAST_M / 4);
        double share = view.atS().isPresent() ? MOMENT_SPAN : WHOLE_SPAN;
        // In a wide low picture it may be larger against its height.
        double sidePx = Math.min(Math.max(Math.min(sky.w(), sky.h()), WIDE * sky.w()), TALL * sky.h());
        double spanPx = sidePx * share * (view.outline() == Outline.GLIDER ? LONG_WINGS : 1);
        double aroundPx = AROUND_SPANS * spanPx;
        double pxPerM = Math.min((sky.w() - aroundPx) / wide, (sky.h() - aroundPx) / tall);
        double spanM = spanPx / pxPerM;
        double besideM = (sky.w() / pxPerM - all.wideM()) / 2;
        double overM = sky.h() / pxPerM - all.tallM();
        // What room is left is sky and not ground.
        double underM = all.low() < own.low() || own.low() <= 0 ? AROUND_SPANS / 2 * spanM : overM / 2;
        PathExtent roomy = new PathExtent(
                all.left() - besideM, all.right() + besideM, all.low() - underM, all.high() + overM - underM);
        return new Place(PathFrame.fit(roomy, sky.x(), sky.y(), sky.w(), sky.h()), spanM);
    }

    private static List<Eye.Spot> spots(SkyView view, List<Pose> poses) {
        return poses.stream().flatMap(p -> view.eye().see(p.place()).stream()).toList();
    }

    static void ground(Pen pen, Eye eye, PathFrame frame, Box sky) {
        double y = frame.y(eye.heightM());
        if (y < sky.maxY()) {
            pen.fill(new Box(sky.x(), y, sky.w(), sky.maxY() - y), pen.palette().sunk());
            pen.fill(new Box(sky.x(), y, sky.w(), pen.px(1.5)), pen.palette().rule());
        }
    }

    private static void line(Pen pen, SkyView view, PathFrame frame) {
        Path2D path = new Path2D.Double();
        for (Eye.Spot spot : spots(view, view.flown().poses())) {
            go(path, frame, spot);
        }
        Graphics2D g = pen.surface();
        g.setColor(faded(pen.palette().path(), 0.7));
        g.setStroke(new BasicStroke((float) pen.px(1.2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    private static void go(Path2D path, PathFrame frame, Eye.Spot spot) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(frame.x(spot.alongM()), frame.y(spot.upM()));
        } else {
            path.lineTo(frame.x(spot.alongM()), frame.y(spot.upM()));
        }
    }

    /** Thin and strong behind the aircraft, wide and faint where it is old. */
    static void smoke(Pen pen, SkyView view, Place place) {
        double nowS = view.pose().tS();
        List<Pose> behind = view.flown().between(Math.max(view.flown().fromS(), nowS - SMOKE_S), nowS);
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

    /** What the wings sweep, its upper side pale, its underside dark. */
    private static void sweep(Pen pen, SkyView view, Place place) {
        Tones tones = Tones.of(pen.palette());
        Graphics2D g = pen.surface();
        List<Pose> poses = view.flown().poses();
        Vec wing = new Vec(0, SWEEPS / 2, 0);
        for (int i = 1; i < poses.size(); i++) {
            Pose a = poses.get(i - 1);
            Pose b = poses.get(i);
            Path2D piece = new Path2D.Double();
            for (Vec corner : List.of(
                    a.point(wing, place.spanM()),
                    b.point(wing, place.spanM()),
                    b.point(wing.times(-1), place.spanM()),
                    a.point(wing.times(-1), place.spanM()))) {
                view.eye().see(corner).ifPresent(spot -> go(piece, place.frame(), spot));
            }
            if (piece.getCurrentPoint() != null) {
                piece.closePath();
                boolean top = view.eye().faces(a.place(), a.up());
                Color colour = top ? tones.sweptTop() : tones.sweptUnder();
                g.setColor(colour);
                g.fill(piece);
                g.setStroke(new BasicStroke((float) pen.px(0.8), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                g.draw(piece);
            }
        }
        edges(pen, view, place);
    }

    /** The ways of both wing tips, so that the band has an edge wherever it is seen from its side. */
    private static void edges(Pen pen, SkyView view, Place place) {
        Graphics2D g = pen.surface();
        g.setColor(pen.palette().path());
        g.setStroke(new BasicStroke((float) pen.px(1.1), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (double side : new double[] {SWEEPS / 2, -SWEEPS / 2}) {
            Path2D tip = new Path2D.Double();
            for (Pose pose : view.flown().poses()) {
                view.eye()
                        .see(pose.point(new Vec(0, side, 0), place.spanM()))
                        .ifPresent(spot -> go(tip, place.frame(), spot));
            }
            g.draw(tip);
        }
    }

    /** Where the aircraft stands in the whole figure: at equal steps along what is seen of its way, but none over another. */
    private static List<Pose> along(SkyView view, Place place) {
        List<Pose> poses = view.flown().poses();
        List<Eye.Spot> spots = spots(view, poses);
        if (spots.size() < poses.size()) {
            return List.of(view.pose());
        }
        double[] gone = new double[spots.size()];
        for (int i = 1; i < gone.length; i++) {
            Eye.Spot a = spots.get(i - 1);
            Eye.Spot b = spots.get(i);
            gone[i] = gone[i - 1] + Math.hypot(b.alongM() - a.alongM(), b.upM() - a.upM());
        }
        double whole = gone[gone.length - 1];
        int count = (int) Math.min(MOST_AIRCRAFT, Math.max(2, Math.floor(whole / (APART_SPANS * place.spanM())) + 1));
        List<Pose> standing = new ArrayList<>();
        List<Eye.Spot> taken = new ArrayList<>();
        double clearM = CLEAR_SPANS * place.spanM();
        int at = 0;
        for (int k = 0; k < count; k++) {
            while (at < gone.length - 1 && gone[at] < whole * k / (count - 1) - 1e-6) {
                at++;
            }
            Eye.Spot here = spots.get(at);
            if (taken.stream().allMatch(t -> Math.hypot(t.alongM() - here.alongM(), t.upM() - here.upM()) > clearM)) {
                taken.add(here);
                standing.add(poses.get(at));
            }
        }
        return standing;
    }

    static void aircraft(Pen pen, SkyView view, Pose pose, Place place) {
        PathFrame frame = place.frame();
        view.eye()
                .see(pose.place())
                .ifPresent(spot -> SolidPainter.paint(
                        pen,
                        view.outline(),
                        pose,
                        view.eye(),
                        frame.x(spot.alongM()),
                        frame.y(spot.upM()),
                        place.spanM() * frame.pxPerM() * spot.scale()));
    }

    static Color faded(Color colour, double share) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * share));
    }
}
