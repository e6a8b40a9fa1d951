package crowdline.console;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Dimension;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The line along the bottom: messages at the left, where a dialog would be elsewhere, and the caution that is always
 * there at the right. Its height never changes, so no message moves a row.
 */
final class FootBar extends Painted<List<Mark>> {
    static final String CAUTION =
            "Predictions are for commentary only; the display director, local rules and the pilot decide.";
    private static final int HEIGHT_PX = 34;

    FootBar(Appearance appearance) {
        super("Messages", appearance);
        show(List.of());
        dress(appearance);
    }

    void dress(Appearance appearance) {
        // The line grows less than the words, which shrink to fit: the places need the room more.
        double grown = 1 + (appearance.zoom().factor() - 1) / 2;
        setPreferredSize(new Dimension(10, (int) Math.round(HEIGHT_PX * grown)));
        wear(appearance, 1);
        revalidate();
    }

    @Override
    protected String spoken(List<Mark> shown) {
        return shown.stream().map(Mark::word).collect(Collectors.joining(". ", "", ". ")) + CAUTION;
    }

    @Override
    protected void paint(Pen pen, List<Mark> shown, Box box) {
        pen.fill(box.top(1), pen.palette().rule());
        Box inner = box.inset(20, 3);
        double cautionWidth = inner.w() * 0.47;
        Box right = inner.right(cautionWidth);
        pen.atRight(
                pen.lines(CAUTION, TextRole.LABEL, false, right, 2),
                right,
                pen.palette().soft());
        Box left = inner.leftOf(cautionWidth + 16);
        if (shown.isEmpty()) {
            pen.midway(
                    pen.line("F1 shows the keys", TextRole.LABEL, false, left),
                    left,
                    pen.palette().soft());
        } else {
            Mark mark = shown.get(0);
            String more = shown.size() > 1 ? mark.word() + "  (and " + (shown.size() - 1) + " more)" : mark.word();
            pen.mark(new Mark(mark.form(), mark.tone(), more), TextRole.SMALL, left);
        }
    }
}
