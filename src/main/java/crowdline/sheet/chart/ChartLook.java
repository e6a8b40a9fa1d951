package crowdline.sheet.chart;

import crowdline.sheet.ink.Lettering;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.data.xy.XYDataset;

/**
 * How the parts of a chart look.
 *
 * @param sizePx of the letters
 * @param letters the most a name at the left may have
 */
record ChartLook(double sizePx, int letters, ChartPainter.Colours colours) {
    Font font() {
        return Lettering.runs("x", false).get(0).face().at(sizePx);
    }

    Color ground() {
        return new Color(colours.ground());
    }

    Color text() {
        return new Color(colours.text());
    }

    Color planned() {
        return new Color(colours.planned());
    }

    Color flown() {
        return new Color(colours.flown());
    }

    /** A line so many sizes of the letters thick. */
    BasicStroke line(double sizes) {
        return new BasicStroke((float) (sizePx * sizes));
    }

    /** The line of another day. */
    BasicStroke dashed() {
        float dash = (float) (sizePx * 0.5);
        return new BasicStroke(
                (float) (sizePx * 0.1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash}, 0);
    }

    XYBarRenderer bars() {
        XYBarRenderer bars = new XYBarRenderer();
        bars.setBarPainter(new StandardXYBarPainter());
        bars.setShadowVisible(false);
        bars.setUseYInterval(true);
        return bars;
    }

    SymbolAxis names(String label, List<String> names) {
        SymbolAxis axis = new SymbolAxis(
                label,
                names.stream()
                        .map(name -> name.length() <= letters ? name : name.substring(0, letters - 1) + "…")
                        .toArray(String[]::new));
        axis.setGridBandsVisible(false);
        axis.setInverted(true);
        axis.setRange(-0.5, Math.max(0.5, names.size() - 0.5));
        return axis;
    }

    XYPlot plot(XYDataset data, NumberAxis range, XYItemRenderer renderer) {
        dress(range);
        XYPlot plot = new XYPlot(data, null, range, renderer);
        Color rule = new Color(colours.rule());
        plot.setBackgroundPaint(ground());
        plot.setDomainGridlinePaint(rule);
        plot.setRangeGridlinePaint(rule);
        plot.setOutlinePaint(rule);
        return plot;
    }

    void dress(ValueAxis axis) {
        axis.setLabelFont(font());
        axis.setTickLabelFont(font());
        axis.setLabelPaint(text());
        axis.setTickLabelPaint(text());
        axis.setAxisLinePaint(text());
    }
}
