package crowdline.console.glossary;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.SideView;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The glossary: every figure explained.
 *
 * @param entries in the order of the alphabet
 */
public record GlossaryView(List<EntryView> entries) {

    /**
     * One figure.
     *
     * @param name the trade's name
     * @param others other names for it, or empty
     * @param family which family it belongs to
     * @param lookFor one sentence of what to look for
     * @param sections the rest, each under its title
     * @param drawing what it looks like from the crowd; {@link SideView#NONE} if it is not drawn
     */
    public record EntryView(
            String name, String others, String family, String lookFor, List<Section> sections, SideView drawing) {
        public EntryView {
            sections = List.copyOf(sections);
        }

        public EntryView withDrawing(SideView side) {
            return new EntryView(name, others, family, lookFor, sections, side);
        }
    }

    /** A title and its text. */
    public record Section(String title, String text) {}

    public GlossaryView {
        entries = List.copyOf(entries);
    }

    /** The glossary of a catalogue, without drawings. */
    public static GlossaryView of(Catalogue catalogue) {
        return new GlossaryView(catalogue.entries().stream()
                .map(GlossaryView::entry)
                .sorted(Comparator.comparing(e -> e.name().toLowerCase(Locale.ROOT)))
                .toList());
    }

    /** The glossary of a catalogue with every figure drawn that can be flown; takes a moment, off the event thread. */
    public static GlossaryView drawn(Catalogue catalogue) {
        FigureAlone drawing = new FigureAlone(catalogue);
        return new GlossaryView(of(catalogue).entries().stream()
                .map(e ->
                        e.withDrawing(catalogue.find(e.name()).map(drawing::of).orElse(SideView.NONE)))
                .toList());
    }

    /** The entries whose name, other name or family has these letters in it; those whose name begins with them first. */
    public List<EntryView> matching(String letters) {
        String wanted = letters.strip().toLowerCase(Locale.ROOT);
        Stream<EntryView> begins =
                entries.stream().filter(e -> e.name().toLowerCase(Locale.ROOT).startsWith(wanted));
        Stream<EntryView> has = entries.stream()
                .filter(e -> !e.name().toLowerCase(Locale.ROOT).startsWith(wanted))
                .filter(e -> (e.name() + "\n" + e.others() + "\n" + e.family())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted));
        return Stream.concat(begins, has).toList();
    }

    private static EntryView entry(CatalogueEntry entry) {
        List<Section> sections = Stream.of(
                        new Section("What it is", entry.whatItIs()),
                        new Section("Why it is hard", entry.whyHard()),
                        new Section("Hands and feet", entry.handsAndFeet()),
                        new Section("What the pilot feels", entry.pilotFeels()),
                        new Section("Easily mixed up with", entry.mixUps()),
                        new Section("Say it", entry.sayIt()),
                        new Section("Where this comes from", Objects.requireNonNullElse(entry.source(), "")))
                .filter(s -> !s.text().isBlank())
                .toList();
        return new EntryView(
                entry.name(),
                String.join(", ", entry.aliases()),
                entry.family(),
                entry.lookFor(),
                sections,
                SideView.NONE);
    }
}
