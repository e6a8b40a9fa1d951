package crowdline.console.glossary;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.path.SkyPainter;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.aircraft.Outline;
import java.awt.Color;

/** Paints a question of the drill: the drawing, and four names with their keys. */
final class DrillPage extends Painted<Drill.View> {
    DrillPage(Appearance appearance) {
        super("Which figure is this?", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(Drill.View v) {
        StringBuilder said = new StringBuilder("Which figure is this? ");
        for (int i = 0; i < v.names().size(); i++) {
            said.append(i + 1).append(": ").append(v.names().get(i)).append(". ");
        }
        Mark verdict = v.verdict();
        return (verdict == null ? said.toString() : verdict.word() + ". ") + v.score();
    }

    @Override
    protected void paint(Pen pen, Drill.View v, Box box) {
        Box inner = box.inset(pen.px(28), pen.px(20));
        Box top = inner.top(pen.sizePx(TextRole.NEXT) * 1.3);
        pen.midway(
                pen.line("Which figure is this?", TextRole.NEXT, true, top.left(inner.w() * 0.7)),
                top,
                pen.palette().text());
        Box score = top.right(inner.w() * 0.28);
        pen.atRight(
                pen.lines(v.score(), TextRole.SMALL, false, score, 2),
                score,
                pen.palette().soft());
        double namesHeight = inner.h() * 0.34;
        SkyPainter.paint(
                pen,
                SkyView.whole(v.flown(), Outline.MONOPLANE),
                inner.belowTop(top.h() + pen.px(8)).aboveBottom(namesHeight + pen.px(10)));
        Box names = inner.bottom(namesHeight);
        double each = names.h() / (Drill.CHOICES + 1);
        for (int i = 0; i < v.names().size(); i++) {
            Box row = names.belowTop(i * each).top(each);
            boolean right = i == v.rightIndex();
            pen.midway(
                    pen.line(i + 1 + ": " + v.names().get(i) + (right ? " (this one)" : ""), TextRole.READ, right, row),
                    row,
                    right ? pen.palette().good() : pen.palette().text());
        }
        Box foot = names.belowTop(Drill.CHOICES * each);
        Mark verdict = v.verdict();
        if (verdict != null) {
            pen.mark(verdict, TextRole.VALUE, foot.left(foot.w() * 0.7));
        }
        Box how = foot.right(foot.w() * 0.3);
        pen.atRight(
                pen.lines("1 to 4 answer, Space goes on, Ctrl+D ends", TextRole.LABEL, false, how, 2),
                how,
                pen.palette().soft());
    }
}
