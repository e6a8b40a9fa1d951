package crowdline.console.incident;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.util.List;
import java.util.stream.Collectors;

/** Paints which announcements there are, each with the digit that opens it. */
public final class ChoicePanel extends Painted<ChoicePanel.Shown> {
    /** As many as there are digits to press. */
    public static final int MOST = 9;

    /**
     * What is painted.
     *
     * @param rows at most {@link #MOST}
     * @param more what to press for more or to go back, in a sentence
     * @param without what to do if there are none; empty otherwise
     */
    public record Shown(List<Row> rows, String more, String without) {
        public Shown {
            rows = List.copyOf(rows);
        }
    }

    /**
     * An announcement.
     *
     * @param digit that opens it
     * @param state whether it can be read out, was read out, or lacks something
     */
    public record Row(int digit, String occasion, Mark state) {}

    public ChoicePanel(Appearance appearance) {
        super("Announcements", appearance);
    }

    @Override
    protected String spoken(Shown v) {
        return v.rows().stream()
                        .map(row -> row.digit() + ": " + row.occasion() + ", "
                                + row.state().word() + ".")
                        .collect(Collectors.joining(" "))
                + v.without() + " " + v.more();
    }

    @Override
    protected void paint(Pen pen, Shown v, Box box) {
        Box inner = box.inset(pen.px(28), pen.px(16));
        Box top = inner.top(pen.px(48));
        pen.midway(
                pen.line("Announcements", TextRole.NEXT, true, top),
                top,
                pen.palette().text());
        Box foot = inner.bottom(pen.px(34));
        pen.midway(
                pen.line(v.more(), TextRole.SMALL, false, foot),
                foot,
                pen.palette().text());
        Box rest = inner.belowTop(top.h() + pen.px(10)).aboveBottom(foot.h() + pen.px(10));
        if (v.rows().isEmpty()) {
            pen.atTop(
                    pen.block(List.of(v.without()), pen.strong(), pen.sizePx(TextRole.NEXT), pen.leastPx(), rest, 8),
                    rest,
                    pen.palette().text());
            return;
        }
        double each = Math.min(rest.h() / v.rows().size(), pen.px(82));
        // One size for every state, the largest at which the longest fits.
        double statePx = v.rows().stream()
                .mapToDouble(row -> statePx(pen, row, state(pen, rest.top(each))))
                .min()
                .orElseThrow();
        for (int i = 0; i < v.rows().size(); i++) {
            row(pen, v.rows().get(i), rest.belowTop(i * each).top(each), statePx);
        }
    }

    /** Where the state of a row stands. */
    private static Box state(Pen pen, Box row) {
        Box inner = row.inset(pen.px(10), pen.px(4));
        Box rest = inner.rightOf(pen.px(56));
        return rest.right(rest.w() * 0.38);
    }

    private static double statePx(Pen pen, Row row, Box state) {
        double mostPx = pen.sizePx(TextRole.READ);
        Box word = state.rightOf(pen.shapePx(row.state(), mostPx));
        return pen.block(List.of(row.state().word()), pen.strong(), mostPx, pen.leastPx(), word, 2)
                .sizePx();
    }

    private static void row(Pen pen, Row row, Box box, double statePx) {
        pen.fill(box.top(pen.px(1)), pen.palette().rule());
        Box inner = box.inset(pen.px(10), pen.px(4));
        Box digit = inner.left(pen.px(56));
        pen.midway(
                pen.line(String.valueOf(row.digit()), TextRole.NEXT, true, digit),
                digit,
                pen.palette().accent());
        Box rest = inner.rightOf(digit.w());
        Box state = state(pen, box);
        Box occasion = rest.left(rest.w() * 0.6);
        pen.midway(
                pen.block(List.of(row.occasion()), pen.strong(), pen.sizePx(TextRole.NEXT), pen.leastPx(), occasion, 2),
                occasion,
                pen.palette().text());
        pen.mark(row.state(), statePx, state, 2);
    }
}
