package crowdline.console.prepare;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.path.ActPainter;
import crowdline.console.theme.Appearance;
import crowdline.sight.SideView;
import java.awt.Color;

/** The act's path with the chosen figure's part of it drawn strongly. */
final class PathPicture extends Painted<SideView> {
    PathPicture(Appearance appearance) {
        super("The act seen from the crowd and from above", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(SideView shown) {
        return "The predicted path; the chosen figure is number " + (shown.current() + 1);
    }

    @Override
    protected void paint(Pen pen, SideView shown, Box box) {
        ActPainter.whole(pen, shown, box.inset(pen.px(10), pen.px(8)));
    }
}
