package crowdline.console.incident;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import java.util.List;

/** Paints the lists beside the words, one below the other, as large as there is room for all of them. */
final class SideLists {
    /** What stands under one caption. */
    record Listed(String caption, List<String> items) {}

    private SideLists() {}

    static void paint(Pen pen, List<Listed> lists, Box box) {
        double captionPx = Math.max(20, pen.px(30));
        double gapPx = pen.px(10);
        Box room = new Box(box.x(), box.y(), box.w(), box.h() - lists.size() * captionPx - (lists.size() - 1) * gapPx);
        double sizePx = items(
                        pen,
                        lists.stream().flatMap(list -> list.items().stream()).toList(),
                        PageWords.sizePx(pen, TextRole.READ),
                        room)
                .sizePx();
        Box rest = box;
        for (Listed list : lists) {
            rest = rest.belowTop(list(pen, list, sizePx, captionPx, rest) + gapPx);
        }
    }

    private static double list(Pen pen, Listed list, double sizePx, double captionPx, Box box) {
        Box top = box.top(captionPx);
        pen.midway(
                pen.line(list.caption(), TextRole.VALUE, false, top),
                top,
                pen.palette().soft());
        if (list.items().isEmpty()) {
            return captionPx;
        }
        Box rest = box.belowTop(captionPx);
        TextBlock block = items(pen, list.items(), sizePx, rest);
        pen.atTop(block, rest, pen.palette().text());
        return captionPx + block.heightPx();
    }

    /** Items below each other, as large as there is room for all of them; no word is too long for a line. */
    private static TextBlock items(Pen pen, List<String> items, double mostPx, Box box) {
        double leastPx = Math.min(PageWords.LEAST_SIDE_PX, pen.leastPx());
        Box across = new Box(0, 0, box.w(), Double.MAX_VALUE);
        List<String> broken = items.stream()
                .map(item -> String.join(" ", LongWords.of(item, w -> pen.fits(w, pen.strong(), leastPx, across))))
                .toList();
        return pen.block(broken, pen.strong(), mostPx, leastPx, box, 99);
    }
}
