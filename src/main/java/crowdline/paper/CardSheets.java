package crowdline.paper;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Block;
import crowdline.sheet.page.Bookmark;
import crowdline.sheet.page.Page;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Cards four to a sheet, with marks where to cut. */
final class CardSheets {
    private static final int TO_A_SHEET = 4;
    private static final double MARK_FROM_PT = 6;
    private static final double MARK_TO_PT = 18;

    private CardSheets() {}

    static Pages of(String title, List<PaperAct> acts, Type type, Function<PaperAct, List<Card>> made) {
        List<Page> cards = new ArrayList<>();
        List<Bookmark> bookmarks = new ArrayList<>();
        for (PaperAct act : acts) {
            List<Card> own = made.apply(act);
            for (int i = 0; i < own.size(); i++) {
                Card card = own.get(i);
                int sheet = cards.size() / TO_A_SHEET;
                bookmarks.add(
                        i == 0
                                ? new Bookmark(act.act().title(), sheet, 0)
                                : new Bookmark((i + 1) + " " + card.name(), sheet, 1));
                cards.addAll(card.flow()
                        .pages(title, new CardFrame(card, i + 1, own.size(), type))
                        .pages());
            }
        }
        List<Page> sheets = new ArrayList<>();
        for (int i = 0; i < cards.size(); i += TO_A_SHEET) {
            sheets.add(sheet(cards.subList(i, Math.min(cards.size(), i + TO_A_SHEET))));
        }
        return new Pages(title, sheets, bookmarks);
    }

    private static Page sheet(List<Page> cards) {
        List<Ink> ground = new ArrayList<>(marks());
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < cards.size(); i++) {
            boolean atRight = i % 2 == 1;
            boolean under = i >= 2;
            double x = atRight ? PaperSize.A4.widthPt() / 2 : 0;
            double y = under ? PaperSize.A4.heightPt() / 2 : 0;
            cards.get(i).ground().forEach(ink -> ground.add(ink.moved(x, y)));
            cards.get(i).blocks().forEach(block -> blocks.add(block.moved(x, y)));
        }
        return new Page(PaperSize.A4, ground, blocks);
    }

    private static List<Ink> marks() {
        double w = PaperSize.A4.widthPt();
        double h = PaperSize.A4.heightPt();
        double x = w / 2;
        double y = h / 2;
        return List.of(
                mark(MARK_FROM_PT, y, MARK_TO_PT, y),
                mark(w - MARK_TO_PT, y, w - MARK_FROM_PT, y),
                mark(x, MARK_FROM_PT, x, MARK_TO_PT),
                mark(x, h - MARK_TO_PT, x, h - MARK_FROM_PT),
                mark(x - 7, y, x + 7, y),
                mark(x, y - 7, x, y + 7));
    }

    private static Ink mark(double x1, double y1, double x2, double y2) {
        return Ink.line(x1, y1, x2, y2, Type.SOFT, 0.6);
    }
}
