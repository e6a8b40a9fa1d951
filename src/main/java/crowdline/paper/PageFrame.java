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
import crowdline.show.Caution;
import java.util.List;

/** What stands round an A4 page: above which show and sheet it is, under it the caution and its number. */
final class PageFrame implements Flow.Frame {
    private static final double EDGE_PT = 42;
    private static final double HEAD_PT = 20;
    private static final double FOOT_PT = 24;

    private static final double SIZE_PT = 8.5;
    /** So wide that the caution takes two lines of about one length. */
    private static final double CAUTION_WIDE = 0.76;

    private final String show;
    private final String sheet;
    private final boolean cautions;

    /** @param cautions whether what is on it rests on predictions */
    PageFrame(String show, String sheet, boolean cautions) {
        this.show = show;
        this.sheet = sheet;
        this.cautions = cautions;
    }

    /** What is left for the words. */
    static Area room() {
        Area all = PaperSize.A4.area().inset(EDGE_PT);
        return new Area(all.x(), all.y() + HEAD_PT, all.width(), all.height() - HEAD_PT - FOOT_PT);
    }

    @Override
    public void around(int page, int of, List<Ink> ground, List<Block> blocks) {
        Area room = room();
        double headY = room.y() - 15;
        double half = room.width() / 2 - 6;
        ground.add(Ink.rectangle(room.x(), room.y() - 9, room.width(), 1.6, Type.ACCENT));
        words(blocks, "sheet", sheet, room.x(), headY, half, true, Anchor.START);
        words(blocks, "show", show, room.right(), headY, half, false, Anchor.END);
        double footY = room.bottom() + 16;
        ground.add(Ink.rectangle(room.x(), room.bottom() + 5, room.width(), 0.6, Type.RULE));
        if (cautions) {
            List<String> lines =
                    Lines.of(Caution.ON_PAPER, new Style(SIZE_PT, false, Type.SOFT), CAUTION_WIDE * room.width());
            for (int i = 0; i < lines.size(); i++) {
                words(
                        blocks,
                        "caution",
                        lines.get(i),
                        room.x(),
                        footY + 11 * i,
                        room.width() - 60,
                        false,
                        Anchor.START);
            }
        }
        words(blocks, "page", (page + 1) + " of " + of, room.right(), footY, 50, true, Anchor.END);
    }

    private static void words(
            List<Block> blocks, String name, String text, double x, double y, double width, boolean strong, Anchor at) {
        String fitted = Lettering.fitted(text, SIZE_PT, strong, width);
        double left = at == Anchor.END ? x - width : x;
        blocks.add(new Block(
                name,
                new Area(left, y - SIZE_PT, width, 11),
                List.of(new Ink.Words(fitted, x, y, SIZE_PT, strong, at, Type.SOFT))));
    }
}
