package crowdline.console.second;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;

/** Paints whose turn it is, large, and what is said after what is being said. */
final class TurnRow extends Painted<TurnRow.Shown> {
    private static final double TURN_SHARE = 0.3;

    /** @param then empty if nobody knows */
    record Shown(Mark turn, String then) {}

    TurnRow(Appearance appearance) {
        super("Whose turn", appearance);
    }

    @Override
    protected String spoken(Shown v) {
        return v.turn().word() + ". " + v.then();
    }

    @Override
    protected void paint(Pen pen, Shown v, Box box) {
        pen.fill(box, pen.palette().sunk());
        Box inner = box.inset(pen.px(18), pen.px(8));
        pen.mark(v.turn(), TextRole.NEXT, v.then().isEmpty() ? inner : inner.left(inner.w() * TURN_SHARE), 2);
        Box then = inner.rightOf(inner.w() * TURN_SHARE + pen.px(20));
        pen.midway(
                pen.lines(v.then(), TextRole.READ, false, then, 3),
                then,
                pen.palette().text());
    }
}
