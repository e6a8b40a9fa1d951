package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.theme.TextRole;
import crowdline.flight.body.Vec;
import crowdline.sight.picture.Company;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Paints a whole figure in one picture. Of one aircraft it is what the wings sweep, pale on top and dark beneath, so that every
 * roll is a twist of it, and the aircraft along it. Of several it is each one's way, and all of them at some moments. What
 * turns on the spot is shown moment after moment, from left to right.
 */
final class StillPainter {
    /** How much of the wings sweeps the band. */
    private static final double SWEEPS = 0.7;
    /** In the whole figure an aircraft stands each time it has gone so many of its spans, at most this often. */
    private static final double APART_SPANS = 2.1;

    /** Nearer to one that stands there already none is drawn. */
    private static final double CLEAR_SPANS = 1;

    private static final int MOST_AIRCRAFT = 9;
    /** Several are seen at most so often. */
    private static final int MOST_GROUPS = 4;
    /** What goes less far than this, in spans, stands on the spot. */
    private static final double ON_THE_SPOT_SPANS = 1;
    /** Moments shown of what turns on the spot, and how far apart, in spans. */
    private static final int TURNING = 5;

    private static final double TURNING_APART_SPANS = 1.35;
    /** It turns if its nose moves further than this: cosine of 15 degrees. */
    private static final double TURNS = 0.966;

    private static final double WORDS_PX = 26;

    private StillPainter() {}

    static void paint(Pen pen, SkyView view, Box sky, SkyPainter.Place place) {
        Flown flown = view.flown();
        if (flown.company().equals(Company.NONE)) {
            SkyView.Seen only = view.all(place.spanM()).get(0);
            sweep(pen, view, flown, place);
            along(view, flown, place).forEach(pose -> SkyPainter.aircraft(pen, view.eye(), only, pose, place));
            return;
        }
        List<SkyView.Seen> all = view.all(place.spanM());
        all.forEach(one -> SkyPainter.line(pen, view.eye(), one.flown(), place.frame()));
        if (all.size() > 1) {
            groups(view, place).forEach(atS -> SkyPainter.aircraft(pen, view, all, atS, place));
        } else if (turnsOnTheSpot(view, place)) {
            turning(pen, view, all.get(0), sky, place);
        } else {
            along(view, flown, place).forEach(pose -> SkyPainter.aircraft(pen, view.eye(), all.get(0), pose, place));
        }
    }

    /** When all of them are shown: first where they end, then where they begin, then between; none over another. */
    static List<Double> groups(SkyView view, SkyPainter.Place place) {
        List<Double> standing = new ArrayList<>();
        List<Eye.Spot> taken = new ArrayList<>();
        List<SkyView.Seen> all = view.all(place.spanM());
        double fromS = view.flown().fromS();
        double forS = view.flown().toS() - fromS;
        double clearM = CLEAR_SPANS * place.spanM();
        for (int k : new int[] {MOST_GROUPS - 1, 0, 2, 1}) {
            double atS = fromS + forS * k / (MOST_GROUPS - 1);
            List<Eye.Spot> spots = all.stream()
                    .flatMap(one -> view.eye().see(one.flown().at(atS).place()).stream())
                    .toList();
            if (spots.stream()
                    .allMatch(s -> taken.stream()
                            .allMatch(t -> Math.hypot(t.alongM() - s.alongM(), t.upM() - s.upM()) > clearM))) {
                taken.addAll(spots);
                standing.add(atS);
            }
        }
        return standing;
    }

    static boolean turnsOnTheSpot(SkyView view, SkyPainter.Place place) {
        Flown.Reach reach = view.flown().reach();
        Vec nose = view.flown().poses().get(0).nose();
        return reach.size().length() < ON_THE_SPOT_SPANS * place.spanM()
                && view.flown().poses().stream().anyMatch(p -> p.nose().dot(nose) < TURNS);
    }

    private static void turning(Pen pen, SkyView view, SkyView.Seen one, Box sky, SkyPainter.Place place) {
        double fromS = view.flown().fromS();
        double forS = view.flown().toS() - fromS;
        for (int k = 0; k < TURNING; k++) {
            Pose pose = view.flown().at(fromS + forS * k / (TURNING - 1));
            double asideM = (k - (TURNING - 1) / 2.0) * TURNING_APART_SPANS * place.spanM();
            SkyPainter.aircraft(pen, view.eye(), one, pose.movedBy(asideM, 0, 0), place);
        }
        Box foot = sky.bottom(pen.px(WORDS_PX));
        pen.midway(
                pen.line("From left to right, moment after moment", TextRole.LABEL, false, foot),
                foot,
                pen.palette().text());
    }

    /** What the wings sweep, its upper side pale, its underside dark. */
    private static void sweep(Pen pen, SkyView view, Flown flown, SkyPainter.Place place) {
        Tones tones = Tones.of(pen.palette());
        Graphics2D g = pen.surface();
        List<Pose> poses = flown.poses();
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
                view.eye().see(corner).ifPresent(spot -> SkyPainter.go(piece, place.frame(), spot));
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
        edges(pen, view, flown, place);
    }

    /** The ways of both wing tips, so that the band has an edge wherever it is seen from its side. */
    private static void edges(Pen pen, SkyView view, Flown flown, SkyPainter.Place place) {
        Graphics2D g = pen.surface();
        g.setColor(pen.palette().path());
        g.setStroke(new BasicStroke((float) pen.px(1.1), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (double side : new double[] {SWEEPS / 2, -SWEEPS / 2}) {
            Path2D tip = new Path2D.Double();
            for (Pose pose : flown.poses()) {
                view.eye()
                        .see(pose.point(new Vec(0, side, 0), place.spanM()))
                        .ifPresent(spot -> SkyPainter.go(tip, place.frame(), spot));
            }
            g.draw(tip);
        }
    }

    /** Where the aircraft stands in the whole figure: at equal steps along what is seen of its way, but none over another. */
    static List<Pose> along(SkyView view, Flown flown, SkyPainter.Place place) {
        List<Pose> poses = flown.poses();
        List<Eye.Spot> spots = SkyPainter.spots(view.eye(), poses);
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
}
