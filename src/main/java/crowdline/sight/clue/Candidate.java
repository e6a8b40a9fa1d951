package crowdline.sight.clue;

import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;

/** A figure, and which answers it allows. */
final class Candidate {
    private final CatalogueEntry entry;
    private final int[] allowed = new int[Clue.values().length];

    /** @param traits as one aircraft and another flies it; none where it is only timed */
    Candidate(CatalogueEntry entry, List<Traits> traits) {
        this.entry = entry;
        for (Clue clue : Clue.values()) {
            allowed[clue.ordinal()] = clue.allowed(entry, traits);
        }
    }

    CatalogueEntry entry() {
        return entry;
    }

    boolean allows(Clue clue, int answer) {
        return (allowed[clue.ordinal()] & Clue.only(answer)) != 0;
    }
}
