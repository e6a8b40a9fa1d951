package crowdline.sheet;

import crowdline.flight.Flight;
import crowdline.flight.Track;
import crowdline.measure.Measures;
import crowdline.measure.Units;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Anchor;
import crowdline.sheet.ink.Ink.Point;
import crowdline.sheet.ink.Lettering;
import crowdline.sheet.ink.Scene;
import crowdline.sheet.ink.ScenePng;
import crowdline.sheet.ink.SceneSvg;
import crowdline.show.Act;
import crowdline.show.Caution;
import crowdline.show.DayAir;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;

/** A predicted act as a picture: from the crowd and from above, to one scale, with its figures numbered and named. */
public final class ActPicture {
    /** What every picture says at its foot. */
    public static final String CAUTION = Caution.ON_PAPER;

    private static final int WIDE_PX = 1500;
    private static final double LEFT_PX = 86;
    private static final double TOP_PX = 128;
    private static final double LIST_PX = 330;
    private static final double EDGE_PX = 28;
    private static final double ROW_PX = 22;
    private static final double BETWEEN_PX = 62;
    private static final double FOOT_PX = 76;
    /** Both views together are no taller than this, so that the picture stays on a page lying down. */
    private static final double TALLEST_PX = 900;

    private final Show show;
    private final Measures measures;
    private final Track track;
    private final PictureView side;
    private final PictureView plan;
    private final List<Ink> inks = new ArrayList<>();

    private ActPicture(Show show, Flight flight, Measures measures) {
        this.show = show;
        this.measures = measures;
        track = Track.of(flight);
        PathExtent across = new PathExtent(-250, 250, 0, 100);
        Double crowdM = show.venue().crowdToLineM();
        PathExtent from = new PathExtent(-250, 250, crowdM == null ? -60 : -crowdM - 30, 60);
        for (Track.Stretch stretch : track.stretches()) {
            across = across.with(PathView.SIDE, stretch.places());
            from = from.with(PathView.PLAN, stretch.places());
        }
        double left = across.left() - 60;
        double right = across.right() + 60;
        across = new PathExtent(left, right, across.low() - 25, across.high() * 1.08 + 10);
        from = new PathExtent(left, right, from.low() - 10, from.high() + 40);
        double room = WIDE_PX - LEFT_PX - LIST_PX - 2 * EDGE_PX;
        double pxPerM = Math.min(room / across.wideM(), TALLEST_PX / (across.tallM() + from.tallM()));
        double x = LEFT_PX + (room - pxPerM * across.wideM()) / 2;
        side = new PictureView(PathView.SIDE, across, x, TOP_PX, pxPerM);
        plan = new PictureView(PathView.PLAN, from, x, side.maxY() + BETWEEN_PX, pxPerM);
        scales(across, from);
        lines();
        side.path(track);
        plan.path(track);
    }

    /** Writes the picture as SVG. */
    public static void writeSvg(Show show, Act act, Flight flight, Measures measures, OutputStream out)
            throws IOException {
        try {
            SceneSvg.write(scene(show, act, flight, measures), out);
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }

    /** Writes the picture as PNG, two dots to the pixel. */
    public static void writePng(Show show, Act act, Flight flight, Measures measures, OutputStream out)
            throws IOException {
        ScenePng.write(scene(show, act, flight, measures), out);
    }

    static Scene scene(Show show, Act act, Flight flight, Measures measures) {
        ActPicture picture = new ActPicture(show, flight, measures);
        picture.head(act, flight);
        picture.inks.addAll(picture.side.inks());
        picture.inks.addAll(picture.plan.inks());
        picture.captions();
        double listEnd = picture.list();
        double bottom = Math.max(picture.plan.maxY() + 36, listEnd) + FOOT_PX;
        picture.wind();
        picture.foot(bottom);
        String title = act.title() + ", variant " + flight.variant() + ", from the crowd and from above";
        return new Scene(title, WIDE_PX, (int) Math.ceil(bottom), PictureStyle.PAPER, picture.inks);
    }

    private void scales(PathExtent across, PathExtent from) {
        side.heights(across.high(), measures);
        double stepM = across.wideM() > 3000 ? 500 : across.wideM() > 1200 ? 200 : 100;
        for (double m = Math.ceil(across.left() / stepM) * stepM; m <= across.right(); m += stepM) {
            String words = m == 0 ? "0" : String.format(Locale.UK, "%,.0f m", Math.abs(m));
            side.tickAlong(m, "");
            plan.tickAlong(m, words);
        }
        for (double m = Math.ceil(from.low() / stepM) * stepM; m <= from.high(); m += stepM) {
            plan.tickUp(m, String.format(Locale.UK, "%,.0f m", m + 0.0).replace('-', '−'));
        }
    }

    private void lines() {
        Venue venue = show.venue();
        Venue.Limits limits = venue.limits();
        side.line(0, "", PictureStyle.GROUND, false, false);
        limit(side, limits.baseFt(), "base given, %,.0f ft", Units.mFromFt(1), true);
        limit(side, limits.ceilingFt(), "ceiling given, %,.0f ft", Units.mFromFt(1), false);
        Double cloud = show.air().cloudBaseFt();
        if (cloud != null) {
            String words = "cloud base, " + measures.height(cloud);
            side.line(Units.mFromFt(cloud), words, PictureStyle.CLOUD, true, false);
        }
        plan.line(0, "display line", PictureStyle.GROUND, false, true);
        Double crowdM = venue.crowdToLineM();
        if (crowdM != null) {
            plan.line(-crowdM, "crowd line", PictureStyle.TEXT, false, false);
        }
        limit(plan, limits.depthM(), "depth given, %,.0f m", 1, false);
        Double half = limits.halfLengthM();
        if (half != null) {
            for (PictureView view : List.of(side, plan)) {
                view.wall(half, PictureStyle.LIMIT);
                view.wall(-half, PictureStyle.LIMIT);
            }
        }
        side.datum();
        plan.datum();
    }

    private void limit(PictureView view, @Nullable Double value, String words, double mPerUnit, boolean wordsUnder) {
        if (value != null) {
            view.line(
                    value * mPerUnit,
                    measures.told(String.format(Locale.UK, words, value)),
                    PictureStyle.LIMIT,
                    true,
                    wordsUnder);
        }
    }

    private void head(Act act, Flight flight) {
        String pilot = show.performer(act.performer()).map(Performer::name).orElse(act.performer());
        String aircraft = show.aircraft(act.airframe()).map(Aircraft::name).orElse(act.airframe());
        double most = WIDE_PX - 2 * EDGE_PX;
        say(Lettering.fitted(act.title(), 26, true, most), EDGE_PX, 46, 26, true, PictureStyle.TEXT);
        String line = pilot + ", " + aircraft + ". Variant \"" + flight.variant() + "\", predicted "
                + RunningSheet.minutes(flight.totalS()) + ".";
        say(Lettering.fitted(line, 15, false, most), EDGE_PX, 72, 15, false, PictureStyle.SOFT);
    }

    private void captions() {
        say("From the crowd", LEFT_PX, TOP_PX - 10, 15, true, PictureStyle.TEXT);
        say("From above, the crowd below", LEFT_PX, side.maxY() + BETWEEN_PX - 10, 15, true, PictureStyle.TEXT);
        double y = plan.maxY() + 34;
        say("left of the datum", plan.minX(), y, 12, false, PictureStyle.SOFT);
        inks.add(new Ink.Words("right of the datum", plan.maxX(), y, 12, false, Anchor.END, PictureStyle.SOFT));
    }

    /** The names at the right; returns where they end. */
    private double list() {
        double x = WIDE_PX - EDGE_PX - LIST_PX + 14;
        double y = TOP_PX - 10;
        say("Figures", x, y, 15, true, PictureStyle.TEXT);
        for (int i = 0; i < track.stretches().size(); i++) {
            Track.Stretch stretch = track.stretches().get(i);
            y += ROW_PX;
            boolean flown = stretch.places().size() > 1;
            int rgb = flown ? PictureStyle.lineRgb(i) : PictureStyle.SOFT;
            inks.add(new Ink.Words(Integer.toString(i + 1), x + 18, y, 13, true, Anchor.END, rgb));
            if (flown) {
                inks.add(new Ink.Stroke(
                        List.of(new Point(x + 26, y - 4), new Point(x + 58, y - 4)), rgb, 2.5, PictureStyle.dashPx(i)));
            }
            String name = stretch.name() + (flown ? "" : " (timed)");
            say(Lettering.fitted(name, 13, false, 215), x + 68, y, 13, false, PictureStyle.TEXT);
            String start = RunningSheet.minutes(stretch.startS());
            inks.add(new Ink.Words(start, x + LIST_PX - 20, y, 13, false, Anchor.END, PictureStyle.SOFT));
        }
        return y;
    }

    /** The way the wind blows as the plan has it, above its right end. */
    private void wind() {
        DayAir air = show.air();
        double y = side.maxY() + BETWEEN_PX - 10;
        String more = air.windsAloft().isEmpty() ? "" : " at the ground, other winds higher up";
        if (air.windKt() == 0) {
            inks.add(new Ink.Words("calm" + more, plan.maxX(), y, 13, false, Anchor.END, PictureStyle.TEXT));
            return;
        }
        String words = String.format(
                Locale.UK, "wind from %03.0f° at %s%s", air.windFromDeg(), measures.speed(air.windKt()), more);
        Double axisDeg = show.venue().axisBearingDeg();
        if (axisDeg == null) {
            inks.add(new Ink.Words(words, plan.maxX(), y, 13, false, Anchor.END, PictureStyle.TEXT));
            return;
        }
        inks.add(new Ink.Words(words, plan.maxX() - 46, y, 13, false, Anchor.END, PictureStyle.TEXT));
        double towardsRad = Math.toRadians(air.windFromDeg() + 180 - axisDeg);
        double ux = Math.cos(towardsRad);
        double uy = Math.sin(towardsRad);
        double midX = plan.maxX() - 20;
        double midY = y - 5;
        Point tip = new Point(midX + 18 * ux, midY + 18 * uy);
        inks.add(new Ink.Stroke(
                List.of(new Point(midX - 18 * ux, midY - 18 * uy), new Point(tip.x() - 8 * ux, tip.y() - 8 * uy)),
                PictureStyle.TEXT,
                2.5,
                0));
        inks.add(PictureView.arrowHead(tip.x(), tip.y(), ux, uy, 13, PictureStyle.TEXT));
    }

    private void foot(double bottom) {
        say(RunningSheet.HEIGHTS + " One scale in both views.", EDGE_PX, bottom - 42, 13, false, PictureStyle.SOFT);
        say(CAUTION, EDGE_PX, bottom - 18, 15, true, PictureStyle.TEXT);
    }

    private void say(String text, double x, double y, double sizePx, boolean strong, int rgb) {
        inks.add(new Ink.Words(text, x, y, sizePx, strong, Anchor.START, rgb));
    }
}
