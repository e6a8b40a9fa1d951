package crowdline.paper;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Anchor;
import crowdline.sheet.ink.Lettering;
import crowdline.sheet.page.Area;
import crowdline.sheet.page.Block;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Sign;
import crowdline.sheet.page.Style;
import crowdline.show.Announcement;
import crowdline.show.Show;
import java.util.List;

/**
 * The organiser's words for other occasions, large, each kept together. Without the red edge, so that nobody takes one of
 * them for the incident page.
 */
final class AnnouncementPages {
    private static final double INSET_PT = 40;
    private static final double WORDS_PT = 18;
    private static final double ASIDE_PT = 12;

    private final Flow flow = new Flow(PaperSize.A4, page -> room());
    private final Style title;
    private final Style words;
    private final Style aside;

    private AnnouncementPages(Type type) {
        double size = type.pt(WORDS_PT);
        title = new Style(size * 1.2, true, Type.RED);
        words = new Style(size, true, Type.BLACK);
        aside = new Style(type.pt(ASIDE_PT), false, Type.BLACK);
    }

    static Pages of(String title, Show show, Type type) {
        if (show.announcements().isEmpty()) {
            return new Pages(title, List.of(), List.of());
        }
        AnnouncementPages made = new AnnouncementPages(type);
        show.announcements().forEach(made::announcement);
        return made.flow.pages(title, (page, of, ground, blocks) -> foot(show, page, of, blocks));
    }

    private static Area room() {
        return PaperSize.A4.area().inset(INSET_PT);
    }

    private void announcement(Announcement one) {
        if (flow.at() > room().y()) {
            flow.gap(words.sizePt());
            flow.keep(height(one));
        }
        flow.bookmark(one.occasion(), 0);
        flow.text("occasion", one.occasion(), title);
        flow.row(new Cell("agreed", 0, room().width(), one.agreement(), aside)
                .with(one.isAgreed() ? Sign.DISC : Sign.DIAMOND));
        if (!one.blanks().isEmpty()) {
            flow.text("blanks", "Fill in first: " + String.join("; ", one.blanks()), aside);
        }
        for (String paragraph : one.words()) {
            flow.gap(words.sizePt() * 0.4);
            flow.text("announced", paragraph, words);
        }
        flow.gap(words.sizePt() * 0.6);
        flow.rule(Type.RULE, 0.7);
    }

    /** No more than a page has: what is longer begins at the top of one. */
    private double height(Announcement one) {
        double all = title.leadingPt() + 3 * aside.leadingPt();
        for (String paragraph : one.words()) {
            all += flow.height(paragraph, words) + words.sizePt() * 0.4;
        }
        return Math.min(all, room().height());
    }

    private static void foot(Show show, int page, int of, List<Block> blocks) {
        Area room = room();
        String foot = Lettering.fitted(show.title(), 9, false, room.width() - 160);
        double y = room.bottom() + 18;
        blocks.add(new Block(
                "foot",
                new Area(room.x(), room.bottom() + 8, room.width(), 13),
                List.of(
                        new Ink.Words(foot, room.x(), y, 9, false, Anchor.START, Type.SOFT),
                        new Ink.Words(
                                "Announcements " + (page + 1) + " of " + of,
                                room.right(),
                                y,
                                9,
                                true,
                                Anchor.END,
                                Type.BLACK))));
    }
}
