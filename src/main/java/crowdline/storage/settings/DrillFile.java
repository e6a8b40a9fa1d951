package crowdline.storage.settings;

import crowdline.glossary.drill.Memory;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What each speaker remembers of the figures they were drilled in, in a file of its own in the program's own folder. */
public final class DrillFile {
    private final PeopleFile<Map<String, Memory>> file;

    /** @param file need not exist */
    public DrillFile(Path file) {
        this.file = new PeopleFile<>(file, "crowdlineDrill", "the drill", DrillFile::read, DrillFile::written);
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
        PeopleFile.Reading<Map<String, Memory>> reading = file.read();
        return new Reading(reading.people(), reading.complaint());
    }

    private static Map<String, Memory> read(JsonNode person) {
        Map<String, Memory> figures = new HashMap<>();
        for (Map.Entry<String, JsonNode> figure : person.properties()) {
            JsonNode node = figure.getValue();
            figures.put(
                    figure.getKey(),
                    new Memory(
                            node.path("repetitions").asInt(-1),
                            node.path("easiness").asDouble(0),
                            node.path("intervalDays").asInt(-1),
                            node.path("lastDay").asLong(0)));
        }
        return Map.copyOf(figures);
    }

    private static JsonNode written(Map<String, Memory> figures) {
        ObjectNode one = JsonNodeFactory.instance.objectNode();
        new TreeMap<>(figures).forEach((figure, memory) -> {
            ObjectNode node = one.putObject(figure);
            node.put("repetitions", memory.repetitions());
            node.put("easiness", memory.easiness());
            node.put("intervalDays", memory.intervalDays());
            node.put("lastDay", memory.lastDay());
        });
        return one;
    }

    /**
     * Saves what is remembered; what was there before is kept beside it.
     *
     * @param people by speaker, then by figure
     * @throws ShowFileException if it cannot be saved, with one sentence for the user
     */
    public void write(Map<String, Map<String, Memory>> people) throws ShowFileException {
        file.write(people);
    }
}
