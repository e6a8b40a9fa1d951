package crowdline.storage.show;

import crowdline.show.Term;
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

/** The words of the trade that come with the program, each explained. */
public final class TermsFile {
    private static final String RESOURCE = "/crowdline/terms.json";
    private static final String VERSION_KEY = "crowdlineTerms";
    private static final int VERSION = 1;

    private TermsFile() {}

    /**
     * The shipped terms.
     *
     * @throws IllegalStateException if the program was put together without sound ones
     */
    public static List<Term> shipped() {
        try (InputStream in = TermsFile.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("this program has lost its glossary; install it again");
            }
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws IllegalStateException if the text is no sound list of terms, with every fault in the message */
    static List<Term> read(String text) {
        ParsedJson parsed = JsonParsing.parse(text);
        JsonNode root = parsed.root();
        if (root == null || root.path(VERSION_KEY).asInt(0) != VERSION) {
            String why = parsed.findings().stream()
                    .map(found -> "line " + found.where().line() + ": "
                            + found.finding().message())
                    .collect(Collectors.joining("; "));
            throw new IllegalStateException("the terms of the glossary cannot be read; " + why);
        }
        Refusals refusals = new Refusals();
        List<Term> terms = new Fields(root, "", refusals).list("terms", ShowFromTree::term);
        if (!refusals.findings().isEmpty()) {
            throw new IllegalStateException("the terms of the glossary are damaged; "
                    + refusals.findings().stream().map(f -> f.message()).collect(Collectors.joining("; ")));
        }
        return terms;
    }
}
