package crowdline.storage.show;

import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.json.Fields;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ObjectKeys;
import crowdline.storage.json.ParsedJson;
import crowdline.storage.json.Refusals;
import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Figures and terms explained, for other programs and from them: every key of each, in the words of the show file. */
public final class GlossaryJson {
    private GlossaryJson() {}

    /** What such a text explains. */
    public record Words(List<CatalogueEntry> figures, List<Term> terms) {
        public Words {
            figures = List.copyOf(figures);
            terms = List.copyOf(terms);
        }
    }

    /**
     * What a file explains; empty if it is none of these, as a show is none.
     *
     * @throws ShowFileException if it cannot be read, or if something in it cannot be used, with one sentence for the user
     */
    public static Optional<Words> read(Path file) throws ShowFileException {
        ShowText text = ShowText.decode(ShowText.bytes(file));
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (text.fault() != null
                || root == null
                || root.has("crowdline")
                || !(root.has("figures") || root.has("terms"))) {
            return Optional.empty();
        }
        for (String part : List.of("figures", "terms")) {
            JsonNode list = root.path(part);
            boolean sound = list.isMissingNode()
                    || (list.isArray() && list.valueStream().allMatch(JsonNode::isObject));
            if (!sound) {
                throw new ShowFileException("the words in " + file + " cannot be used: \"" + part
                        + "\" must be a list of things in braces, each with a name and its texts");
            }
        }
        Refusals refusals = new Refusals();
        Fields fields = new Fields(root, "", refusals);
        List<CatalogueEntry> figures = root.has("figures") ? fields.list("figures", ShowFromTree::entry) : List.of();
        List<Term> terms = root.has("terms") ? fields.list("terms", ShowFromTree::term) : List.of();
        List<String> wrong = Stream.concat(
                        parsed.findings().stream()
                                .map(found -> "line " + found.where().line() + ": "
                                        + found.finding().message()),
                        refusals.findings().stream().map(found -> found.message()))
                .toList();
        if (!wrong.isEmpty()) {
            throw new ShowFileException("the words in " + file + " cannot be used: " + String.join("; ", wrong));
        }
        return Optional.of(new Words(figures, terms));
    }

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
