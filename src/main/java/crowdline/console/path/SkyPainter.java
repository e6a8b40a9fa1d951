package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import crowdline.flight.body.Vec;
import crowdline.sheet.PathFrame;
import crowdline.sheet.ink.InkPainter;
import crowdline.sheet.still.Place;
import crowdline.sheet.still.Still;
import crowdline.sheet.still.Subject;
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

    /** What has to be said of a still has at most this share of it. */
    private static final double MOST_NOTE = 0.2;

    private static final double CAPTION_PX = 26;
    private static final double ROPE_PX = 1.4;

    private SkyPainter() {}

    public static void paint(Pen pen, SkyView view, Box box) {
        if (view.isEmpty()) {
            return;
        }
        Box head = box.top(pen.px(CAPTION_PX));
        // Always kept free, so that nothing jumps when there is something to say.
        Box sky = view.atS().isEmpty() ? box : box.belowTop(head.h());
        Shape before = pen.surface().getClip();
        pen.surface().clip(new Rectangle2D.Double(sky.x(), sky.y(), sky.w(), sky.h()));
        if (view.atS().isPresent()) {
            Place place = Place.of(view.subject(), false, sky.x(), sky.y(), sky.w(), sky.h());
            ground(pen, view.eye(), place.frame(), sky);
            List<Subject.Seen> all = view.subject().all(place.spanM());
            all.forEach(one -> line(pen, view.eye(), one.flown(), place.frame()));
            all.stream().filter(Subject.Seen::smokes).forEach(one -> smoke(pen, view, one.flown(), place));
            aircraft(pen, view, all, view.atS().getAsDouble(), place);
        } else {
            still(pen, view, sky);
        }
        pen.surface().setClip(before);
        if (!view.caption().isEmpty()) {
            Box inner = head.inset(pen.px(8), 0);
            TextBlock words = pen.line(view.caption(), TextRole.VALUE, true, inner);
            pen.midway(words, inner, pen.palette().text());
        }
    }

    private static void still(Pen pen, SkyView view, Box box) {
        String note =
                Still.of(view.subject(), box.x(), box.y(), box.w(), box.h()).note();
        TextBlock words = pen.line(note, TextRole.LABEL, false, box.bottom(box.h() * MOST_NOTE));
        // Under the picture, whose ground would be too low for large words.
        Box foot = box.bottom(note.isEmpty() ? 0 : words.heightPx() * 1.3);
        Box sky = box.aboveBottom(foot.h());
        Still still = Still.of(view.subject(), sky.x(), sky.y(), sky.w(), sky.h());
        ground(pen, view.eye(), still.place().frame(), sky);
        new InkPainter(pen.surface()).paint(still.inks(PaletteTones.of(pen.palette()), pen.px(1)));
        if (!still.note().isEmpty()) {
            pen.midway(words, foot, pen.palette().soft());
        }
    }

    static void ground(Pen pen, Eye eye, PathFrame frame, Box sky) {
        double y = frame.y(eye.heightM());
        if (y < sky.maxY()) {
            pen.fill(new Box(sky.x(), y, sky.w(), sky.maxY() - y), pen.palette().sunk());
            pen.fill(new Box(sky.x(), y, sky.w(), pen.px(1.5)), pen.palette().rule());
        }
    }

    private static void line(Pen pen, Eye eye, Flown flown, PathFrame frame) {
        Path2D path = new Path2D.Double();
        Place.spots(eye, flown).forEach(spot -> go(path, frame, spot));
        Graphics2D g = pen.surface();
        g.setColor(new Color(PaletteTones.of(pen.palette()).way()));
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

    /** All of them at a moment, the furthest first, and what they pull each other by. */
    static void aircraft(Pen pen, SkyView view, List<Subject.Seen> all, double atS, Place place) {
        all.stream()
                .filter(Subject.Seen::onARope)
                .forEach(one -> rope(pen, view.eye(), one.rope(all.get(0), atS, place.spanM()), place.frame()));
        all.stream()
                .sorted(Comparator.comparingDouble((Subject.Seen one) ->
                                one.flown().at(atS).place().y())
                        .reversed())
                .forEach(one -> aircraft(pen, view.eye(), one, one.flown().at(atS), place));
    }

    private static void rope(Pen pen, Eye eye, List<Vec> ends, PathFrame frame) {
        Path2D path = new Path2D.Double();
        ends.forEach(end -> eye.see(end).ifPresent(spot -> go(path, frame, spot)));
        Graphics2D g = pen.surface();
        g.setColor(pen.palette().text());
        g.setStroke(new BasicStroke((float) pen.px(ROPE_PX), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
    }

    static void aircraft(Pen pen, Eye eye, Subject.Seen one, Pose pose, Place place) {
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
