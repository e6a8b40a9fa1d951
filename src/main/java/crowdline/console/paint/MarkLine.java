package crowdline.console.paint;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Dimension;

/** A state, as a shape and a word, on a line of its own. */
public final class MarkLine extends Painted<Mark> {
    private static final double HEIGHT_PX = 24;

    public MarkLine(String name, Appearance appearance) {
        super(name, appearance);
        dress(appearance);
    }

    /** Takes another look. */
    public void dress(Appearance appearance) {
        setPreferredSize(new Dimension(10, appearance.px(HEIGHT_PX)));
        wear(appearance, 1);
    }

    @Override
    protected String spoken(Mark shown) {
        return shown.word();
    }

    @Override
    protected void paint(Pen pen, Mark shown, Box box) {
        pen.mark(shown, TextRole.BODY, box);
    }
}
