package crowdline.sheet.chart;

import crowdline.sheet.chart.DayChart.Beside;
import crowdline.sheet.chart.DayChart.Shape;
import crowdline.sheet.chart.DayChart.Share;
import crowdline.sheet.chart.DayChart.Span;
import crowdline.sheet.ink.Ink;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws the chart of a day, on a screen or on paper. */
public final class ChartPainter implements Ink.Drawn {
    /** Of the axis of how late, in its unit: two whole numbers stand at any range as long as this. */
    private static final double LEAST_LATE = 2;

    /** Of a name at the left, at most and at least. */
    private static final int LETTERS = 26;

    private static final int LEAST_LETTERS = 8;
    /** Names take no more of the width than this. */
    private static final double NAMES = 0.28;
    /** How wide a letter is, in sizes of the letters. */
    private static final double LETTER = 0.55;

    private final DayChart chart;
    private final double sizePx;
    private final Colours colours;

    /**
     * Colours as 0xRRGGBB.
     *
     * @param ground behind it
     * @param text letters, what was said in what was flown, and another day
     * @param rule lines that guide the eye
     * @param planned what was planned
     * @param flown what was flown, said and late
     */
    public record Colours(int ground, int text, int rule, int planned, int flown) {}

    /** @param sizePx of its letters */
    public ChartPainter(DayChart chart, double sizePx, Colours colours) {
        this.chart = chart;
        this.sizePx = sizePx;
        this.colours = colours;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width, double height) {
        int letters = (int) (width * NAMES / (sizePx * LETTER));
        ChartLook look = new ChartLook(sizePx, Math.max(LEAST_LETTERS, Math.min(LETTERS, letters)), colours);
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(ClockAxis.of(chart, look, width * (1 - NAMES) * 0.9));
        all.setGap(sizePx);
        all.setDomainAxisLocation(AxisLocation.TOP_OR_LEFT);
        all.add(late(look), 40);
        all.add(talk(look), 30);
        all.add(bars(look), 10 * Math.max(2, chart.bars().rows().size()));
        for (DayChart.Dots dots : List.of(chart.duties(), chart.line())) {
            if (!dots.rows().isEmpty()) {
                all.add(dots(look, dots), 10 * Math.max(1, dots.rows().size()));
            }
        }
        JFreeChart drawn = new JFreeChart(null, look.font(), all, false);
        drawn.setBackgroundPaint(look.ground());
        drawn.setAntiAlias(true);
        drawn.draw(g, new Rectangle2D.Double(x, y, width, height));
    }

    private XYPlot bars(ChartLook look) {
        Beside beside = chart.beside();
        XYIntervalSeriesCollection all = new XYIntervalSeriesCollection();
        all.addSeries(series("planned", chart.bars().planned(), -0.4, -0.1));
        all.addSeries(series("flown", chart.bars().flown(), -0.05, 0.25));
        all.addSeries(series("spoken", chart.bars().spoken(), 0.05, 0.15));
        all.addSeries(series("beside", beside == null ? List.of() : beside.flown(), 0.29, 0.42));
        XYBarRenderer bars = look.bars();
        bars.setSeriesPaint(0, look.planned());
        bars.setSeriesPaint(1, look.flown());
        bars.setSeriesPaint(2, look.ground());
        bars.setSeriesPaint(3, look.ground());
        bars.setDrawBarOutline(true);
        bars.setSeriesOutlinePaint(0, look.planned());
        bars.setSeriesOutlinePaint(1, look.flown());
        bars.setSeriesOutlinePaint(2, look.ground());
        bars.setSeriesOutlinePaint(3, look.text());
        for (int i = 0; i < 4; i++) {
            bars.setSeriesOutlineStroke(i, look.line(i == 3 ? 0.08 : 0.01));
        }
        XYPlot plot =
                look.plot(all, look.names(chart.bars().name(), chart.bars().rows()), bars);
        plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
        return plot;
    }

    private static XYIntervalSeries series(String name, List<Span> spans, double low, double high) {
        XYIntervalSeries series = new XYIntervalSeries(name);
        for (Span span : spans) {
            series.add(span.fromH(), span.fromH(), span.toH(), span.row(), span.row() + low, span.row() + high);
        }
        return series;
    }

    private XYPlot dots(ChartLook look, DayChart.Dots of) {
        XYSeriesCollection all = new XYSeriesCollection();
        XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
        double r = sizePx * 0.4;
        for (Shape shape : Shape.values()) {
            XYSeries series = new XYSeries(shape);
            of.dots().stream().filter(dot -> dot.shape() == shape).forEach(dot -> series.add(dot.atH(), dot.row()));
            int index = all.getSeriesCount();
            all.addSeries(series);
            dots.setSeriesShape(index, shape == Shape.CROSS ? cross(r) : new Ellipse2D.Double(-r, -r, 2 * r, 2 * r));
            dots.setSeriesPaint(index, shape == Shape.CROSS ? look.text() : look.flown());
            dots.setSeriesShapesFilled(index, shape != Shape.RING);
            dots.setSeriesOutlineStroke(index, look.line(0.12));
        }
        return look.plot(all, look.names(of.name(), of.rows()), dots);
    }

    private static java.awt.Shape cross(double r) {
        Area cross = new Area(new Rectangle2D.Double(-r * 1.2, -r * 0.22, r * 2.4, r * 0.44));
        cross.add(new Area(new Rectangle2D.Double(-r * 0.22, -r * 1.2, r * 0.44, r * 2.4)));
        return cross.createTransformedArea(AffineTransform.getRotateInstance(Math.PI / 4));
    }

    private XYPlot talk(ChartLook look) {
        XYIntervalSeries talk = new XYIntervalSeries("talk");
        for (Share share : chart.talk()) {
            talk.add(share.fromH(), share.fromH(), share.toH(), share.percent(), 0, share.percent());
        }
        XYIntervalSeriesCollection all = new XYIntervalSeriesCollection();
        all.addSeries(talk);
        XYBarRenderer bars = look.bars();
        bars.setSeriesPaint(0, look.flown());
        NumberAxis percent = new NumberAxis("Talk, %");
        percent.setRange(0, 100);
        percent.setTickUnit(new NumberTickUnit(50));
        XYPlot plot = look.plot(all, percent, bars);
        Beside beside = chart.beside();
        if (beside != null) {
            XYSeriesCollection steps = new XYSeriesCollection();
            XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
            // On a bar the dashes stand out by the edge that lies under them: the last of them is drawn first.
            for (String name : List.of("beside", "edge")) {
                XYSeries then = new XYSeries(name, false);
                for (Share share : beside.talk()) {
                    then.add(share.fromH(), share.percent());
                    then.add(share.toH(), share.percent());
                }
                steps.addSeries(then);
            }
            line.setSeriesPaint(0, look.text());
            line.setSeriesStroke(0, look.dashed());
            line.setSeriesPaint(1, look.ground());
            line.setSeriesStroke(1, look.line(0.3));
            plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
            line.setDrawSeriesLineAsPath(true);
            plot.setDataset(1, steps);
            plot.setRenderer(1, line);
        }
        return plot;
    }

    XYPlot late(ChartLook look) {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, true);
        lines.setDrawSeriesLineAsPath(true);
        chart.late().curves().forEach(curve -> {
            int index = add(curves, curve);
            lines.setSeriesPaint(index, look.flown());
            lines.setSeriesStroke(index, look.line(0.14));
        });
        Beside beside = chart.beside();
        if (beside != null) {
            beside.late().forEach(curve -> {
                int index = add(curves, curve);
                lines.setSeriesPaint(index, look.text());
                lines.setSeriesStroke(index, look.dashed());
                lines.setSeriesShapesFilled(index, false);
            });
        }
        double r = sizePx * 0.2;
        lines.setDefaultShape(new Ellipse2D.Double(-r, -r, 2 * r, 2 * r));
        lines.setAutoPopulateSeriesShape(false);
        NumberAxis late = new NumberAxis(chart.late().name());
        late.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        late.setAutoRangeMinimumSize(LEAST_LATE);
        XYPlot plot = look.plot(curves, late, lines);
        plot.addRangeMarker(new ValueMarker(0, look.text(), look.line(0.08)));
        return plot;
    }

    private static int add(XYSeriesCollection curves, DayChart.Curve curve) {
        int index = curves.getSeriesCount();
        XYSeries series = new XYSeries(index + " " + curve.name(), false);
        curve.points().forEach(point -> series.add(point.atH(), point.late()));
        curves.addSeries(series);
        return index;
    }
}
