package crowdline.storage.show;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.json.Fields;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import crowdline.storage.json.Refusals;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** The figure catalogue that comes with the program. */
public final class CatalogueFile {
    private static final String RESOURCE = "/crowdline/catalogue.json";
    private static final String VERSION_KEY = "crowdlineCatalogue";
    private static final int VERSION = 1;

    private CatalogueFile() {}

    /**
     * The shipped catalogue.
     *
     * @throws IllegalStateException if the program was put together without a sound one
     */
    public static Catalogue shipped() {
        try (InputStream in = CatalogueFile.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("this program has lost its figure catalogue; install it again");
            }
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws IllegalStateException if the text is not a sound catalogue, with every fault in the message */
    static Catalogue read(String text) {
        ParsedJson parsed = JsonParsing.parse(text);
        JsonNode root = parsed.root();
        if (root == null || root.path(VERSION_KEY).asInt(0) != VERSION) {
            String why = parsed.findings().stream()
                    .map(found -> "line " + found.where().line() + ": "
                            + found.finding().message())
                    .collect(Collectors.joining("; "));
            throw new IllegalStateException("the figure catalogue cannot be read; " + why);
        }
        Refusals refusals = new Refusals();
        List<CatalogueEntry> entries = new Fields(root, "", refusals).list("figures", ShowFromTree::entry);
        if (!refusals.findings().isEmpty()) {
            throw new IllegalStateException("the figure catalogue is damaged; "
                    + refusals.findings().stream().map(f -> f.message()).collect(Collectors.joining("; ")));
        }
        return new Catalogue(entries);
    }
}
