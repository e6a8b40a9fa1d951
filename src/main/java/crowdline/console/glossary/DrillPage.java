package crowdline.console.glossary;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** Paints a question of the drill: what is asked, the answers with their keys, and what the glossary says. */
final class DrillPage extends Painted<Drill.View> {
    DrillPage(Appearance appearance) {
        super("What is asked", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(Drill.View v) {
        StringBuilder said = new StringBuilder(v.asks()).append(" ");
        for (int i = 0; i < v.choices().size(); i++) {
            said.append(i + 1).append(": ").append(v.choices().get(i)).append(". ");
        }
        Mark verdict = v.verdict();
        return (verdict == null ? said.toString() : verdict.word() + ". ") + v.text() + " " + v.score();
    }

    @Override
    protected void paint(Pen pen, Drill.View v, Box box) {
        Box inner = box.inset(pen.px(28), pen.px(14));
        Box top = inner.top(inner.h() * 0.2);
        // The score in one line, if that leaves the question its half.
        double scorePx = pen.widthPx(v.score(), false, pen.sizePx(TextRole.SMALL)) + pen.px(2);
        Box score = top.right(Math.min(scorePx, inner.w() * 0.45));
        Box question = top.left(inner.w() - score.w() - pen.px(24));
        pen.midway(
                pen.lines(v.asks(), TextRole.NEXT, true, question, 2),
                question,
                pen.palette().text());
        pen.atRight(
                pen.lines(v.score(), TextRole.SMALL, false, score, 2),
                score,
                pen.palette().soft());
        Box foot = inner.bottom(inner.h() * 0.14);
        Mark verdict = v.verdict();
        if (verdict != null) {
            pen.mark(verdict, TextRole.VALUE, foot.left(foot.w() * 0.62));
        }
        Box how = verdict == null ? foot : foot.right(foot.w() * 0.36);
        pen.atRight(
                pen.lines(v.keys(), TextRole.SMALL, false, how, 2),
                how,
                pen.palette().soft());
        Box middle = inner.belowTop(top.h()).aboveBottom(foot.h());
        double each = middle.h() * (v.text().isEmpty() ? 1 : 0.62) / Drill.CHOICES;
        for (int i = 0; i < v.choices().size(); i++) {
            Box row = middle.belowTop(i * each).top(each);
            boolean right = i == v.rightIndex();
            pen.midway(
                    pen.line(
                            i + 1 + ": " + v.choices().get(i) + (right ? " (this one)" : ""),
                            TextRole.READ,
                            right,
                            row),
                    row,
                    right ? pen.palette().good() : pen.palette().text());
        }
        if (!v.text().isEmpty()) {
            Box said = middle.belowTop(each * v.choices().size());
            TextBlock words = pen.lines(v.text(), TextRole.SMALL, false, said, 8);
            pen.midway(words, said, pen.palette().text());
        }
    }
}
