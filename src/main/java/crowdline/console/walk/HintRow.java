package crowdline.console.walk;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;

/** Paints what the keys do now, or what the last one did. */
final class HintRow extends Painted<String> {
    HintRow(Appearance appearance) {
        super("What to do", appearance);
    }

    @Override
    protected String spoken(String shown) {
        return shown;
    }

    @Override
    protected void paint(Pen pen, String shown, Box box) {
        Box inner = box.inset(pen.px(20), pen.px(4));
        pen.midway(
                pen.lines(shown, TextRole.SMALL, false, inner, 2),
                inner,
                pen.palette().text());
    }
}
