package crowdline.storage.show;

import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.ObjectKeys;
import java.util.IdentityHashMap;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** Figures and terms explained, for other programs: every key of each, in the words of the show file. */
public final class GlossaryJson {
    private GlossaryJson() {}

    /** {@code {"figures": [...], "terms": [...]}}, with a line end. */
    public static String of(List<CatalogueEntry> figures, List<Term> terms) {
        ShowToTree tree = new ShowToTree();
        ObjectNode root = new ObjectKeys(new IdentityHashMap<>())
                .list("figures", figures, true, tree::entry)
                .list("terms", terms, true, tree::term)
                .node();
        return JsonLayout.text(root);
    }
}
