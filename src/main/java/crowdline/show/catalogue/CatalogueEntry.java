package crowdline.show.catalogue;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Element;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One figure as the catalogue explains it.
 *
 * @param name the trade's name
 * @param aliases other names for the same thing
 * @param family such as "loops", "rolls", "turns", "stalled", "lines"
 * @param whatItIs plain words for a family
 * @param lookFor one sentence: what to look for
 * @param whyHard why it is hard
 * @param handsAndFeet what the pilot's hands and feet do
 * @param pilotFeels what the pilot feels
 * @param mixUps what it is commonly mixed up with, and how to tell
 * @param sayIt how to say the name, where a reader would get it wrong; else empty
 * @param source where the texts come from: a published handbook with its section, or "common practice"; null for an entry of
 *     a show that does not say
 * @param minEntryKt slowest usual entry speed for a light aerobatic aeroplane, or null; common practice, no source
 * @param enters how fast it is usually begun, or null if that is not known; each kind of aircraft has its own knots for it
 * @param elements what is flown; empty if it is only timed, as a take-off is
 */
public record CatalogueEntry(
        String name,
        List<String> aliases,
        String family,
        String whatItIs,
        String lookFor,
        String whyHard,
        String handsAndFeet,
        String pilotFeels,
        String mixUps,
        String sayIt,
        @Nullable String source,
        @Nullable Double minEntryKt,
        @Nullable EntrySpeed enters,
        List<Element> elements) {

    private static final Set<String> ON_THE_WAY =
            Set.of("reposition", "climb", "tow", "level out", "run-in", "push-over", "join-up");

    public CatalogueEntry {
        Most.mustBeText("catalogue name", name);
        Most.mustBeText("catalogue family", family);
        Most.mustBeText("whatItIs of " + name, whatItIs);
        Most.mustBeText("lookFor of " + name, lookFor);
        Most.ALIASES.must(aliases);
        Most.ELEMENTS.must(elements);
        aliases = List.copyOf(aliases);
        elements = List.copyOf(elements);
        if (minEntryKt != null) {
            Quantity.MIN_ENTRY_KT.must(minEntryKt);
        }
    }

    /** Whether it is flown to get somewhere, or to get together again: no figure to announce. */
    public boolean isOnTheWay() {
        return ON_THE_WAY.contains(name);
    }

    /** Whether it begins or ends an act; everybody sees that it does. */
    public boolean comesOrGoes() {
        return family.equals("coming and going");
    }
}
