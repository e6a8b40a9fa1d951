package crowdline.console.glossary;

import crowdline.glossary.Explained;
import crowdline.glossary.Explained.Section;
import crowdline.glossary.Glossary;
import crowdline.glossary.drill.Questions;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.clue.WhatIsThat;
import crowdline.sight.picture.Flown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The glossary: every figure and every word explained, and how they are found. */
public final class GlossaryView {
    /** Nothing explained yet. */
    static final GlossaryView EMPTY = new GlossaryView(new Catalogue(List.of()), List.of(), Map.of(), null);

    /** Pages that can be opened from a page by a key. */
    static final int MOST_LINKS = 6;

    private final Catalogue catalogue;
    private final List<Term> terms;
    private final Map<String, Flown> drawings;
    private final Glossary glossary;
    private final List<EntryView> entries;

    /** What the list has in it. */
    enum Sift {
        ALL("All"),
        FIGURES("Figures"),
        WORDS("Words");

        private final String label;

        Sift(String label) {
            this.label = label;
        }

        boolean takes(EntryView entry) {
            return this == ALL || entry.figure() == (this == FIGURES);
        }

        Sift next() {
            return switch (this) {
                case ALL -> FIGURES;
                case FIGURES -> WORDS;
                case WORDS -> ALL;
            };
        }

        @Override
        public String toString() {
            return label;
        }
    }

    /**
     * One figure or word.
     *
     * @param name the trade's name
     * @param others other names for it, or empty
     * @param family what it belongs with
     * @param figure whether it is flown; else it is a word
     * @param lead what is said large under the name
     * @param sections the rest, each under its title
     * @param links names of the pages that can be opened from this one, in the order of their keys
     * @param source where its texts come from, or empty
     * @param flown how it is flown; {@link Flown#NONE} if it is not drawn
     */
    public record EntryView(
            String name,
            String others,
            String family,
            boolean figure,
            String lead,
            List<Section> sections,
            List<String> links,
            String source,
            Flown flown) {
        public EntryView {
            sections = List.copyOf(sections);
            links = List.copyOf(links);
        }

        EntryView with(Flown other) {
            return new EntryView(name, others, family, figure, lead, sections, links, source, other);
        }
    }

    private GlossaryView(Catalogue catalogue, List<Term> terms, Map<String, Flown> drawings, @Nullable Show own) {
        this.catalogue = catalogue;
        this.terms = terms;
        this.drawings = drawings;
        glossary = own == null
                ? Glossary.of(catalogue, terms, List.of())
                : Glossary.of(catalogue.with(own.figures()), terms, own.terms());
        entries = glossary.items().stream().map(this::entry).toList();
    }

    /** The same pages with other drawings. */
    private GlossaryView(GlossaryView same, Map<String, Flown> drawings) {
        catalogue = same.catalogue;
        terms = same.terms;
        this.drawings = drawings;
        glossary = same.glossary;
        entries = same.entries.stream()
                .map(entry -> glossary.find(entry.name())
                        .map(item -> entry.with(drawing(item)))
                        .orElse(entry))
                .toList();
    }

    /** The glossary of the program, without drawings. */
    public static GlossaryView of(Catalogue catalogue, List<Term> terms) {
        return new GlossaryView(catalogue, terms, Map.of(), null);
    }

    /** The glossary with drawings, by the names of their figures. */
    public static GlossaryView of(Catalogue catalogue, List<Term> terms, Map<String, Flown> drawings) {
        return new GlossaryView(catalogue, terms, Map.copyOf(drawings), null);
    }

    /** The glossary of the program, with drawings; takes a moment, off the event thread. */
    public static GlossaryView drawn(Catalogue catalogue, List<Term> terms) {
        return of(catalogue, terms).drawn();
    }

    /** The same with every figure drawn that can be flown; takes a moment, off the event thread. */
    public GlossaryView drawn() {
        return drawn(new FigureAlone(catalogue));
    }

    /** The same with every figure drawn that this aircraft can fly. */
    public GlossaryView drawn(Airframe airframe) {
        return drawn(new FigureAlone(catalogue, airframe));
    }

    private GlossaryView drawn(FigureAlone drawing) {
        return new GlossaryView(
                this,
                catalogue.entries().stream()
                        .collect(Collectors.toMap(
                                CatalogueEntry::name,
                                entry -> drawing.fly(entry).flown())));
    }

    /** The same with a show's own figures and words over it; none of its own if it is null. */
    GlossaryView with(@Nullable Show own) {
        return new GlossaryView(catalogue, terms, drawings, own);
    }

    /** What can be asked about the figures, as they are drawn. */
    Questions questions() {
        return new Questions(
                glossary, glossary.figures().stream().collect(Collectors.toMap(CatalogueEntry::name, this::drawing)));
    }

    /** In the order of the alphabet. */
    public List<EntryView> entries() {
        return entries;
    }

    /** The entries that have these words anywhere, the best first; all of them for no words. */
    List<EntryView> matching(String words, Sift sift) {
        Map<String, EntryView> byName =
                entries.stream().collect(Collectors.toMap(EntryView::name, Function.identity()));
        return glossary.search(words).stream()
                .flatMap(item -> Stream.ofNullable(byName.get(item.name())))
                .filter(sift::takes)
                .toList();
    }

    private EntryView entry(Explained item) {
        List<Section> sections =
                new ArrayList<>(item.sections().subList(1, item.sections().size()));
        if (!item.sayIt().isBlank()) {
            sections.add(new Section(Explained.SAY_IT, item.sayIt()));
        }
        return new EntryView(
                item.name(),
                String.join(", ", item.aliases()),
                item.group(),
                item instanceof Explained.OfFigure,
                item.sections().get(0).text(),
                sections,
                glossary.mentionedIn(item).stream()
                        .map(Explained::name)
                        .limit(MOST_LINKS)
                        .toList(),
                item.source(),
                drawing(item));
    }

    /** The first question about what was seen, by how the figures are drawn here. */
    public WhatIsThat asked() {
        return WhatIsThat.of(catalogue.entries(), entry -> List.of(drawings.getOrDefault(entry.name(), Flown.NONE)));
    }

    /** The figure of this name, if it is one. */
    Optional<CatalogueEntry> figure(String name) {
        return glossary.find(name)
                .flatMap(item ->
                        item instanceof Explained.OfFigure figure ? Optional.of(figure.entry()) : Optional.empty());
    }

    /** The word of this name, if it is one. */
    Optional<Term> term(String name) {
        return glossary.find(name)
                .flatMap(item -> item instanceof Explained.OfTerm word ? Optional.of(word.term()) : Optional.empty());
    }

    /** The name of the page of what is called so by any of its names. */
    Optional<String> page(String called) {
        return glossary.find(called).map(Explained::name);
    }

    private Flown drawing(Explained item) {
        return item instanceof Explained.OfFigure figure ? drawing(figure.entry()) : Flown.NONE;
    }

    /** Of the figure that is drawn under that name, if it is still flown so. */
    private Flown drawing(CatalogueEntry entry) {
        return catalogue
                        .find(entry.name())
                        .filter(known -> known.elements().equals(entry.elements()))
                        .isPresent()
                ? drawings.getOrDefault(entry.name(), Flown.NONE)
                : Flown.NONE;
    }
}
