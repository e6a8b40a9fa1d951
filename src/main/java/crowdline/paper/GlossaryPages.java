package crowdline.paper;

import crowdline.glossary.Explained;
import crowdline.glossary.Explained.Section;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.still.PaperStill;
import crowdline.show.Act;
import crowdline.show.aircraft.Outline;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Figures drawn and explained, by their names. */
final class GlossaryPages {
    private static final double DRAWING_PT = 200;

    private final Flow flow = new Flow(PaperSize.A4, page -> PageFrame.room());
    private final Type type;

    private GlossaryPages(Type type) {
        this.type = type;
    }

    static Pages of(String title, Wanted wanted, Counting count) throws NothingOnPaper {
        Catalogue catalogue =
                wanted.loaded().catalogue().with(wanted.loaded().show().figures());
        List<Explained> items = entries(catalogue, wanted).stream()
                .<Explained>map(Explained.OfFigure::new)
                .toList();
        String heading = wanted.one() ? wanted.acts().get(0).title() : "Every figure";
        PageFrame frame = new PageFrame(wanted.loaded().show().title(), "Glossary", false);
        return new GlossaryPages(wanted.type()).pages(title, heading, items, catalogue, frame, count);
    }

    /**
     * Figures and words in the order given.
     *
     * @param catalogue knows every figure among them
     */
    static Pages of(String title, List<Explained> items, Catalogue catalogue, Type type, Counting count) {
        return new GlossaryPages(type)
                .pages(title, title, items, catalogue, new PageFrame(title, "Glossary", false), count);
    }

    private Pages pages(
            String title, String heading, List<Explained> items, Catalogue catalogue, PageFrame frame, Counting count) {
        flow.text("title", heading, type.title());
        FigureAlone drawing = new FigureAlone(catalogue);
        for (int i = 0; i < items.size(); i++) {
            count.is(i, items.size());
            item(
                    items.get(i),
                    items.get(i) instanceof Explained.OfFigure figure
                            ? new PaperStill(drawing.fly(figure.entry()).flown(), Outline.MONOPLANE)
                            : PaperStill.NONE);
        }
        return flow.pages(title, frame);
    }

    private static List<CatalogueEntry> entries(Catalogue catalogue, Wanted wanted) throws NothingOnPaper {
        Comparator<CatalogueEntry> byName = Comparator.comparing(e -> e.name().toLowerCase(Locale.ROOT));
        if (!wanted.one()) {
            return catalogue.entries().stream().sorted(byName).toList();
        }
        Act act = wanted.acts().get(0);
        Set<CatalogueEntry> used = act.inOrder(wanted.chosen().apply(act)).stream()
                .flatMap(f -> catalogue.find(f.figure()).stream())
                .collect(Collectors.toSet());
        if (used.isEmpty()) {
            throw new NothingOnPaper("the act " + act.id()
                    + " has no figures that the glossary knows; leave out --act for" + " every figure");
        }
        return used.stream().sorted(byName).toList();
    }

    private void item(Explained entry, PaperStill still) {
        boolean drawn = still.isDrawn();
        double tall = still.height(DRAWING_PT);
        double width = flow.room().width();
        double beside = drawn ? width - DRAWING_PT - 18 : width;
        flow.gap(type.pt(16));
        flow.keep(Math.max(tall + type.pt(8), type.pt(150)));
        flow.bookmark(entry.name(), 0);
        flow.rule(Type.ACCENT, 1.2);
        flow.gap(type.pt(6));
        double from = flow.at();
        int page = flow.page();
        if (drawn) {
            flow.picture(
                    "drawing",
                    width - DRAWING_PT,
                    DRAWING_PT,
                    tall,
                    a -> still.inks(a.x(), a.y(), a.width(), a.height()));
            flow.goOnFrom(from);
        }
        flow.row(new Cell("name", 0, beside, entry.name(), type.head()));
        String others = String.join(", ", entry.aliases());
        if (!entry.sayIt().isBlank()) {
            flow.row(new Cell("say", 0, beside, "say: " + entry.sayIt(), type.small()));
        }
        if (!others.isBlank()) {
            flow.row(new Cell("others", 0, beside, "also: " + others, type.small()));
        }
        flow.gap(type.pt(4));
        List<Section> sections = entry.sections();
        flow.row(new Cell("look", 0, beside, sections.get(0).text(), type.strongWords()));
        flow.gap(type.pt(3));
        boolean second = sections.size() > 1 && entry instanceof Explained.OfFigure;
        if (second) {
            flow.row(new Cell("what", 0, beside, sections.get(1).text(), type.words()));
        }
        if (drawn && flow.page() == page) {
            flow.goOnFrom(Math.max(flow.at(), from + tall));
        }
        for (Section section : sections.subList(second ? 2 : 1, sections.size())) {
            section(section.title(), section.text());
        }
    }

    private void section(String label, String words) {
        if (words.isBlank()) {
            return;
        }
        double x = type.pt(96);
        flow.gap(type.pt(4));
        Cell named = new Cell("label", 0, x - 8, label, type.label());
        Cell text = new Cell("words", x, flow.room().width() - x, words, type.words());
        flow.keep(flow.height(named, text));
        flow.row(named, text);
    }
}
