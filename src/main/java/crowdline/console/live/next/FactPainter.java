package crowdline.console.live.next;

import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.next.NextView.Wording;
import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import java.util.List;

/**
 * Paints the facts within reach, each behind the number of its key, all in one size: a fact too long for its lines
 * gives its short form, and what is too long even then ends in an ellipsis. Taken, it is shown whole.
 */
final class FactPainter {
    /** Facts are never smaller than this at scale 1; tuned: read at a glance at arm's length. */
    static final double LEAST_PX = 16;

    static final int PLACES = 3;
    private static final int LINES = 2;
    /** A fact alone has the room of three. */
    private static final int LINES_ALONE = 5;

    private FactPainter() {}

    /** Paints them in one size; one alone has all the room. */
    static void paint(Pen pen, List<FactView> facts, Box box, double sizePx) {
        Box first = cell(pen, box, places(facts));
        for (int i = 0; i < facts.size(); i++) {
            Box cell = new Box(first.x(), box.y() + i * box.h() / places(facts), first.w(), first.h());
            fact(pen, facts.get(i), cell, sizePx, lines(facts));
        }
    }

    /** True if all are whole at a size, or it is the smallest there is. */
    static boolean holds(Pen pen, List<FactView> facts, Box box, double sizePx) {
        Box words = words(pen, cell(pen, box, places(facts)), sizePx);
        int lines = lines(facts);
        return sizePx <= sizePx(pen, facts, words)
                || facts.stream()
                        .allMatch(f -> words(pen, f, sizePx, words, lines).whole());
    }

    private static int places(List<FactView> facts) {
        return facts.size() == 1 ? 1 : PLACES;
    }

    private static int lines(List<FactView> facts) {
        return facts.size() == 1 ? LINES_ALONE : LINES;
    }

    /** The place of a fact among several. */
    static Box cell(Pen pen, Box box, int facts) {
        return box.top(box.h() / facts - (facts == 1 ? 0 : pen.px(5)));
    }

    /** At 100 %: the largest size at which every fact is whole, in its short form at least; if there is none, the smallest. */
    static double sizePx(Pen pen, List<FactView> facts, Box words) {
        double most = pen.designedPx(TextRole.SMALL);
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
    static Wording shown(Pen pen, FactView fact, double sizePx, Box words, int lines) {
        return pen.at(fact.full().text(), false, sizePx, words, lines).whole() ? fact.full() : fact.shorter();
    }

    /** A fact at a size: whole if there is room, else short, else cut. */
    static TextBlock words(Pen pen, FactView fact, double sizePx, Box words, int lines) {
        return pen.at(shown(pen, fact, sizePx, words, lines).text(), false, sizePx, words, lines);
    }

    private static TextBlock block(Pen pen, String text, double mostPx, double leastPx, Box box) {
        return pen.block(List.of(text), pen.plain(), mostPx, leastPx, box, LINES);
    }

    private static double cap(Box cell, double sizePx) {
        return Math.min(cell.h(), sizePx * 1.85);
    }

    private static double takesWidth(double sizePx) {
        return sizePx * 2.6;
    }

    /** The room for the words of a fact beside its key and its seconds. */
    static Box words(Pen pen, Box cell, double sizePx) {
        return cell.rightOf(cap(cell, sizePx) + pen.px(10)).leftOf(takesWidth(sizePx) + pen.px(4));
    }

    private static void fact(Pen pen, FactView fact, Box cell, double sizePx, int lines) {
        double cap = cap(cell, sizePx);
        Box words = words(pen, cell, sizePx);
        TextBlock block = words(pen, fact, sizePx, words, lines);
        double y = lines == LINES ? cell.midY() - cap / 2 : cell.y();
        Box key = new Box(cell.x(), y, cap, cap);
        pen.hollow(key, pen.px(1.6), pen.palette().text());
        TextBlock number = pen.at(Integer.toString(fact.key()), true, sizePx * 1.1, key, 1);
        number.draw(
                pen.surface(),
                key.x() + (cap - number.widthPx()) / 2,
                key.y() + (cap - number.heightPx()) / 2,
                pen.palette().text());
        Box takes = cell.right(takesWidth(sizePx));
        TextBlock seconds = pen.at(shown(pen, fact, sizePx, words, lines).takes(), false, sizePx, takes, 1);
        if (lines == LINES) {
            pen.midway(block, words, pen.palette().text());
            pen.atRight(seconds, takes, pen.palette().soft());
        } else {
            pen.atTop(block, words, pen.palette().text());
            pen.atRight(seconds, takes.top(seconds.heightPx()), pen.palette().soft());
        }
    }
}
