package crowdline.storage.settings;

import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.Practised.Well;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The practice flights of each speaker, in a file of its own in the program's own folder. */
public final class PractisedFile {
    private final PeopleFile<List<Practised>> file;

    /** @param file need not exist */
    public PractisedFile(Path file) {
        this.file =
                new PeopleFile<>(file, "crowdlinePractice", "practice", PractisedFile::read, PractisedFile::written);
    }

    /**
     * What was read.
     *
     * @param people by speaker, in the order flown
     * @param complaint what is to be told, in one sentence, or empty
     */
    public record Reading(Map<String, List<Practised>> people, String complaint) {
        public Reading {
            people = Map.copyOf(people);
        }
    }

    /** What was flown; nothing if there is no file, or if it is broken, which is then kept aside. */
    public Reading read() {
        PeopleFile.Reading<List<Practised>> reading = file.read();
        return new Reading(reading.people(), reading.complaint());
    }

    private static List<Practised> read(JsonNode person) {
        if (!person.isArray()) {
            throw new IllegalArgumentException("no list of flights");
        }
        List<Practised> flown = new ArrayList<>();
        for (JsonNode node : person) {
            flown.add(new Practised(
                    node.path("level").asInt(0),
                    day(node.path("day").asLong(0)),
                    node.path("act").asString(""),
                    node.path("flight").asLong(0),
                    well(node.path("plan")),
                    well(node.path("inStep")),
                    well(node.path("calls")),
                    well(node.path("talkedOver")),
                    well(node.path("duties"))));
        }
        return List.copyOf(flown);
    }

    private static LocalDate day(long epochDay) {
        try {
            return LocalDate.ofEpochDay(epochDay);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("no day of any calendar", e);
        }
    }

    private static Well well(JsonNode node) {
        return new Well(node.path("well").asInt(-1), node.path("of").asInt(-1));
    }

    private static JsonNode written(List<Practised> flown) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        for (Practised one : flown) {
            ObjectNode node = all.addObject();
            node.put("level", one.level());
            node.put("day", one.day().toEpochDay());
            node.put("act", one.act());
            node.put("flight", one.flight());
            put(node, "plan", one.plan());
            put(node, "inStep", one.steps());
            put(node, "calls", one.calls());
            put(node, "talkedOver", one.talk());
            put(node, "duties", one.duties());
        }
        return all;
    }

    private static void put(ObjectNode node, String name, Well well) {
        node.putObject(name).put("well", well.well()).put("of", well.of());
    }

    /**
     * Saves what was flown; what was there before is kept beside it.
     *
     * @param people by speaker, in the order flown
     * @throws ShowFileException if it cannot be saved, with one sentence for the user
     */
    public void write(Map<String, List<Practised>> people) throws ShowFileException {
        file.write(people);
    }
}
