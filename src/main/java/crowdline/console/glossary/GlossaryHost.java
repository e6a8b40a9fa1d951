package crowdline.console.glossary;

import crowdline.glossary.drill.Memory;
import crowdline.show.aircraft.Kind;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.clue.WhatIsThat;
import java.util.List;
import java.util.Map;
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
     * A figure that may be the one being flown.
     *
     * @param figure its name in the glossary
     * @param chance 0 to 1
     */
    record Belief(String figure, double chance) {}

    /** What the aircraft's position says it may be now, the likeliest first; none without a receiver. */
    default List<Belief> believed() {
        return List.of();
    }

    /** What whoever speaks remembers of the figures, by name. */
    default Map<String, Memory> remembered() {
        return Map.of();
    }

    /** Keeps what whoever speaks remembers of a figure from now on. */
    default void remember(String figure, Memory memory) {}

    /** The day, in days since 1970-01-01. */
    default long today() {
        return 0;
    }

    /**
     * Flies a figure with an aircraft typical of a kind.
     *
     * @param done told how, on the event thread
     */
    default void fly(CatalogueEntry figure, Kind kind, Consumer<FigureAlone.Outcome> done) {}
}
