package crowdline.console.glossary;

import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** Paints a row of the list of pages. */
final class PageCell {
    private PageCell() {}

    static void paint(Pen pen, EntryView entry, Box box, boolean chosen) {
        Box inner = box.inset(pen.px(12), pen.px(4));
        boolean large = isLarge(pen.appearance());
        Box family = large ? inner.bottom(inner.h() * 0.27) : inner.right(inner.w() * 0.36);
        Box name = large ? inner.aboveBottom(family.h()) : inner.leftOf(family.w() + pen.px(8));
        pen.midway(
                pen.lines(entry.name(), TextRole.SMALL, true, name, 2),
                name,
                chosen ? pen.palette().onChosen() : pen.palette().text());
        TextBlock word = pen.line(entry.family(), TextRole.LABEL, false, family);
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        if (large) {
            pen.midway(word, family, soft);
        } else {
            pen.atRight(word, family, soft);
        }
    }

    /** Whether words are so large that a row has no room for two things beside each other. */
    static boolean isLarge(Appearance appearance) {
        return appearance.zoom().percent() > 140;
    }
}
