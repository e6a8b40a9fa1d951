package crowdline.console.glossary;

import crowdline.show.aircraft.Kind;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
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
     * Flies a figure with an aircraft typical of a kind.
     *
     * @param done told how, on the event thread
     */
    default void fly(CatalogueEntry figure, Kind kind, Consumer<FigureAlone.Outcome> done) {}
}
