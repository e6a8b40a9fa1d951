package crowdline.console.pedals;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Dimension;

/** A mark whose words may need two lines. */
final class SaidLine extends Painted<Mark> {
    private final TextRole role;

    SaidLine(String name, Appearance appearance, TextRole role, int heightPx) {
        super(name, appearance);
        this.role = role;
        wear(appearance, 1);
        setPreferredSize(new Dimension(10, appearance.px(heightPx)));
    }

    @Override
    protected String spoken(Mark shown) {
        return shown.word();
    }

    @Override
    protected void paint(Pen pen, Mark shown, Box box) {
        pen.mark(shown, role, box.inset(pen.px(2), 0), 2);
    }
}
