package crowdline.console.live;

import crowdline.console.live.NextView.FactView;
import crowdline.console.live.NextView.Wording;
import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import java.awt.BasicStroke;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/**
 * Paints the facts within reach, each behind the number of its key, all in one size: a fact too long for its two lines
 * gives its short form, and what is too long even then ends in an ellipsis. Taken, it is shown whole.
 */
final class FactPainter {
    /** Facts are never smaller than this at scale 1; tuned: read at a glance at arm's length. */
    static final double LEAST_PX = 16;

    private static final int PLACES = 3;
    private static final int LINES = 2;

    private FactPainter() {}

    static void paint(Pen pen, List<FactView> facts, Box box) {
        List<FactView> shown = facts.subList(0, Math.min(PLACES, facts.size()));
        double each = box.h() / PLACES;
        Box first = box.top(each - pen.px(5));
        double sizePx = sizePx(pen, shown, words(pen, first));
        for (int i = 0; i < shown.size(); i++) {
            fact(pen, shown.get(i), box.belowTop(i * each).top(first.h()), sizePx);
        }
    }

    /** The largest size at which every fact is whole, in its short form at least; if there is none, the smallest. */
    static double sizePx(Pen pen, List<FactView> facts, Box words) {
        double most = pen.sizePx(TextRole.SMALL);
        double least = pen.px(LEAST_PX);
        double size = most;
        for (FactView fact : facts) {
            TextBlock full = block(pen, fact.full().text(), most, least, words);
            TextBlock block = full.whole() ? full : block(pen, fact.shorter().text(), most, least, words);
            size = Math.min(size, block.sizePx());
        }
        return size;
    }

    /** The words of a fact that are shown at a size: all of them if there is room for them, else the shorter ones. */
    static Wording shown(Pen pen, FactView fact, double sizePx, Box words) {
        return block(pen, fact.full().text(), sizePx, sizePx, words).whole() ? fact.full() : fact.shorter();
    }

    /** A fact at a size: whole if there is room, else short, else cut. */
    static TextBlock words(Pen pen, FactView fact, double sizePx, Box words) {
        return block(pen, shown(pen, fact, sizePx, words).text(), sizePx, sizePx, words);
    }

    private static TextBlock block(Pen pen, String text, double mostPx, double leastPx, Box box) {
        return pen.block(List.of(text), pen.plain(), mostPx, leastPx, box, LINES);
    }

    private static double cap(Pen pen, Box cell) {
        return Math.min(cell.h(), pen.px(34));
    }

    private static double takesWidth(Pen pen) {
        return pen.px(44);
    }

    private static Box words(Pen pen, Box cell) {
        return cell.rightOf(cap(pen, cell) + pen.px(10)).leftOf(takesWidth(pen) + pen.px(6));
    }

    private static void fact(Pen pen, FactView fact, Box cell, double sizePx) {
        double cap = cap(pen, cell);
        Box key = new Box(cell.x(), cell.midY() - cap / 2, cap, cap);
        pen.surface().setColor(pen.palette().text());
        pen.surface().setStroke(new BasicStroke((float) pen.px(1.6)));
        pen.surface().draw(new RoundRectangle2D.Double(key.x(), key.y(), cap, cap, pen.px(8), pen.px(8)));
        Box inside = key.inset(cap * 0.2, cap * 0.08);
        TextBlock number = pen.line(Integer.toString(fact.key()), TextRole.VALUE, true, inside);
        number.draw(
                pen.surface(),
                key.x() + (cap - number.widthPx()) / 2,
                key.y() + (cap - number.heightPx()) / 2,
                pen.palette().text());
        Box words = words(pen, cell);
        pen.midway(words(pen, fact, sizePx, words), words, pen.palette().text());
        Box takes = cell.right(takesWidth(pen));
        pen.atRight(
                block(pen, shown(pen, fact, sizePx, words).takes(), sizePx, pen.leastPx(), takes),
                takes,
                pen.palette().soft());
    }
}
