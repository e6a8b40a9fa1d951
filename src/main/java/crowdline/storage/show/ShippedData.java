package crowdline.storage.show;

import crowdline.storage.json.Fields;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import crowdline.storage.json.Refusals;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/**
 * Data that comes with the program, and how it is called where it is missing or unsound.
 *
 * @param resource where it lies
 * @param versionKey its key that holds the version of its form
 * @param lost what the program has lost without it, such as "its glossary"
 * @param cannotBeRead its name and why it is of no use at all, such as "the terms cannot be read"
 * @param damaged its name and that some of it is unsound, such as "the terms are damaged"
 */
record ShippedData(String resource, String versionKey, String lost, String cannotBeRead, String damaged) {
    private static final int VERSION = 1;

    /** The text of it. */
    String text() {
        try (InputStream in = ShippedData.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("this program has lost " + lost + "; install it again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What a text of this form says.
     *
     * @throws IllegalStateException if it is unsound, with every fault in the message
     */
    <T> T read(String text, Function<Fields, T> reading) {
        ParsedJson parsed = JsonParsing.parse(text);
        JsonNode root = parsed.root();
        if (root == null || root.path(versionKey).asInt(0) != VERSION) {
            String why = parsed.findings().stream()
                    .map(found -> "line " + found.where().line() + ": "
                            + found.finding().message())
                    .collect(Collectors.joining("; "));
            throw new IllegalStateException(cannotBeRead + "; " + why);
        }
        Refusals refusals = new Refusals();
        T read = reading.apply(new Fields(root, "", refusals));
        if (!refusals.findings().isEmpty()) {
            throw new IllegalStateException(damaged + "; "
                    + refusals.findings().stream().map(f -> f.message()).collect(Collectors.joining("; ")));
        }
        return read;
    }
}
