package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** No two of the show's own catalogue entries claim the same name. */
final class GlossaryRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        Map<String, Integer> claimed = new HashMap<>();
        for (int e = 0; e < show.figures().size(); e++) {
            CatalogueEntry entry = show.figures().get(e);
            List<String> names = new ArrayList<>(List.of(entry.name()));
            names.addAll(entry.aliases());
            for (String name : names) {
                Integer other = claimed.putIfAbsent(Written.key(name), e);
                if (other != null && other != e) {
                    findings.accept(new Finding(
                            Severity.ERROR,
                            "name-claimed-twice",
                            "the figure name " + Written.quoted(name) + " is claimed by "
                                    + Written.quoted(show.figures().get(other).name()) + " and by "
                                    + Written.quoted(entry.name())
                                    + "; only one of them can have it",
                            "figures[" + e + "]"));
                }
            }
        }
    }
}
