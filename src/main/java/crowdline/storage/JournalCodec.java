package crowdline.storage;

import crowdline.live.LiveEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Journal lines as JSON, each with a checksum of itself as its last value. */
final class JournalCodec {
    static final int VERSION = 1;
    private static final String CHECK = ",\"crc32\":\"";
    private static final int CHECK_LENGTH = CHECK.length() + 8 + 2;

    private final JsonMapper mapper = JsonMapper.builder().build();
    private final Map<String, Class<?>> eventTypes = new HashMap<>();

    JournalCodec() {
        collect(LiveEvent.class);
    }

    private void collect(Class<?> type) {
        if (type.isSealed()) {
            for (Class<?> kind : type.getPermittedSubclasses()) {
                collect(kind);
            }
        } else {
            eventTypes.put(type.getSimpleName(), type);
        }
    }

    /** Every kind of event by the name it has in a journal. */
    Map<String, Class<?>> eventTypes() {
        return Map.copyOf(eventTypes);
    }

    /** The line without its line feed. */
    String write(JournalLine line) {
        ObjectNode node = mapper.createObjectNode();
        if (line instanceof JournalLine.Header header) {
            node.put("crowdlineJournal", header.version());
            node.put("show", header.show().path());
            node.put("sha256", header.show().sha256());
            putBase(node, header.base());
        } else if (line instanceof JournalLine.Resumed resumed) {
            node.put("resumed", true);
            putBase(node, resumed.base());
        } else if (line instanceof JournalLine.Event event) {
            node.put("event", event.event().getClass().getSimpleName());
            node.set("of", mapper.valueToTree(event.event()));
            node.put("writtenAtS", event.writtenAtS());
            node.put("wall", event.wall().toString());
        }
        String json = mapper.writeValueAsString(node);
        return json.substring(0, json.length() - 1) + CHECK + checksum(json) + "\"}";
    }

    private static void putBase(ObjectNode node, JournalLine.Base base) {
        node.put("boot", base.bootId());
        node.put("nanos", base.nanos());
        node.put("wall", base.wall().toString());
        node.put("sessionS", base.sessionS());
    }

    /** The line, or empty if it is not one or does not fit its checksum. */
    Optional<JournalLine> read(String text) {
        int at = text.length() - CHECK_LENGTH;
        if (at < 1 || !text.startsWith(CHECK, at)) {
            return Optional.empty();
        }
        String json = text.substring(0, at) + "}";
        if (!text.equals(text.substring(0, at) + CHECK + checksum(json) + "\"}")) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(line(mapper.readTree(json)));
        } catch (JacksonException | DateTimeParseException | IllegalArgumentException notALine) {
            // The checksum fits, so it was written so: by a newer version, whose lines this one cannot know.
            return Optional.empty();
        }
    }

    private @Nullable JournalLine line(JsonNode node) {
        if (node.has("crowdlineJournal")) {
            JournalShow show = new JournalShow(
                    node.path("show").asString(), node.path("sha256").asString());
            return new JournalLine.Header(node.path("crowdlineJournal").asInt(), show, base(node));
        }
        if (node.has("resumed")) {
            return new JournalLine.Resumed(base(node));
        }
        Class<?> type = eventTypes.get(node.path("event").asString());
        if (type == null) {
            return null;
        }
        LiveEvent event = (LiveEvent) mapper.treeToValue(node.path("of"), type);
        return new JournalLine.Event(wall(node), node.path("writtenAtS").asDouble(), event);
    }

    private static JournalLine.Base base(JsonNode node) {
        JsonNode boot = node.path("boot");
        return new JournalLine.Base(
                boot.isString() ? boot.asString() : null,
                node.path("nanos").asLong(),
                wall(node),
                node.path("sessionS").asDouble());
    }

    private static Instant wall(JsonNode node) {
        return Instant.parse(node.path("wall").asString());
    }

    private static String checksum(String json) {
        CRC32 crc = new CRC32();
        crc.update(json.getBytes(StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%08x", crc.getValue());
    }
}
