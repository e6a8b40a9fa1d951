package crowdline.paper;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Anchor;
import crowdline.sheet.ink.Lettering;
import crowdline.sheet.page.Area;
import crowdline.sheet.page.Block;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Lines;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Style;
import java.util.List;

/** What stands round a card: at its head which it is, at its foot what comes next. */
final class CardFrame implements Flow.Frame {
    private static final double EDGE_PT = 22;
    private static final double HEAD_PT = 20;
    private static final double FOOT_PT = 44;
    private static final double NEXT_PT = 19;
    private static final double TOP_PT = 10.5;

    private final Card card;
    private final int number;
    private final int of;
    private final Type type;

    CardFrame(Card card, int number, int of, Type type) {
        this.card = card;
        this.number = number;
        this.of = of;
        this.type = type;
    }

    /** What is left for the words. */
    static Area room(Type type, boolean hasNext) {
        Area all = PaperSize.A6.area().inset(EDGE_PT);
        double foot = hasNext ? type.pt(FOOT_PT) + 4 : 0;
        return new Area(all.x(), all.y() + HEAD_PT, all.width(), all.height() - HEAD_PT - foot);
    }

    /** A name as large as it may be; one that takes more lines than that is smaller, and none is cut. */
    static Style nameStyle(String name, double width, double size, double smaller, int mostLines) {
        Style large = new Style(size, true, Type.BLACK);
        return Lines.of(name, large, width).size() <= mostLines ? large : new Style(smaller, true, Type.BLACK);
    }

    @Override
    public void around(int page, int pages, List<Ink> ground, List<Block> blocks) {
        Area all = PaperSize.A6.area().inset(EDGE_PT);
        String letter = pages == 1 ? "" : letters(page);
        String which = "Act " + card.act().number() + " · card " + number + letter + " of " + of;
        double y = all.y() + 9;
        ground.add(Ink.rectangle(all.x(), all.y() + 13.5, all.width(), 1.6, Type.ACCENT));
        double aside = Lettering.widthPx(card.when(), TOP_PT, true) + 6;
        double wide = Lettering.widthPx(which, TOP_PT, true);
        blocks.add(new Block(
                "number",
                new Area(all.x(), all.y(), wide, 13),
                List.of(new Ink.Words(which, all.x(), y, TOP_PT, true, Anchor.START, Type.ACCENT))));
        double middle = all.width() - wide - aside - 16;
        if (page > 0 && middle > 20) {
            String again = Lettering.fitted(card.name(), TOP_PT, false, middle);
            blocks.add(new Block(
                    "again",
                    new Area(all.x() + wide + 8, all.y(), middle, 13),
                    List.of(new Ink.Words(again, all.x() + wide + 8, y, TOP_PT, false, Anchor.START, Type.SOFT))));
        }
        blocks.add(new Block(
                "when",
                new Area(all.right() - aside, all.y(), aside, 13),
                List.of(new Ink.Words(card.when(), all.right(), y, TOP_PT, true, Anchor.END, Type.BLACK))));
        foot(page + 1 < pages, letters(page + 1), all, ground, blocks);
    }

    private void foot(boolean goesOn, String letter, Area all, List<Ink> ground, List<Block> blocks) {
        if (card.next().isEmpty()) {
            return;
        }
        double height = type.pt(FOOT_PT);
        double top = all.bottom() - height;
        ground.add(Ink.rectangle(all.x(), top, all.width(), 0.8, Type.ACCENT));
        String label = goesOn ? "MORE ON " + number + letter + ", THEN" : "NEXT";
        double labelY = top + type.pt(12);
        blocks.add(new Block(
                "next label",
                new Area(all.x(), top + 1, all.width(), type.pt(14)),
                List.of(
                        new Ink.Words(label, all.x(), labelY, type.pt(9), true, Anchor.START, Type.ACCENT),
                        new Ink.Words(
                                card.nextWhen(), all.right(), labelY, type.pt(10), true, Anchor.END, Type.BLACK))));
        double size = type.pt(NEXT_PT);
        while (size > 14 && Lettering.widthPx(card.next(), size, true) > all.width()) {
            size -= 0.5;
        }
        String next = Lettering.fitted(card.next(), size, true, all.width());
        blocks.add(new Block(
                "next",
                new Area(all.x(), top + type.pt(15) + 1, all.width(), height - type.pt(15) - 1),
                List.of(new Ink.Words(next, all.x(), top + type.pt(36), size, true, Anchor.START, Type.BLACK))));
    }

    /** a, b … z, then aa, ab and so on. */
    static String letters(int index) {
        String last = Character.toString((char) ('a' + index % 26));
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }
}
