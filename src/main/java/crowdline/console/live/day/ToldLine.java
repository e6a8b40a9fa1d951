package crowdline.console.live.day;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.paint.TextFit;
import crowdline.console.theme.Appearance;
import java.awt.Color;
import java.util.List;

/**
 * Says for some seconds what a key did, over the foot of the place, where it moves no row and hides neither the clock nor what is
 * flown nor what to say. Never smaller than is read at two metres, and no wider than its words need; longer words take more lines. It
 * does not grow with the zoom: larger it would hide the figure that comes next.
 */
public final class ToldLine extends Painted<Mark> {
    /** Size of the words in the designed window; tuned: read at two metres in sunlight. */
    static final double SIZE_PX = 30;
    /** Never smaller in the designed window, whatever the words. */
    public static final double LEAST_PX = 28;

    private static final double GAP_PX = 20;
    private static final int MOST_LINES = 5;
    /** Room down for the words, in sizes of them: {@link #MOST_LINES} lines. */
    private static final double ROOM = 7;

    private final transient TextFit fit = new TextFit();

    private transient Appearance appearance;
    private double scale = 1;

    public ToldLine(Appearance appearance) {
        super("What the key did", appearance);
        this.appearance = appearance;
        getAccessibleContext().setAccessibleDescription("");
        setVisible(false);
    }

    @Override
    public void wear(Appearance next, double windowScale) {
        appearance = next;
        scale = windowScale;
        super.wear(next, windowScale);
    }

    /** How high it must be for its words in a room this wide. */
    public int heightIn(int widthPx) {
        return (int) Math.ceil(words(widthPx).heightPx() + GAP_PX * scale);
    }

    /** How wide it must be for its words in a room this wide. */
    public int widthIn(int widthPx) {
        TextBlock words = words(widthPx);
        double needs = words.widthPx() + 2 * GAP_PX * scale + shapePx() * 2 + 1;
        return words.lines().size() > 1 ? widthPx : (int) Math.min(widthPx, Math.ceil(needs));
    }

    /** Its words in a room this wide: as few lines as they need. */
    public TextBlock words(int widthPx) {
        Mark mark = shown();
        double wide = Math.max(1, widthPx - 2 * GAP_PX * scale - shapePx() * 2);
        return fit.fit(new TextFit.Wish(
                List.of(mark == null ? "" : mark.word()),
                appearance.theme().typeface().strong(12),
                SIZE_PX * scale,
                LEAST_PX * scale,
                wide,
                ROOM * SIZE_PX * scale,
                MOST_LINES));
    }

    private double shapePx() {
        return SIZE_PX * scale * 0.74;
    }

    @Override
    protected String spoken(Mark v) {
        return v.word();
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().chosen();
    }

    @Override
    protected void paint(Pen pen, Mark v, Box box) {
        Box inner = box.inset(pen.px(GAP_PX), 0);
        Color colour = pen.palette().onChosen();
        pen.shape(v.form(), shapePx(), inner, colour);
        pen.midway(words(getWidth()), inner.rightOf(shapePx() * 2), colour);
    }
}
