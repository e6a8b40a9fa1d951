package crowdline.sight.clue;

import crowdline.show.catalogue.CatalogueEntry;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A figure, and which answers it allows. */
final class Candidate {
    private final CatalogueEntry entry;
    private final Map<Clue, Integer> allowed = new EnumMap<>(Clue.class);

    /** @param traits as one aircraft and another flies it; none where it is only timed */
    Candidate(CatalogueEntry entry, List<Traits> traits) {
        this.entry = entry;
        for (Clue clue : Clue.values()) {
            allowed.put(clue, clue.allowed(entry, traits));
        }
    }

    CatalogueEntry entry() {
        return entry;
    }

    boolean allows(Clue clue, int answer) {
        return (allowed.getOrDefault(clue, Clue.ANY) & Clue.only(answer)) != 0;
    }
}
