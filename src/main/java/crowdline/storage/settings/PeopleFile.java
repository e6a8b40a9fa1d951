package crowdline.storage.settings;

import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.OwnerOnly;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A file of the program's own that has something for each speaker. A broken one is kept aside.
 *
 * @param <T> what is kept of one
 */
final class PeopleFile<T> {
    private static final int VERSION = 1;

    private final Path file;
    private final String versionKey;
    private final String whose;
    private final Function<JsonNode, T> reads;
    private final Function<T, JsonNode> writes;

    /**
     * @param whose in sentences, such as "the drill"
     * @param reads throws {@link IllegalArgumentException} for what cannot be
     */
    PeopleFile(Path file, String versionKey, String whose, Function<JsonNode, T> reads, Function<T, JsonNode> writes) {
        this.file = file;
        this.versionKey = versionKey;
        this.whose = whose;
        this.reads = reads;
        this.writes = writes;
    }

    /**
     * What was read.
     *
     * @param people by speaker
     * @param complaint what is to be told, in one sentence, or empty
     */
    record Reading<T>(Map<String, T> people, String complaint) {
        Reading {
            people = Map.copyOf(people);
        }
    }

    /** What is kept; nothing if there is no file, or if it is broken. */
    Reading<T> read() {
        if (!Files.exists(file)) {
            return new Reading<>(Map.of(), "");
        }
        try {
            OwnerOnly.withFolder(file);
            return new Reading<>(people(ShowText.decode(ShowText.bytes(file))), "");
        } catch (ShowFileException | IllegalArgumentException e) {
            return new Reading<>(Map.of(), aside());
        }
    }

    private Map<String, T> people(ShowText text) {
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (text.fault() != null
                || root == null
                || !parsed.findings().isEmpty()
                || root.path(versionKey).asInt(0) != VERSION) {
            throw new IllegalArgumentException("not written by this program");
        }
        Map<String, T> people = new HashMap<>();
        for (Map.Entry<String, JsonNode> person : root.path("people").properties()) {
            people.put(person.getKey(), reads.apply(person.getValue()));
        }
        return people;
    }

    private String aside() {
        Path kept = file.resolveSibling(file.getFileName() + ".broken");
        try {
            Files.move(file, kept, StandardCopyOption.REPLACE_EXISTING);
            return "What " + whose + " had kept cannot be read, so it begins anew; the old file is kept as " + kept;
        } catch (IOException e) {
            return "What " + whose + " had kept in " + file + " cannot be read, so it begins anew";
        }
    }

    /**
     * Saves what is kept; what was there before is kept beside it.
     *
     * @param people by speaker
     * @throws ShowFileException if it cannot be saved, with one sentence for the user
     */
    void write(Map<String, T> people) throws ShowFileException {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put(versionKey, VERSION);
        ObjectNode all = root.putObject("people");
        new TreeMap<>(people).forEach((person, kept) -> all.set(person, writes.apply(kept)));
        try {
            OwnerOnly.folderOf(file);
        } catch (IOException e) {
            throw new ShowFileException(
                    "the folder for what " + whose + " keeps, " + file.getParent() + ", cannot be made", e);
        }
        AtomicFile.ownerOnly().write(file, JsonLayout.text(root).getBytes(StandardCharsets.UTF_8));
    }
}
