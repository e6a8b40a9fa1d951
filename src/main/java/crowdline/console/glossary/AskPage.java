package crowdline.console.glossary;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;
import java.util.List;

/** Paints a question about what was seen with its answers, or what it may have been. */
final class AskPage extends Painted<AskPage.View> {
    /**
     * What stands there.
     *
     * @param question the question, or that it was found
     * @param lines answers or figures, each under the digit of its place, from 1
     * @param left how many figures it may still be, in words
     * @param keys what the keys do
     */
    record View(String question, List<Line> lines, String left, String keys) {
        View {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line under its digit.
     *
     * @param more what stands smaller beside it; may be empty
     */
    record Line(String words, String more) {}

    private static final int MOST = 9;
    /** Lines that have a key. */
    private static final int KEYS = 6;

    AskPage(Appearance appearance) {
        super("What is that?", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(View v) {
        StringBuilder said = new StringBuilder(v.question()).append(' ');
        for (int i = 0; i < v.lines().size(); i++) {
            said.append(i + 1).append(": ").append(v.lines().get(i).words()).append(". ");
        }
        return said + v.left();
    }

    @Override
    protected void paint(Pen pen, View v, Box box) {
        Box inner = box.inset(pen.px(28), pen.px(20));
        Box top = inner.top(pen.sizePx(TextRole.NEXT) * 1.4);
        double leftPx = pen.widthPx(v.left(), false, pen.sizePx(TextRole.SMALL)) + pen.px(2);
        Box left = top.right(Math.min(leftPx, inner.w() * 0.4));
        pen.midway(
                pen.line(v.question(), TextRole.NEXT, true, top.left(inner.w() - left.w() - pen.px(24))),
                top,
                pen.palette().text());
        pen.atRight(
                pen.lines(v.left(), TextRole.SMALL, false, left, 3),
                left,
                pen.palette().soft());
        double footPx = pen.sizePx(TextRole.SMALL) * 2.4;
        Box rows = inner.belowTop(top.h() + pen.px(10)).aboveBottom(footPx);
        double each = rows.h() / Math.max(6, Math.min(MOST, v.lines().size()));
        for (int i = 0; i < Math.min(MOST, v.lines().size()); i++) {
            Box row = rows.belowTop(i * each).top(each);
            Box digit = row.left(pen.sizePx(TextRole.READ) * 1.4);
            if (i < KEYS) {
                pen.midway(
                        pen.line(String.valueOf(i + 1), TextRole.READ, true, digit),
                        digit,
                        pen.palette().accent());
            }
            Box words = row.rightOf(digit.w());
            Line line = v.lines().get(i);
            if (line.more().isEmpty()) {
                pen.midway(
                        pen.line(line.words(), TextRole.READ, false, words),
                        words,
                        pen.palette().text());
            } else {
                Box name = words.left(words.w() * 0.36);
                Box more = words.right(words.w() * 0.62);
                pen.midway(
                        pen.lines(line.words(), TextRole.READ, true, name, 2),
                        name,
                        pen.palette().text());
                pen.midway(
                        pen.lines(line.more(), TextRole.SMALL, false, more, 2),
                        more,
                        pen.palette().text());
            }
        }
        Box foot = inner.bottom(footPx);
        pen.midway(
                pen.lines(v.keys(), TextRole.SMALL, false, foot, 2),
                foot,
                pen.palette().soft());
    }
}
