package crowdline.loaded;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.picture.Flown;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Figures that are only timed, as they usually look; each is drawn once. Any thread may ask. */
final class Sketched {
    private final Map<CatalogueEntry, Flown> drawn = new ConcurrentHashMap<>();

    /** @param catalogue that has the figure */
    Flown of(Catalogue catalogue, CatalogueEntry figure) {
        Flown known = drawn.get(figure);
        if (known != null) {
            return known;
        }
        Flown made = new FigureAlone(catalogue).fly(figure).flown();
        Flown before = drawn.putIfAbsent(figure, made);
        return before == null ? made : before;
    }
}
