package crowdline.console.prepare.figure;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.prepare.glance.PrepareView.Curves;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.measure.Measures;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Speed, height and load over a figure, one under the other, each from its least to its most; what hardly changes looks flat. */
final class CurvePicture extends Painted<Curves> {
    /** What changes by less fills less than the whole height of its picture, or three knots would look like a dive. */
    private static final double LEAST_KT = 40;

    private static final double LEAST_FT = 300;
    private static final double LEAST_G = 2;

    private transient Measures measures;

    CurvePicture(Appearance appearance) {
        super("Speed, height and load over the figure", appearance);
        measures = appearance.measures();
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    public void wear(Appearance next, double windowScale) {
        measures = next.measures();
        super.wear(next, windowScale);
    }

    @Override
    protected String spoken(Curves shown) {
        if (shown.seconds().isEmpty()) {
            return "Only the time of this figure is known";
        }
        return measures.told("Speed " + range(shown.kt(), "%.0f") + " kt, height " + range(shown.ft(), "%,.0f")
                + " ft, load " + range(shown.g(), "%+.1f") + " g");
    }

    private static String range(List<Double> values, String format) {
        String from = String.format(Locale.UK, format, Collections.min(values));
        String to = String.format(Locale.UK, format, Collections.max(values));
        return (from.equals(to) ? from : from + " to " + to)
                .replace("-0.0", "+0.0")
                .replace('-', '−');
    }

    @Override
    protected void paint(Pen pen, Curves shown, Box box) {
        Box inner = box.inset(pen.px(10), pen.px(6));
        if (shown.seconds().size() < 2) {
            Box line = inner.top(pen.px(22));
            pen.midway(
                    pen.line("Only its time is known, so there is no curve", TextRole.LABEL, false, line),
                    line,
                    pen.palette().soft());
            return;
        }
        double each = inner.h() / 3;
        curve(pen, "kt", shown.kt(), "%.0f", LEAST_KT, shown, inner.top(each));
        curve(
                pen,
                "ft",
                shown.ft(),
                "%,.0f",
                LEAST_FT,
                shown,
                inner.belowTop(each).top(each));
        curve(pen, "g", shown.g(), "%+.1f", LEAST_G, shown, inner.belowTop(2 * each));
    }

    /** How far a curve goes up and down its picture, from 0 to 1, where it fills no more of it than it changes. */
    static double share(List<Double> values, double least) {
        double spread = Collections.max(values) - Collections.min(values);
        return Math.min(1, spread / least);
    }

    private static void curve(
            Pen pen, String unit, List<Double> values, String format, double leastSpread, Curves all, Box box) {
        Box words = box.left(pen.px(112));
        pen.midway(
                pen.line(
                        pen.appearance().measures().told(range(values, format) + " " + unit),
                        TextRole.LABEL,
                        false,
                        words),
                words,
                pen.palette().text());
        Box plot = box.rightOf(pen.px(118)).inset(0, pen.px(4));
        double least = Collections.min(values);
        double spread = Math.max(Collections.max(values) - least, 1e-9) / Math.max(share(values, leastSpread), 1e-9);
        double endS = all.seconds().get(all.seconds().size() - 1);
        Path2D path = new Path2D.Double();
        for (int i = 0; i < values.size(); i++) {
            double x = plot.x() + plot.w() * all.seconds().get(i) / Math.max(endS, 1e-9);
            double y = plot.maxY() - plot.h() * (values.get(i) - least) / spread;
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        pen.fill(
                new Box(plot.x(), plot.maxY(), plot.w(), pen.px(1)),
                pen.palette().rule());
        Stroke before = pen.surface().getStroke();
        pen.surface().setColor(pen.palette().pathNow());
        pen.surface().setStroke(new BasicStroke((float) pen.px(2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.surface().draw(path);
        pen.surface().setStroke(before);
    }
}
