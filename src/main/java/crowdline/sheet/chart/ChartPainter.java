package crowdline.sheet.chart;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Lettering;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws the chart of a day, on a screen or on paper. */
public final class ChartPainter implements Ink.Drawn {
    /** Of a name at the left. */
    private static final int LETTERS = 26;

    private final DayChart chart;
    private final double sizePx;
    private final Colours colours;

    /**
     * Colours as 0xRRGGBB.
     *
     * @param ground behind it
     * @param text letters and what was planned
     * @param rule lines that guide the eye
     * @param flown what was flown, said and late
     */
    public record Colours(int ground, int text, int rule, int flown) {}

    /** @param sizePx of its letters */
    public ChartPainter(DayChart chart, double sizePx, Colours colours) {
        this.chart = chart;
        this.sizePx = sizePx;
        this.colours = colours;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, double width, double height) {
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(hours());
        all.setGap(sizePx);
        all.add(acts(), Math.max(2, chart.acts().size()));
        if (!chart.duties().isEmpty()) {
            all.add(duties(), Math.max(2, chart.duties().size()));
        }
        all.add(talk(), 3);
        all.add(late(), 4);
        JFreeChart drawn = new JFreeChart(null, font(), all, false);
        drawn.setBackgroundPaint(new Color(colours.ground()));
        drawn.setAntiAlias(true);
        drawn.draw(g, new Rectangle2D.Double(x, y, width, height));
    }

    private Font font() {
        return Lettering.runs("x", false).get(0).face().at(sizePx);
    }

    private NumberAxis hours() {
        NumberAxis hours = new NumberAxis();
        dress(hours);
        hours.setAutoRangeIncludesZero(false);
        double[] span = span();
        hours.setRange(span[0] - 0.02, span[1] + 0.02);
        double wide = span[1] - span[0];
        hours.setTickUnit(new NumberTickUnit(wide < 1 ? 1.0 / 6 : wide < 3 ? 0.5 : wide < 8 ? 1 : 2));
        hours.setNumberFormatOverride(new Clock());
        return hours;
    }

    /** From the first hour to the last that anything is drawn at, half an hour at least. */
    private double[] span() {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (List<DayChart.Span> spans : List.of(chart.planned(), chart.flown())) {
            for (DayChart.Span span : spans) {
                from = Math.min(from, span.fromH());
                to = Math.max(to, span.toH());
            }
        }
        for (DayChart.Share share : chart.talk()) {
            from = Math.min(from, share.fromH());
            to = Math.max(to, share.toH());
        }
        for (DayChart.Dot dot : chart.told()) {
            from = Math.min(from, dot.atH());
            to = Math.max(to, dot.atH());
        }
        return from > to ? new double[] {0, 24} : new double[] {from, Math.max(to, from + 0.5)};
    }

    private XYPlot acts() {
        XYIntervalSeries planned = new XYIntervalSeries("planned");
        XYIntervalSeries flown = new XYIntervalSeries("flown");
        for (DayChart.Span span : chart.planned()) {
            add(planned, span, -0.36, -0.04);
        }
        for (DayChart.Span span : chart.flown()) {
            add(flown, span, 0.0, 0.36);
        }
        XYIntervalSeriesCollection both = new XYIntervalSeriesCollection();
        both.addSeries(planned);
        both.addSeries(flown);
        XYBarRenderer bars = bars();
        bars.setUseYInterval(true);
        bars.setSeriesPaint(0, new Color(colours.rule()));
        bars.setSeriesPaint(1, new Color(colours.flown()));
        return plot(both, names("Acts", chart.acts()), bars);
    }

    private static void add(XYIntervalSeries series, DayChart.Span span, double low, double high) {
        series.add(span.fromH(), span.fromH(), span.toH(), span.row(), span.row() + low, span.row() + high);
    }

    private XYBarRenderer bars() {
        XYBarRenderer bars = new XYBarRenderer();
        bars.setBarPainter(new StandardXYBarPainter());
        bars.setShadowVisible(false);
        return bars;
    }

    private XYPlot duties() {
        XYSeries said = new XYSeries("said");
        XYSeries shown = new XYSeries("shown");
        chart.told().forEach(dot -> (dot.said() ? said : shown).add(dot.atH(), dot.row()));
        XYSeriesCollection both = new XYSeriesCollection();
        both.addSeries(said);
        both.addSeries(shown);
        XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
        double r = sizePx * 0.4;
        for (int i = 0; i < 2; i++) {
            dots.setSeriesShape(i, new Ellipse2D.Double(-r, -r, 2 * r, 2 * r));
            dots.setSeriesPaint(i, new Color(colours.flown()));
            dots.setSeriesShapesFilled(i, i == 0);
        }
        return plot(both, names("Duties", chart.duties()), dots);
    }

    private XYPlot talk() {
        XYIntervalSeries talk = new XYIntervalSeries("talk");
        for (DayChart.Share share : chart.talk()) {
            talk.add(share.fromH(), share.fromH(), share.toH(), share.percent(), 0, share.percent());
        }
        XYIntervalSeriesCollection all = new XYIntervalSeriesCollection();
        all.addSeries(talk);
        XYBarRenderer bars = bars();
        bars.setUseYInterval(true);
        bars.setSeriesPaint(0, new Color(colours.flown()));
        NumberAxis percent = new NumberAxis("Talk, %");
        percent.setRange(0, 100);
        percent.setTickUnit(new NumberTickUnit(50));
        return plot(all, percent, bars);
    }

    private XYPlot late() {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, true);
        double r = sizePx * 0.15;
        for (DayChart.Curve curve : chart.late()) {
            XYSeries series = new XYSeries(curves.getSeriesCount() + " " + curve.name(), false);
            curve.points().forEach(point -> series.add(point.atH(), point.minutes()));
            int index = curves.getSeriesCount();
            curves.addSeries(series);
            lines.setSeriesPaint(index, new Color(colours.flown()));
            lines.setSeriesStroke(index, new BasicStroke((float) (sizePx * 0.12)));
            lines.setSeriesShape(index, new Ellipse2D.Double(-r, -r, 2 * r, 2 * r));
        }
        NumberAxis minutes = new NumberAxis("Late, min");
        minutes.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        XYPlot plot = plot(curves, minutes, lines);
        plot.addRangeMarker(new ValueMarker(0, new Color(colours.text()), new BasicStroke((float) (sizePx * 0.08))));
        return plot;
    }

    private SymbolAxis names(String label, List<String> names) {
        SymbolAxis axis = new SymbolAxis(
                label,
                names.stream()
                        .map(name -> name.length() <= LETTERS ? name : name.substring(0, LETTERS - 1) + "…")
                        .toArray(String[]::new));
        axis.setGridBandsVisible(false);
        axis.setInverted(true);
        axis.setRange(-0.5, Math.max(0.5, names.size() - 0.5));
        return axis;
    }

    private XYPlot plot(XYDataset data, NumberAxis range, XYItemRenderer renderer) {
        dress(range);
        XYPlot plot = new XYPlot(data, null, range, renderer);
        plot.setBackgroundPaint(new Color(colours.ground()));
        plot.setDomainGridlinePaint(new Color(colours.rule()));
        plot.setRangeGridlinePaint(new Color(colours.rule()));
        plot.setOutlinePaint(new Color(colours.rule()));
        return plot;
    }

    private void dress(ValueAxis axis) {
        axis.setLabelFont(font());
        axis.setTickLabelFont(font());
        axis.setLabelPaint(new Color(colours.text()));
        axis.setTickLabelPaint(new Color(colours.text()));
        axis.setAxisLinePaint(new Color(colours.text()));
    }

    /** Hours of the day as a clock has them. */
    private static final class Clock extends NumberFormat {
        private static final long serialVersionUID = 1;

        @Override
        public StringBuffer format(double hours, StringBuffer to, FieldPosition at) {
            long minutes = Math.floorMod(Math.round(hours * 60), 24 * 60L);
            return to.append(String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60));
        }

        @Override
        public StringBuffer format(long hours, StringBuffer to, FieldPosition at) {
            return format((double) hours, to, at);
        }

        @Override
        public Number parse(String text, ParsePosition at) {
            throw new UnsupportedOperationException("nobody types into a chart");
        }
    }
}
