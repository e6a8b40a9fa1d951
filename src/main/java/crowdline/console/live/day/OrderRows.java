package crowdline.console.live.day;

import crowdline.console.live.row.ListRows;
import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** The rows of the running order in Live. */
public final class OrderRows {
    private static final String KEYS =
            "Running order: Alt+\u2190 \u2192 by a minute, Alt+Page Up/Down by ten, from here on"
                    + " (with Shift this one alone). Alt+\u2191 \u2193 order. Del cancel, Ins put in, Ctrl+Enter now, R close.";

    private static final String NONE = "This show has no acts yet. Ins puts one in, R closes this.";

    /** A title stands in one line while its type is at least this share of that of two lines. Tuned by looking. */
    private static final double ONE_LINE = 0.8;

    private OrderRows() {}

    public static ListRows<OrderView.Row> in(Appearance appearance) {
        return new ListRows<>(appearance, "Running order", KEYS, NONE, OrderRows::cells);
    }

    private static CellPainter<OrderView.Row> cells(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                ListRows.ROW_PX,
                row -> row.title() + ", " + row.state().word() + ", slot " + row.slot() + " " + row.moved() + " "
                        + row.expected() + ", " + row.lasts(),
                OrderRows::paint);
    }

    private static void paint(Pen pen, OrderView.Row row, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.06);
        Box state = inner.left(inner.w() * 0.15);
        if (chosen) {
            pen.markOnChosen(row.state(), TextRole.BODY, state);
        } else {
            pen.mark(row.state(), TextRole.BODY, state);
        }
        Box rest = inner.right(inner.w() * 0.85);
        Box slot = rest.left(rest.w() * 0.24);
        pen.midway(pen.line(row.slot(), TextRole.VALUE, true, slot), slot, text);
        double taken = Math.min(
                slot.w(), pen.widthPx(row.slot(), true, pen.sizePx(TextRole.VALUE)) + pen.sizePx(TextRole.LABEL));
        Box beside = slot.right(slot.w() - taken);
        pen.midway(pen.line(row.moved(), TextRole.LABEL, false, beside), beside, text);
        Box times = rest.right(rest.w() * 0.22);
        String told = row.expected().isEmpty() ? row.lasts() : row.expected() + ", " + row.lasts();
        pen.atRight(pen.lineOrLines(told, TextRole.BODY, times, 2, ONE_LINE), times, soft);
        Box title = rest.right(rest.w() * 0.75).left(rest.w() * 0.52);
        pen.midway(pen.lineOrLines(row.title(), TextRole.VALUE, title, 2, ONE_LINE), title, text);
    }
}
