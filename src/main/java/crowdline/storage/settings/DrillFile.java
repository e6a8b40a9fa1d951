package crowdline.storage.settings;

import crowdline.glossary.drill.Memory;
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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What each speaker remembers of the figures they were drilled in, in a file of its own in the program's own folder. */
public final class DrillFile {
    private static final String VERSION_KEY = "crowdlineDrill";
    private static final int VERSION = 1;

    private final Path file;

    /** @param file need not exist */
    public DrillFile(Path file) {
        this.file = file;
    }

    /**
     * What was read.
     *
     * @param people by speaker, then by figure
     * @param complaint what is to be told, in one sentence, or empty
     */
    public record Reading(Map<String, Map<String, Memory>> people, String complaint) {
        public Reading {
            people = Map.copyOf(people);
        }
    }

    /** What is remembered; nothing if there is no file, or if it is broken, which is then kept aside. */
    public Reading read() {
        if (!Files.exists(file)) {
            return new Reading(Map.of(), "");
        }
        try {
            OwnerOnly.withFolder(file);
            return new Reading(people(ShowText.decode(ShowText.bytes(file))), "");
        } catch (ShowFileException | IllegalArgumentException e) {
            return new Reading(Map.of(), aside());
        }
    }

    private static Map<String, Map<String, Memory>> people(ShowText text) {
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (text.fault() != null
                || root == null
                || !parsed.findings().isEmpty()
                || root.path(VERSION_KEY).asInt(0) != VERSION) {
            throw new IllegalArgumentException("not written by this program");
        }
        Map<String, Map<String, Memory>> people = new HashMap<>();
        for (Map.Entry<String, JsonNode> person : root.path("people").properties()) {
            Map<String, Memory> figures = new HashMap<>();
            for (Map.Entry<String, JsonNode> figure : person.getValue().properties()) {
                JsonNode node = figure.getValue();
                figures.put(
                        figure.getKey(),
                        new Memory(
                                node.path("repetitions").asInt(-1),
                                node.path("easiness").asDouble(0),
                                node.path("intervalDays").asInt(-1),
                                node.path("lastDay").asLong(0)));
            }
            people.put(person.getKey(), Map.copyOf(figures));
        }
        return people;
    }

    private String aside() {
        Path kept = file.resolveSibling(file.getFileName() + ".broken");
        try {
            Files.move(file, kept, StandardCopyOption.REPLACE_EXISTING);
            return "What the drill had kept cannot be read, so it begins anew; the old file is kept as " + kept;
        } catch (IOException e) {
            return "What the drill had kept in " + file + " cannot be read, so it begins anew";
        }
    }

    /**
     * Saves what is remembered; what was there before is kept beside it.
     *
     * @param people by speaker, then by figure
     * @throws ShowFileException if it cannot be saved, with one sentence for the user
     */
    public void write(Map<String, Map<String, Memory>> people) throws ShowFileException {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put(VERSION_KEY, VERSION);
        ObjectNode all = root.putObject("people");
        new TreeMap<>(people).forEach((person, figures) -> {
            ObjectNode one = all.putObject(person);
            new TreeMap<>(figures).forEach((figure, memory) -> {
                ObjectNode node = one.putObject(figure);
                node.put("repetitions", memory.repetitions());
                node.put("easiness", memory.easiness());
                node.put("intervalDays", memory.intervalDays());
                node.put("lastDay", memory.lastDay());
            });
        });
        try {
            OwnerOnly.folderOf(file);
        } catch (IOException e) {
            throw new ShowFileException("the folder of the drill's file, " + file.getParent() + ", cannot be made", e);
        }
        AtomicFile.ownerOnly().write(file, JsonLayout.text(root).getBytes(StandardCharsets.UTF_8));
    }
}
