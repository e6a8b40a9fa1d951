package crowdline.sheet.still;

import crowdline.flight.body.Vec;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Point;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Company;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A whole figure in one picture. Of one aircraft it is what the wings sweep, pale on top and dark beneath, so that every roll
 * is a twist of it, and the aircraft along it. Of several it is each one's way, and all of them at some moments. What turns on
 * the spot is shown moment after moment, from left to right.
 */
public final class Still {
    private static final String ON_THE_SPOT = "From left to right, moment after moment";
    private static final String LONGER = "Drawn apart where it turns on the spot";

    /** How much of the wings sweeps the band. */
    private static final double SWEEPS = 0.7;
    /** What turns on the spot stands there so often. */
    private static final int TURNING = 5;

    private static final double TURNING_APART_SPANS = 1.35;
    /** Where the dot at the beginning and the arrow at the end stand, in spans from the aircraft there. */
    private static final double DOT_SPANS = 0.72;

    private static final double STEM_SPANS = 0.55;
    private static final double HEAD_SPANS = 0.86;
    /** So far it goes before its direction is known, spans. */
    private static final double FAR_SPANS = 0.4;

    private static final double DOT_PX = 2.5;
    private static final double HEAD_PX = 8;
    private static final double LEAST_ARROW_PX = 4;
    /** Pieces of the band are so long, in spans, or turn so far, radians. */
    private static final double SEEN_SPANS = 0.5;

    private static final double SEEN_RAD = 0.06;
    private static final double WAY_PX = 1.2;
    private static final double ROPE_PX = 1.4;
    private static final double EDGE_PX = 1.1;
    private static final double SEAM_PX = 0.8;

    private final Subject subject;
    private final Place place;
    private final Standing standing;
    private final String note;

    private Still(Subject subject, Place place, Standing standing, String note) {
        this.subject = subject;
        this.place = place;
        this.standing = standing;
        this.note = note;
    }

    /** Puts a figure into a box. */
    public static Still of(Subject subject, double x, double y, double w, double h) {
        Place place = Place.of(subject, true, x, y, w, h);
        double spanM = place.spanM();
        Standing asFlown = new Standing(subject, spanM, List.of());
        if (!subject.flown().company().others().isEmpty()) {
            return new Still(subject, place, asFlown, "");
        } else if (asFlown.turnsOnTheSpot()) {
            return new Still(subject, place, asFlown, ON_THE_SPOT);
        }
        Unfolding unfolding = Unfolding.of(subject.flown(), subject.eye(), spanM);
        if (!unfolding.isLonger()) {
            return new Still(subject, place, asFlown, "");
        }
        Subject longer = subject.flying(unfolding.flown());
        Place fit = new Place(Place.of(longer, true, x, y, w, h).frame(), spanM);
        return new Still(longer, fit, new Standing(longer, spanM, unfolding.extraM()), LONGER);
    }

    /** What has to be said of the drawing; empty if it is as it is flown. */
    public String note() {
        return note;
    }

    /** Where it is. */
    public Place place() {
        return place;
    }

    /** How much taller than wide it is with the room around it. */
    double tallOfWide() {
        return Place.tallOfWide(subject);
    }

    Standing standing() {
        return standing;
    }

    /**
     * Where one aircraft stands on the surface.
     *
     * @param tS the moment, seconds since the act began
     */
    public record Stand(double tS, double x, double y) {}

    /** Where the one aircraft stands, in the order flown. */
    public List<Stand> stands() {
        return standing.along().stream()
                .flatMap(pose -> subject.eye().see(pose.place()).stream()
                        .map(spot -> new Stand(
                                pose.tS(),
                                place.frame().x(spot.alongM()),
                                place.frame().y(spot.upM()))))
                .toList();
    }

    /** When all of them are seen, where there are several, seconds since the act began. */
    public List<Double> groups() {
        return standing.groups();
    }

    /**
     * All of it, from the hindmost to the foremost.
     *
     * @param px a designed pixel on the surface
     */
    public List<Ink> inks(Tones tones, double px) {
        Drawing drawing = new Drawing(tones, px);
        Flown flown = subject.flown();
        List<Subject.Seen> all = subject.all(place.spanM());
        if (flown.company().equals(Company.NONE)) {
            drawing.sweep(flown);
        } else {
            all.forEach(one -> drawing.way(one.flown()));
        }
        if (all.size() > 1) {
            standing.groups().forEach(atS -> drawing.together(all, atS));
        } else if (note.equals(ON_THE_SPOT)) {
            drawing.turning(all.get(0));
        } else {
            standing.along().forEach(pose -> drawing.aircraft(all.get(0), pose));
            drawing.ends(flown);
        }
        return drawing.inks;
    }

    /** One drawing of it. */
    private final class Drawing {
        private final Tones tones;
        private final double px;
        private final List<Ink> inks = new ArrayList<>();

        Drawing(Tones tones, double px) {
            this.tones = tones;
            this.px = px;
        }

        private List<Point> points(List<Vec> places) {
            List<Point> points = new ArrayList<>(places.size());
            for (Vec at : places) {
                subject.eye()
                        .see(at)
                        .ifPresent(spot -> points.add(new Point(
                                place.frame().x(spot.alongM()), place.frame().y(spot.upM()))));
            }
            return points;
        }

        private void stroke(List<Vec> places, int rgb, double widthPx) {
            inks.add(new Ink.Stroke(points(places), rgb, widthPx * px, 0));
        }

        void way(Flown flown) {
            stroke(flown.poses().stream().map(Pose::place).toList(), tones.way(), WAY_PX);
        }

        /** What the wings sweep, and the ways of both tips, so that it has an edge wherever it is seen from its side. */
        void sweep(Flown flown) {
            List<Pose> poses = thinned(flown.poses());
            List<Vec> right = tips(poses, 1);
            List<Vec> left = tips(poses, -1);
            for (int i = 1; i < right.size(); i++) {
                List<Vec> piece =
                        List.of(right.get(i - 1), right.get(i), left.get(i), left.get(i - 1), right.get(i - 1));
                Pose from = poses.get(i - 1);
                int rgb = subject.eye().faces(from.place(), from.up()) ? tones.sweptTop() : tones.sweptUnder();
                inks.add(new Ink.Fill(points(piece), rgb));
                stroke(piece, rgb, SEAM_PX);
            }
            stroke(right, tones.path(), EDGE_PX);
            stroke(left, tones.path(), EDGE_PX);
        }

        private List<Vec> tips(List<Pose> poses, int side) {
            Vec wing = new Vec(0, side * SWEEPS / 2, 0);
            return poses.stream().map(pose -> pose.point(wing, place.spanM())).toList();
        }

        /** Without what lies so near to the one before that nobody would see the difference. */
        private List<Pose> thinned(List<Pose> poses) {
            List<Pose> thinned = new ArrayList<>();
            for (int i = 0; i < poses.size(); i++) {
                Pose pose = poses.get(i);
                Pose before = thinned.isEmpty() ? null : thinned.get(thinned.size() - 1);
                if (before == null
                        || i == poses.size() - 1
                        || pose.place().minus(before.place()).length() > SEEN_SPANS * place.spanM()
                        || Unfolding.turnedRad(before, pose) > SEEN_RAD) {
                    thinned.add(pose);
                }
            }
            return thinned;
        }

        /** A dot behind its beginning and an arrow before its end; neither where it hardly moves. */
        void ends(Flown flown) {
            List<Pose> poses = flown.poses();
            double spanM = place.spanM();
            Vec first = poses.get(0).place();
            Vec last = poses.get(poses.size() - 1).place();
            away(poses, first)
                    .map(on -> points(List.of(first.minus(on.times(DOT_SPANS * spanM)))))
                    .ifPresent(at -> at.forEach(
                            dot -> inks.add(new Ink.Disc(dot.x(), dot.y(), DOT_PX * px, tones.path(), tones.path()))));
            List<Pose> back = new ArrayList<>(poses);
            Collections.reverse(back);
            away(back, last)
                    .map(from -> points(List.of(
                            last.minus(from.times(STEM_SPANS * spanM)), last.minus(from.times(HEAD_SPANS * spanM)))))
                    .filter(ends -> ends.size() == 2)
                    .ifPresent(ends -> arrow(ends.get(0), ends.get(1)));
        }

        /** Which way it goes from a place; nowhere if it stays there. */
        private Optional<Vec> away(List<Pose> poses, Vec from) {
            return poses.stream()
                    .map(pose -> pose.place().minus(from))
                    .filter(gone -> gone.length() > FAR_SPANS * place.spanM())
                    .findFirst()
                    .map(Vec::unit);
        }

        private void arrow(Point from, Point to) {
            double longPx = Math.hypot(to.x() - from.x(), to.y() - from.y());
            if (longPx < LEAST_ARROW_PX * px) {
                return;
            }
            double ux = (to.x() - from.x()) / longPx;
            double uy = (to.y() - from.y()) / longPx;
            double head = Math.min(longPx, HEAD_PX * px);
            double half = head * 0.5;
            Point neck = new Point(to.x() - ux * head, to.y() - uy * head);
            inks.add(new Ink.Stroke(List.of(from, neck), tones.path(), 2 * px, 0));
            inks.add(new Ink.Fill(
                    List.of(
                            to,
                            new Point(neck.x() - uy * half, neck.y() + ux * half),
                            new Point(neck.x() + uy * half, neck.y() - ux * half)),
                    tones.path()));
        }

        /** All of them at a moment, the furthest first. */
        void together(List<Subject.Seen> all, double atS) {
            all.stream()
                    .filter(Subject.Seen::onARope)
                    .forEach(one -> stroke(one.rope(all.get(0), atS, place.spanM()), tones.path(), ROPE_PX));
            all.stream()
                    .sorted(Comparator.comparingDouble((Subject.Seen one) ->
                                    one.flown().at(atS).place().y())
                            .reversed())
                    .forEach(one -> aircraft(one, one.flown().at(atS)));
        }

        void turning(Subject.Seen one) {
            double fromS = one.flown().fromS();
            double forS = one.flown().toS() - fromS;
            for (int k = 0; k < TURNING; k++) {
                Pose pose = one.flown().at(fromS + forS * k / (TURNING - 1));
                double asideM = (k - (TURNING - 1) / 2.0) * TURNING_APART_SPANS * place.spanM();
                aircraft(one, pose.movedBy(asideM, 0, 0));
            }
        }

        void aircraft(Subject.Seen one, Pose pose) {
            Outline outline = one.outline();
            subject.eye()
                    .see(pose.place())
                    .ifPresent(spot -> inks.addAll(SolidInk.of(
                            outline,
                            pose,
                            subject.eye(),
                            place.frame().x(spot.alongM()),
                            place.frame().y(spot.upM()),
                            one.size() * place.spanM() * place.frame().pxPerM() * spot.scale(),
                            tones,
                            px)));
        }
    }
}
