package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HexFormat;
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
    /** From the first byte of this on the line is its checksum. */
    private static final byte[] CHECK_BYTES = CHECK.getBytes(StandardCharsets.US_ASCII);

    private static final int DIGITS = 8;
    private static final int CHECK_LENGTH = CHECK.length() + DIGITS + 2;
    private static final Instant EARLIEST = Instant.parse("1970-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private final JsonMapper mapper = JsonMapper.builder().build();
    private final JournalEvents events = new JournalEvents();

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
            node.put("event", events.name(event.event()));
            node.set("of", events.values(event.event()));
            node.put("writtenAtS", event.writtenAtS());
            node.put("wall", event.wall().toString());
        }
        String json = mapper.writeValueAsString(node);
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        return json.substring(0, json.length() - 1) + CHECK + checksum(bytes, 0, bytes.length - 1) + "\"}";
    }

    private static void putBase(ObjectNode node, JournalLine.Base base) {
        node.put("boot", base.bootId());
        node.put("nanos", base.nanos());
        node.put("wall", base.wall().toString());
        node.put("sessionS", base.sessionS());
    }

    /**
     * The end of the first line in {@code bytes}, behind its checksum, whether that fits or not; −1 if there is none.
     *
     * @param from where to look from
     * @param to where the bytes end
     */
    static int endOfLine(byte[] bytes, int from, int to) {
        for (int at = from; at <= to - CHECK_LENGTH; at++) {
            if (bytes[at] == CHECK_BYTES[0] && isCheck(bytes, at)) {
                return at + CHECK_LENGTH;
            }
        }
        return -1;
    }

    private static boolean isCheck(byte[] bytes, int at) {
        for (int i = 0; i < CHECK_BYTES.length; i++) {
            if (bytes[at + i] != CHECK_BYTES[i]) {
                return false;
            }
        }
        return true;
    }

    /** The line that these bytes are, all of them and no other; empty if its checksum does not fit or it makes no sense. */
    Optional<JournalLine> read(byte[] bytes, int from, int to) {
        int at = to - CHECK_LENGTH;
        if (at <= from || !isCheck(bytes, at) || bytes[to - 2] != '"' || bytes[to - 1] != '}') {
            return Optional.empty();
        }
        String told = new String(bytes, at + CHECK_BYTES.length, DIGITS, StandardCharsets.ISO_8859_1);
        if (!told.equals(checksum(bytes, from, at))) {
            return Optional.empty();
        }
        try {
            String json = new String(bytes, from, at - from, StandardCharsets.UTF_8) + "}";
            return Optional.ofNullable(line(mapper.readTree(json)));
        } catch (JacksonException | DateTimeException | IllegalArgumentException notALine) {
            // The checksum fits, so it was written so: by a newer version, or by nobody who knows what an event is.
            return Optional.empty();
        }
    }

    private @Nullable JournalLine line(JsonNode node) {
        if (node.has("crowdlineJournal")) {
            JournalShow show = new JournalShow(
                    node.path("show").asString(), node.path("sha256").asString());
            int version = node.path("crowdlineJournal").asInt();
            return version == VERSION ? new JournalLine.Header(version, show, base(node)) : null;
        }
        if (node.has("resumed")) {
            return new JournalLine.Resumed(base(node));
        }
        LiveEvent event = events.read(node.path("event").asString(), node.path("of"));
        return event == null ? null : new JournalLine.Event(wall(node), seconds(node, "writtenAtS"), event);
    }

    private static JournalLine.Base base(JsonNode node) {
        JsonNode boot = node.path("boot");
        return new JournalLine.Base(
                boot.isString() ? boot.asString() : null,
                node.path("nanos").asLong(),
                wall(node),
                seconds(node, "sessionS"));
    }

    private static double seconds(JsonNode node, String key) {
        double seconds = node.path(key).asDouble();
        if (!(seconds >= 0 && seconds <= EventFields.MOST_S)) {
            throw new IllegalArgumentException(key + " is " + seconds + "; it must be from 0 to " + EventFields.MOST_S);
        }
        return seconds;
    }

    private static Instant wall(JsonNode node) {
        Instant wall = Instant.parse(node.path("wall").asString());
        if (wall.isBefore(EARLIEST) || wall.isAfter(LATEST)) {
            throw new IllegalArgumentException("wall is " + wall + "; no clock of a show shows that");
        }
        return wall;
    }

    /** Of the bytes and a brace that closes them. */
    private static String checksum(byte[] bytes, int from, int to) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, to - from);
        crc.update('}');
        return HexFormat.of().toHexDigits((int) crc.getValue());
    }
}
