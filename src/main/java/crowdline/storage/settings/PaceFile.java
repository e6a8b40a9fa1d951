package crowdline.storage.settings;

import crowdline.show.bounds.Nearest;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The pace of one speaker as a file of its own, as calibration leaves it. */
public final class PaceFile {
    private static final String VERSION_KEY = "crowdlinePace";
    private static final int VERSION = 1;
    private static final List<String> NUMBERS =
            List.of("fixedS", "perLetterS", "perCommaS", "perStopS", "relativeError");

    private PaceFile() {}

    /**
     * Reads a pace.
     *
     * @throws ShowFileException if the file cannot be read or is no sound pace, with one sentence for the user
     */
    public static Pace read(Path file) throws ShowFileException {
        ShowText text = ShowText.decode(ShowText.bytes(file, ShowText.MOST_BYTES_OF_A_FEW_LINES));
        ParsedJson parsed = JsonParsing.parse(text.text());
        if (text.fault() != null || parsed.root() == null || !parsed.findings().isEmpty()) {
            String why = parsed.findings().isEmpty()
                    ? "it is not UTF-8 text"
                    : parsed.findings().get(0).finding().message();
            throw new ShowFileException(file + " is not a pace file: " + why);
        }
        JsonNode root = parsed.root();
        if (root.path(VERSION_KEY).asInt(0) != VERSION) {
            throw new ShowFileException(
                    file + " is not a pace file; one has \"" + VERSION_KEY + "\": " + VERSION + " in it");
        }
        for (String key : NUMBERS) {
            if (!root.path(key).isNumber()) {
                String near = root.propertyNames().stream()
                        .filter(given -> Nearest.to(given, List.of(key)).isPresent() && !NUMBERS.contains(given))
                        .findFirst()
                        .map(given -> "; is \"" + given + "\" meant for it?")
                        .orElse("; add it as a number");
                throw new ShowFileException("the pace file " + file + " has no " + key + near);
            }
        }
        try {
            return new Pace(
                    root.path("name").asString("unnamed"),
                    root.path("fixedS").asDouble(),
                    root.path("perLetterS").asDouble(),
                    root.path("perCommaS").asDouble(),
                    root.path("perStopS").asDouble(),
                    root.path("relativeError").asDouble());
        } catch (IllegalArgumentException e) {
            throw new ShowFileException("the pace file " + file + " cannot be used: " + e.getMessage());
        }
    }

    /**
     * Saves a pace.
     *
     * @throws ShowFileException if it cannot be saved, with one sentence for the user
     */
    public static void write(Path file, Pace pace) throws ShowFileException {
        write(file, pace, new AtomicFile());
    }

    static void write(Path file, Pace pace, AtomicFile saves) throws ShowFileException {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put(VERSION_KEY, VERSION);
        node.put("name", pace.name());
        node.put("fixedS", pace.fixedS());
        node.put("perLetterS", pace.perLetterS());
        node.put("perCommaS", pace.perCommaS());
        node.put("perStopS", pace.perStopS());
        node.put("relativeError", pace.relativeError());
        saves.write(file, JsonLayout.text(node).getBytes(StandardCharsets.UTF_8));
    }
}
