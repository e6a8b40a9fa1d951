package crowdline.console.prepare.day;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Locale;
import java.util.Optional;

/** The crowd line on a compass, with the crowd behind it: north is up. */
public final class CompassPicture extends Painted<Optional<Double>> {
    private static final String[] WINDS = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    CompassPicture(Appearance appearance) {
        super("The crowd line on a compass", appearance);
        show(Optional.empty());
    }

    /** Which way the crowd looks, if the line is known: right along the line is to that bearing. */
    public static String words(Optional<Double> bearingDeg) {
        return bearingDeg
                .map(right -> {
                    double ahead = (right + 270) % 360;
                    return String.format(
                            Locale.UK,
                            "The crowd looks %s, to %.0f°; its right is to %.0f°",
                            WINDS[(int) Math.round(ahead / 45) % WINDS.length],
                            ahead,
                            right);
                })
                .orElse("Which way the crowd looks is not known yet");
    }

    @Override
    protected String spoken(Optional<Double> shown) {
        return words(shown);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected void paint(Pen pen, Optional<Double> shown, Box box) {
        Box words = box.inset(pen.px(8), pen.px(4)).bottom(pen.px(38));
        pen.atTop(
                pen.lines(words(shown), TextRole.LABEL, false, words, 2),
                words,
                pen.palette().text());
        Box face = box.aboveBottom(pen.px(44)).inset(pen.px(8), pen.px(8));
        double radius = Math.min(face.w(), face.h()) / 2 - pen.px(14);
        double x = face.x() + face.w() / 2;
        double y = face.y() + face.h() / 2;
        if (radius <= 0) {
            return;
        }
        pen.surface().setColor(pen.palette().rule());
        pen.surface().setStroke(new BasicStroke((float) pen.px(1.5)));
        pen.surface().draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
        for (int i = 0; i < 4; i++) {
            double turn = Math.toRadians(90 * i);
            double at = radius + pen.px(8);
            Box letter = new Box(
                    x + at * Math.sin(turn) - pen.px(6), y - at * Math.cos(turn) - pen.px(8), pen.px(14), pen.px(16));
            pen.midway(
                    pen.line(String.valueOf("NESW".charAt(i)), TextRole.LABEL, i == 0, letter),
                    letter,
                    pen.palette().soft());
        }
        shown.ifPresent(bearing -> line(pen, x, y, radius * 0.86, Math.toRadians(bearing)));
    }

    /** The line with an arrow to the right, and the crowd as a block on its side of it. */
    private static void line(Pen pen, double x, double y, double radius, double right) {
        double rx = Math.sin(right);
        double ry = -Math.cos(right);
        pen.surface().setColor(pen.palette().pathNow());
        pen.surface().setStroke(new BasicStroke((float) pen.px(3), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        double ex = x + rx * radius;
        double ey = y + ry * radius;
        pen.surface().draw(new Line2D.Double(x - rx * radius, y - ry * radius, ex, ey));
        double head = pen.px(9);
        pen.surface().draw(new Line2D.Double(ex, ey, ex - head * (rx - 0.6 * ry), ey - head * (ry + 0.6 * rx)));
        pen.surface().draw(new Line2D.Double(ex, ey, ex - head * (rx + 0.6 * ry), ey - head * (ry - 0.6 * rx)));
        // Behind the crowd is to the right of its right.
        double bx = -ry;
        double by = rx;
        double off = radius * 0.34;
        pen.surface().setColor(pen.palette().soft());
        pen.surface().setStroke(new BasicStroke((float) pen.px(7), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        pen.surface()
                .draw(new Line2D.Double(
                        x + bx * off - rx * radius * 0.5,
                        y + by * off - ry * radius * 0.5,
                        x + bx * off + rx * radius * 0.5,
                        y + by * off + ry * radius * 0.5));
        Box word = new Box(x + bx * off * 2 - pen.px(24), y + by * off * 2 - pen.px(8), pen.px(60), pen.px(16));
        pen.midway(
                pen.line("crowd", TextRole.LABEL, false, word),
                word,
                pen.palette().soft());
    }
}
