package crowdline.arrange;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The lines of a list as figures that nothing is known of yet but what was asked. */
final class AskedFigures {
    private final Catalogue catalogue;
    private final Set<String> taken = new HashSet<>();

    AskedFigures(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Figure> of(FigureList list) {
        List<Figure> figures = new ArrayList<>();
        for (ListLine line : list.lines()) {
            figures.add(figure(line));
        }
        return figures;
    }

    private Figure figure(ListLine line) {
        String name = line.figure() == null ? line.title() : line.figure();
        String title = line.title().equals(nameOf(name)) ? null : line.title();
        return new Figure(
                id(line.title()),
                name,
                title,
                null,
                null,
                line.seconds(),
                null,
                null,
                asked(line),
                false,
                List.of(),
                List.of());
    }

    private String nameOf(String figure) {
        return catalogue.find(figure).map(e -> e.name()).orElse(figure);
    }

    private static Asked asked(ListLine line) {
        return new Asked(
                line.text(),
                line.count(),
                line.place() == null ? null : Asked.Place.valueOf(line.place().name()),
                null,
                line.side() == null ? null : Asked.Hand.valueOf(line.side().name()),
                line.heading(),
                line.heightFt(),
                line.entryKt(),
                line.seconds(),
                note(line),
                line.sure(),
                line.choices(),
                false);
    }

    private static @Nullable String note(ListLine line) {
        Boolean smoke = line.smoke();
        if (smoke == null) {
            return line.note();
        }
        String words = smoke ? "smoke on" : "smoke off";
        return line.note() == null ? words : line.note() + "; " + words;
    }

    /** From the words of the name, as a person would write it. */
    private String id(String title) {
        return FreshId.of(title, taken);
    }
}
