package crowdline.console.walk;

import crowdline.console.paint.Box;
import crowdline.console.paint.LabelledCells;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.walk.WalkView.Top;

/** Paints the line along the top: which act, from which times, how fast, where in it. */
final class WalkStrip extends Painted<Top> {
    /** Shares of the width; tuned to the longest words of each. */
    private static final double[] SHARES = {0.3, 0.13, 0.22, 0.15, 0.07, 0.13};

    WalkStrip(Appearance appearance) {
        super("Act and time", appearance);
    }

    @Override
    protected String spoken(Top v) {
        return String.join(", ", v.act(), v.variant(), v.times(), v.state().word(), v.speed(), v.clock());
    }

    @Override
    protected void paint(Pen pen, Top v, Box box) {
        new LabelledCells(pen, box, SHARES)
                .name(v.act())
                .words("Variant", v.variant())
                .words("Times from", v.times())
                .mark("State", v.state())
                .words("Speed", v.speed())
                .words("Time in the act", v.clock())
                .paint();
    }
}
