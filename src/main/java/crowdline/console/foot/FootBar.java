package crowdline.console.foot;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.Caution;
import java.awt.Dimension;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The line along the bottom: messages at the left, where a dialog would be elsewhere, and the caution that is always
 * there at the right. Its height never changes, so no message moves a row.
 */
public final class FootBar extends Painted<FootBar.Foot> {
    static final String CAUTION = Caution.ON_SCREEN;
    static final String HINT = "F1 shows the keys";

    /**
     * What the line shows at its left.
     *
     * @param marks messages, the most pressing first
     * @param hint what stands there when there are none
     * @param pace whose pace the times are for, beside a message too; empty for the default's
     */
    record Foot(List<Mark> marks, String hint, String pace) {
        Foot {
            marks = List.copyOf(marks);
        }
    }

    /** What the line says when there is nothing else: whose pace the times are for. */
    static String hint(String speaker) {
        return HINT + ". " + timesFor(speaker);
    }

    private static String timesFor(String speaker) {
        return "Times at " + (speaker.isEmpty() ? "the default pace" : speaker + "'s pace");
    }

    private static final int HEIGHT_PX = 34;

    FootBar(Appearance appearance) {
        super("Messages", appearance);
        show(new Foot(List.of(), hint(""), ""));
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
    protected String spoken(Foot shown) {
        return shown.marks().stream().map(Mark::word).collect(Collectors.joining(". ", "", ". "))
                + (shown.marks().isEmpty()
                        ? shown.hint() + ". "
                        : shown.pace().isEmpty() ? "" : timesFor(shown.pace()) + ". ")
                + CAUTION;
    }

    @Override
    protected void paint(Pen pen, Foot shown, Box box) {
        pen.fill(box.top(1), pen.palette().rule());
        Box inner = box.inset(20, 3);
        double cautionWidth = inner.w() * 0.47;
        Box right = inner.right(cautionWidth);
        pen.atRight(
                pen.lineOrLines(CAUTION, TextRole.LABEL, right, 2, 0.85),
                right,
                pen.palette().soft());
        Box left = inner.leftOf(cautionWidth + 16);
        if (shown.marks().isEmpty()) {
            pen.midway(
                    pen.line(shown.hint(), TextRole.LABEL, false, left),
                    left,
                    pen.palette().soft());
        } else {
            Mark mark = shown.marks().get(0);
            String more = shown.marks().size() > 1
                    ? mark.word() + "  (and " + (shown.marks().size() - 1) + " more)"
                    : mark.word();
            double paceWidth = shown.pace().isEmpty() ? 0 : left.w() * 0.3;
            pen.mark(new Mark(mark.form(), mark.tone(), more), TextRole.SMALL, left.leftOf(paceWidth), 2);
            if (paceWidth > 0) {
                Box pace = left.right(paceWidth);
                pen.atRight(
                        pen.lines(timesFor(shown.pace()), TextRole.LABEL, false, pace, 2),
                        pace,
                        pen.palette().soft());
            }
        }
    }
}
