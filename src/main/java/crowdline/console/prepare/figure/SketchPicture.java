package crowdline.console.prepare.figure;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.path.SkyPainter;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** How a figure that is only timed usually looks. */
final class SketchPicture extends Painted<SkyView> {
    private static final String CAPTION = "a sketch of it; only its time is known";

    SketchPicture(Appearance appearance) {
        super("A sketch of the figure", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(SkyView shown) {
        return shown.isEmpty() ? "No sketch" : "A sketch of the figure; only its time is known";
    }

    @Override
    protected void paint(Pen pen, SkyView shown, Box box) {
        if (shown.isEmpty()) {
            return;
        }
        Box inner = box.inset(pen.px(10), pen.px(6));
        Box head = inner.top(pen.px(22));
        pen.midway(
                pen.line(CAPTION, TextRole.LABEL, false, head),
                head,
                pen.palette().soft());
        SkyPainter.paint(pen, shown, inner.belowTop(head.h()));
    }
}
