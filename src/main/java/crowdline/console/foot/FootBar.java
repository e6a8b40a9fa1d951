package crowdline.console.foot;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
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
    private static final int MOST_LINES = 2;
    private static final Shares USUAL = new Shares(0.47, 0.3);
    /** What is wrong and what to do about it comes first; the caution stays, in two lines. Tuned by eye. */
    private static final Shares LONG_MESSAGE = new Shares(0.29, 0.14);

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
        if (shown.marks().isEmpty()) {
            caution(pen, inner.right(inner.w() * USUAL.caution()));
            Box left = USUAL.left(inner);
            pen.midway(
                    pen.line(shown.hint(), TextRole.LABEL, false, left),
                    left,
                    pen.palette().soft());
            return;
        }
        Mark first = shown.marks().get(0);
        String more = shown.marks().size() > 1 ? "  (and " + (shown.marks().size() - 1) + " more)" : "";
        Mark mark = new Mark(first.form(), first.tone(), first.word() + more);
        boolean withPace = !shown.pace().isEmpty();
        Shares shares = isEasilyRead(pen, mark, USUAL.message(inner, withPace)) ? USUAL : LONG_MESSAGE;
        caution(pen, inner.right(inner.w() * shares.caution()));
        pen.mark(mark, TextRole.SMALL, shares.message(inner, withPace), MOST_LINES);
        if (withPace) {
            Box left = shares.left(inner);
            Box pace = left.right(left.w() * shares.pace());
            pen.atRight(
                    pen.lines(timesFor(shown.pace()), TextRole.LABEL, false, pace, MOST_LINES),
                    pace,
                    pen.palette().soft());
        }
    }

    private static void caution(Pen pen, Box box) {
        pen.atRight(
                pen.lineOrLines(CAUTION, TextRole.LABEL, box, MOST_LINES, 0.85),
                box,
                pen.palette().soft());
    }

    private static boolean isEasilyRead(Pen pen, Mark mark, Box box) {
        TextBlock words = pen.lines(mark.word(), TextRole.SMALL, true, box, MOST_LINES);
        return words.whole() && words.sizePx() >= pen.sizePx(TextRole.LABEL);
    }

    /**
     * How the line is shared out.
     *
     * @param caution of the line
     * @param pace of what the caution leaves, where it is said whose pace the times are for
     */
    private record Shares(double caution, double pace) {
        Box left(Box inner) {
            return inner.leftOf(inner.w() * caution + 16);
        }

        Box message(Box inner, boolean withPace) {
            Box left = left(inner);
            return withPace ? left.leftOf(left.w() * pace + 8) : left;
        }
    }
}
