package crowdline.console.glossary;

import crowdline.show.aircraft.Kind;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.clue.WhatIsThat;
import java.util.List;
import java.util.function.Consumer;

/** What the glossary asks of the rest of the program. On the event thread; every method returns at once. */
public interface GlossaryHost {
    /** Nobody flies anything. */
    GlossaryHost NONE = new GlossaryHost() {};

    /** The kinds of aircraft that figures can be flown with; the first is the one the glossary is drawn with. */
    default List<Kind> kinds() {
        return List.of();
    }

    /**
     * Begins to ask what was seen, by how the figures of the program are flown.
     *
     * @param done told the first question, on the event thread
     */
    default void ask(Consumer<WhatIsThat> done) {}

    /**
     * Flies a figure with an aircraft typical of a kind.
     *
     * @param done told how, on the event thread
     */
    default void fly(CatalogueEntry figure, Kind kind, Consumer<FigureAlone.Outcome> done) {}
}
