package crowdline.console.live.day;

import crowdline.console.live.row.ListRows;
import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** The rows of the duties of the day in Live. */
public final class DutyRows {
    private static final String KEYS =
            "Duties of the day, the most pressing first: \u2191 \u2193 choose one, S it was said,"
                    + " X not in this act, U close. A tick needs a key: what only stood on the screen is shown, not said.";

    private static final String NONE =
            "This show has no duties of the day. They are written in Prepare: F2, then Ctrl+6. U closes this.";

    /** Words stand in one line while its type is at least this share of that of two lines. Tuned by looking. */
    private static final double ONE_LINE = 0.8;

    private DutyRows() {}

    public static ListRows<DutiesView.Row> in(Appearance appearance) {
        return new ListRows<>(appearance, "Duties of the day", KEYS, NONE, DutyRows::cells);
    }

    private static CellPainter<DutiesView.Row> cells(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                ListRows.ROW_PX,
                row -> row.text() + ", " + row.state().word() + ", " + row.count() + ", " + row.when(),
                DutyRows::paint);
    }

    private static void paint(Pen pen, DutiesView.Row row, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.06);
        Box state = inner.left(inner.w() * 0.14);
        if (chosen) {
            pen.markOnChosen(row.state(), TextRole.BODY, state);
        } else {
            pen.mark(row.state(), TextRole.BODY, state);
        }
        Box rest = inner.right(inner.w() * 0.86);
        double countPx = pen.widthPx("10 of 10", true, pen.sizePx(TextRole.VALUE)) + pen.sizePx(TextRole.LABEL);
        Box count = rest.left(Math.min(rest.w() * 0.2, countPx));
        pen.midway(pen.line(row.count(), TextRole.VALUE, true, count), count, text);
        Box when = rest.right(rest.w() * 0.34);
        pen.atRight(pen.lineOrLines(row.when(), TextRole.BODY, when, 2, ONE_LINE), when, soft);
        Box words = rest.right(rest.w() - count.w()).left(rest.w() * 0.64 - count.w());
        pen.midway(pen.lineOrLines(row.text(), TextRole.VALUE, words, 2, ONE_LINE), words, text);
    }
}
