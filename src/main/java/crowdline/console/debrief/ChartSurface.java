package crowdline.console.debrief;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Palette;
import crowdline.console.theme.TextRole;
import crowdline.sheet.chart.ChartPainter;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.Scrollable;
import org.jspecify.annotations.Nullable;

/** A chart on the screen, as wide as there is room and never so low that its rows run into each other. */
final class ChartSurface extends Painted<ChartView> implements Scrollable {
    private transient Appearance worn;

    ChartSurface(Appearance appearance) {
        super("Chart", appearance);
        worn = appearance;
        setFocusable(true);
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(@Nullable FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(@Nullable FocusEvent e) {
                repaint();
            }
        });
    }

    @Override
    public void wear(Appearance next, double windowScale) {
        worn = next;
        super.wear(next, windowScale);
        revalidate();
    }

    @Override
    public void show(ChartView next) {
        super.show(next);
        revalidate();
    }

    @Override
    protected String spoken(ChartView shown) {
        return shown.title() + ". " + String.join(" ", shown.words());
    }

    @Override
    protected void paint(Pen pen, ChartView shown, Box box) {
        Palette palette = pen.palette();
        double edge = pen.px(4);
        new ChartPainter(
                        shown.chart(),
                        pen.sizePx(TextRole.LABEL),
                        new ChartPainter.Colours(
                                rgb(palette.ground()),
                                rgb(palette.text()),
                                rgb(palette.rule()),
                                rgb(palette.past()),
                                rgb(palette.accent())))
                .paint(pen.surface(), box.x() + edge, box.y() + edge, box.w() - 2 * edge, box.h() - 2 * edge);
        if (isFocusOwner()) {
            pen.hollow(box, pen.px(2), palette.accent());
        }
    }

    private static int rgb(Color colour) {
        return colour.getRGB() & 0xFFFFFF;
    }

    @Override
    public Dimension getPreferredSize() {
        ChartView shown = shown();
        double lines = shown == null ? 1 : shown.chart().lines();
        return new Dimension(1, (int) Math.ceil(lines * worn.sizePx(TextRole.LABEL, 1)));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return worn.px(60);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(worn.px(60), visible.height - worn.px(60));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
}
