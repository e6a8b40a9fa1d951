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
import crowdline.show.Incident;
import crowdline.show.Show;
import java.util.List;

/** The organiser's words for when something goes wrong, as large as they fit on one page with a red edge. */
final class IncidentPages {
    private static final double EDGE_PT = 17;
    private static final double THICK_PT = 13;
    private static final double LARGEST_PT = 26;
    private static final double LEAST_PT = 16;

    private final Incident incident;
    private final double size;
    private final Flow flow = new Flow(PaperSize.A4, page -> room());

    private IncidentPages(Incident incident, double size) {
        this.incident = incident;
        this.size = size;
    }

    static Pages of(String title, Show show, Type type) throws NothingOnPaper {
        Incident incident = show.incident();
        if (incident == null) {
            throw new NothingOnPaper("this show has no incident page; agree its words with the display director and put"
                    + " them into the show; crowdline incident-template prints a page to start from");
        }
        double least = type.pt(LEAST_PT);
        double size = type.pt(LARGEST_PT);
        Pages pages = pages(title, show, incident, size);
        while (pages.pages().size() > 1 && size > least) {
            size = Math.max(least, size - 0.5);
            pages = pages(title, show, incident, size);
        }
        return pages.with(AnnouncementPages.of(title, show, type));
    }

    private static Pages pages(String title, Show show, Incident incident, double size) {
        IncidentPages made = new IncidentPages(incident, size);
        made.fill();
        return made.flow.pages(title, (page, of, ground, blocks) -> around(show, page, of, ground, blocks));
    }

    private static Area room() {
        return PaperSize.A4.area().inset(EDGE_PT + THICK_PT + 22);
    }

    private void fill() {
        Style aside = new Style(Math.max(12, size * 0.62), false, Type.BLACK);
        Style strongAside = new Style(aside.sizePt(), true, Type.BLACK);
        Style label = new Style(Math.max(10, size * 0.45), true, Type.RED);
        Style words = new Style(size, true, Type.BLACK);
        flow.bookmark("Incident", 0);
        flow.text("title", "Incident", new Style(size * 1.35, true, Type.RED));
        boolean agreed = incident.agreedWith() != null;
        flow.row(new Cell("agreed", 0, room().width(), incident.agreement(), agreed ? aside : strongAside)
                .with(agreed ? Sign.DISC : Sign.DIAMOND));
        label("First", label);
        int number = 1;
        for (String step : incident.firstSteps()) {
            flow.gap(size * 0.15);
            double x = aside.sizePt() * 1.6;
            flow.row(
                    new Cell("step number", 0, x - 2, Integer.toString(number), strongAside),
                    new Cell("step", x, room().width() - x, step, aside));
            number++;
        }
        label("Say exactly what is written", label);
        for (String paragraph : incident.words()) {
            flow.gap(size * 0.4);
            flow.keep(flow.height(paragraph, words));
            flow.text("words", paragraph, words);
        }
        if (!incident.contacts().isEmpty()) {
            label("Whom to reach", label);
        }
        double x = room().width() * 0.46;
        for (Incident.Contact contact : incident.contacts()) {
            flow.row(
                    new Cell("role", 0, x - 8, contact.role(), strongAside),
                    new Cell("how", x, room().width() - x, contact.how(), aside));
        }
    }

    private void label(String words, Style style) {
        flow.gap(size * 0.7);
        flow.keep(style.leadingPt() + 2 * size);
        flow.text("label", words, style);
    }

    private static void around(Show show, int page, int of, List<Ink> ground, List<Block> blocks) {
        Area edge = PaperSize.A4.area().inset(EDGE_PT);
        ground.add(Ink.rectangle(edge.x(), edge.y(), edge.width(), THICK_PT, Type.RED));
        ground.add(Ink.rectangle(edge.x(), edge.bottom() - THICK_PT, edge.width(), THICK_PT, Type.RED));
        ground.add(Ink.rectangle(edge.x(), edge.y(), THICK_PT, edge.height(), Type.RED));
        ground.add(Ink.rectangle(edge.right() - THICK_PT, edge.y(), THICK_PT, edge.height(), Type.RED));
        Area room = room();
        String which = of == 1 ? "" : (page + 1) + " of " + of;
        String foot = Lettering.fitted(show.title(), 9, false, room.width() - 60);
        double y = room.bottom() + 14;
        blocks.add(new Block(
                "foot",
                new Area(room.x(), room.bottom() + 4, room.width(), 13),
                List.of(
                        new Ink.Words(foot, room.x(), y, 9, false, Anchor.START, Type.SOFT),
                        new Ink.Words(which, room.right(), y, 9, true, Anchor.END, Type.BLACK))));
    }
}
