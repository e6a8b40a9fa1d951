package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextFit;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.aircraft.Outline;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.FigureAlone;
import crowdline.storage.show.CatalogueFile;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a picture of 1920 by 1080 takes, of a figure whole and at a moment; without a graphics card. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SkyBench {
    private static final int WIDE = 1920;
    private static final int TALL = 1080;

    @Param({"loop", "triple roll", "flat spin", "formation loop"})
    public String figure = "loop";

    @Param({"MONOPLANE", "BIPLANE"})
    public String outline = "MONOPLANE";

    private final BufferedImage surface = new BufferedImage(WIDE, TALL, BufferedImage.TYPE_INT_RGB);
    private final TextFit fit = new TextFit();
    private SkyView whole = SkyView.NONE;
    private double atS;

    @Setup
    public void make() {
        LookAndFeel.loadType();
        Catalogue catalogue = CatalogueFile.shipped();
        whole = SkyView.whole(
                new FigureAlone(catalogue)
                        .fly(catalogue.find(figure).orElseThrow())
                        .flown(),
                Outline.valueOf(outline));
    }

    @Benchmark
    public int moment() {
        atS = atS + 1.0 / 60 > whole.flown().toS() ? whole.flown().fromS() : atS + 1.0 / 60;
        return paint(whole.at(atS));
    }

    @Benchmark
    public int whole() {
        return paint(whole);
    }

    private int paint(SkyView view) {
        Graphics2D g = surface.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Appearance appearance = new Appearance(Themes.DAY, Zoom.NONE);
        Pen pen = new Pen(g, appearance, 1, fit);
        Box box = new Box(0, 0, WIDE, TALL);
        pen.fill(box, appearance.palette().stage());
        SkyPainter.paint(pen, view, box);
        g.dispose();
        return surface.getRGB(WIDE / 2, TALL / 2);
    }
}
