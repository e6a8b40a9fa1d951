package crowdline.console.prepare.list;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;
import java.util.List;

/** How a line that was read in a list is painted. */
final class ReadCells {
    private ReadCells() {}

    static CellPainter<ListView.Row> read(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                66,
                r -> r.mark().word() + ": " + r.figure() + ", "
                        + appearance.measures().told(r.told()) + ", " + r.assumed() + ", written "
                        + r.text() + numbered(r.choices()),
                ReadCells::read);
    }

    private static String numbered(List<String> choices) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < choices.size(); i++) {
            words.append("   ").append(i + 1).append(" ").append(choices.get(i));
        }
        return words.toString();
    }

    private static void read(Pen pen, ListView.Row row, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.08);
        Box top = inner.top(inner.h() * 0.5);
        Box bottom = inner.bottom(inner.h() * 0.44);
        Box beside = beside(pen, row, bottom, soft, text);
        Box verdict = (beside.w() > 0 ? top : inner).right(inner.w() * 0.3);
        if (chosen) {
            pen.markOnChosen(row.mark(), TextRole.LABEL, verdict);
        } else {
            pen.mark(row.mark(), TextRole.LABEL, verdict);
        }
        if (row.figure().equals(row.text())) {
            Box words = inner.left(Math.min(inner.w() * 0.68, beside.x() - inner.x()));
            boolean isFigure = row.key() >= 0;
            TextBlock name = pen.line(row.text(), TextRole.BODY, true, top.left(words.w()));
            if (isFigure && name.whole()) {
                pen.midway(name, beside.w() > 0 ? top : inner, text);
            } else {
                TextRole role = isFigure ? TextRole.BODY : TextRole.LABEL;
                pen.midway(pen.lines(row.text(), role, isFigure, words, 2), words, text);
            }
            return;
        }
        String told = pen.appearance().measures().told(row.told());
        String said = told.isEmpty() ? row.figure() : row.figure() + ", " + told;
        Box name = top.left(inner.w() * 0.68);
        pen.midway(pen.line(said, TextRole.BODY, true, name), name, text);
        Box left = bottom.left(beside.x() - bottom.x());
        pen.midway(pen.line("“" + row.text() + "”", TextRole.LABEL, false, left), left, soft);
    }

    /** Draws what is assumed, or what may be meant instead; the box it takes, from a little before it. */
    private static Box beside(Pen pen, ListView.Row row, Box bottom, Color soft, Color text) {
        boolean isAsked = !row.choices().isEmpty();
        String more = isAsked ? numbered(row.choices()).strip() : row.assumed();
        Box right = bottom.right(bottom.w() * 0.66);
        TextBlock block = pen.line(more, TextRole.LABEL, isAsked, right);
        pen.atRight(block, right, isAsked ? text : soft);
        return bottom.right(more.isEmpty() ? 0 : block.widthPx() + pen.sizePx(TextRole.BODY));
    }
}
