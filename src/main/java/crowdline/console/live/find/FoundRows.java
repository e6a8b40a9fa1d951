package crowdline.console.live.find;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.speech.plain.Sentences;
import crowdline.speech.plain.TextSpan;
import java.awt.Color;
import java.util.List;
import java.util.stream.Collectors;

/** Paints what was found: the rows with their digits, and beside them what is said of the one that is open. */
final class FoundRows extends Painted<FindView> {
    /** Against ordinary words. */
    private static final double LEAST_TEXT = 1.3;

    private static final double ROWS_SHARE = 0.4;
    /** The rows are no higher than this many of the words of a figure's look, so that few do not stand apart; tuned. */
    private static final double MOST_HEIGHT = 1.6;
    /** And no lower than this many, while there are {@value #FEWEST}. */
    private static final double LEAST_HEIGHT = 1.2;

    private static final int FEWEST = 5;

    FoundRows(Appearance appearance) {
        super("Found", appearance);
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().sunk();
    }

    @Override
    protected String spoken(FindView v) {
        FindView.Page open = v.open();
        return v.rows().stream()
                        .map(row -> row.digit() + ": " + row.name() + ", " + row.kind() + ".")
                        .collect(Collectors.joining(" "))
                + (open == null ? "" : " " + open.name() + ". " + say(open) + " " + open.text())
                + " " + v.hint();
    }

    private static String say(FindView.Page page) {
        return page.sayIt().isEmpty() ? "" : "Say: " + page.sayIt();
    }

    @Override
    protected void paint(Pen pen, FindView v, Box box) {
        Box inner = box.inset(pen.px(18), pen.px(4));
        double hintPx = Math.min(pen.sizePx(TextRole.BODY) * 1.4, inner.h() * 0.16);
        Box foot = inner.bottom(hintPx);
        pen.midway(
                pen.line(v.hint(), TextRole.BODY, false, foot),
                foot,
                pen.palette().text());
        Box rest = inner.aboveBottom(hintPx + pen.px(4));
        int lines = rowsIn(pen, rest);
        double each = Math.min(rest.h() / lines, pen.sizePx(TextRole.VALUE) * MOST_HEIGHT);
        int first = firstShown(v.rows(), lines);
        for (int i = 0; i < Math.min(lines, v.rows().size()); i++) {
            row(
                    pen,
                    v.rows().get(first + i),
                    rest.left(rest.w() * ROWS_SHARE).belowTop(i * each).top(each));
        }
        FindView.Page open = v.open();
        if (open != null) {
            page(pen, open, rest.rightOf(rest.w() * ROWS_SHARE + pen.px(20)));
        }
    }

    /** As many as can be read at this zoom; the rest are reached by the arrows and by their digits. */
    private static int rowsIn(Pen pen, Box box) {
        int fitting = (int) (box.h() / (pen.sizePx(TextRole.VALUE) * LEAST_HEIGHT));
        return Math.min(FindView.MOST, Math.max(FEWEST, fitting));
    }

    /** So that the one that is open is among those shown. */
    static int firstShown(List<FindView.Row> rows, int lines) {
        int open = 0;
        for (int i = 0; i < rows.size(); i++) {
            open = rows.get(i).isOpen() ? i : open;
        }
        return Math.max(0, open - lines + 1);
    }

    private static void row(Pen pen, FindView.Row row, Box box) {
        Color text = row.isOpen() ? pen.palette().onChosen() : pen.palette().text();
        if (row.isOpen()) {
            pen.fill(box, pen.palette().chosen());
        }
        Box inner = box.inset(pen.px(8), 0);
        Box digit = inner.left(inner.w() * 0.07);
        pen.midway(pen.line(String.valueOf(row.digit()), TextRole.VALUE, true, digit), digit, text);
        Box kind = inner.right(inner.w() * 0.2);
        pen.atRight(
                pen.line(row.kind(), TextRole.BODY, false, kind),
                kind,
                row.isOpen() ? text : pen.palette().soft());
        Box name = inner.rightOf(digit.w()).left(inner.w() * 0.71);
        double sizePx = Math.min(pen.sizePx(TextRole.VALUE), box.h() / LEAST_HEIGHT);
        pen.midway(pen.at(row.name(), true, sizePx, name, 1), name, text);
    }

    /**
     * Whoever looks something up wants to read the beginning at a glance, not to see the end: as many sentences as fit, the
     * first ones larger rather than all of them small.
     */
    private static TextBlock beginning(Pen pen, String text, Box box) {
        double least = Math.min(
                pen.sizePx(TextRole.VALUE),
                pen.designedPx(TextRole.BODY)
                        * LEAST_TEXT
                        * pen.appearance().zoom().factor());
        List<TextSpan> sentences = new Sentences().in(text);
        for (int count = sentences.size(); count > 0; count--) {
            TextBlock block =
                    block(pen, text.substring(0, sentences.get(count - 1).toChar()), least, box);
            if (block.whole()) {
                return block;
            }
        }
        return block(pen, text, pen.designedPx(TextRole.BODY) * LEAST_TEXT, box);
    }

    private static TextBlock block(Pen pen, String text, double leastPx, Box box) {
        return pen.block(List.of(text), pen.plain(), pen.sizePx(TextRole.VALUE), leastPx, box, 30);
    }

    private static void page(Pen pen, FindView.Page page, Box box) {
        pen.fill(box, pen.palette().stage());
        Box inner = box.inset(pen.px(14), pen.px(6));
        double namePx = Math.min(pen.sizePx(TextRole.NEXT) * 1.2, inner.h() * 0.3);
        Box name = inner.top(namePx);
        String say = say(page);
        Box whole = say.isEmpty() ? name : name.left(name.w() * 0.55);
        pen.midway(
                pen.line(page.name(), TextRole.NEXT, true, whole),
                whole,
                pen.palette().text());
        if (!say.isEmpty()) {
            Box right = name.right(name.w() * 0.43);
            pen.midway(
                    pen.lines(say, TextRole.VALUE, true, right, 2),
                    right,
                    pen.palette().accent());
        }
        Box text = inner.belowTop(namePx + pen.px(4));
        pen.atTop(beginning(pen, page.text(), text), text, pen.palette().text());
    }
}
