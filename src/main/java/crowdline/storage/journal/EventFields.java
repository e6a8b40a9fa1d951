package crowdline.storage.journal;

import crowdline.live.event.SlotTime;
import crowdline.storage.json.DiskNames;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** The values of an event in a journal. Each is what it should be, or an {@link IllegalArgumentException}. */
record EventFields(JsonNode node) {
    /** Ten years: no session is as long, and no sum of such seconds is too large for a number. */
    static final double MOST_S = 10 * 366 * 86_400.0;

    double seconds(String key) {
        JsonNode value = node.path(key);
        if (!value.isNumber() || !(Math.abs(value.doubleValue()) <= MOST_S)) {
            throw refused(key, value, "a number of seconds");
        }
        return value.doubleValue();
    }

    @Nullable
    Double secondsOrNull(String key) {
        return isNone(key) ? null : Double.valueOf(seconds(key));
    }

    int index(String key) {
        JsonNode value = node.path(key);
        if (!value.isInt()) {
            throw refused(key, value, "a whole number");
        }
        return value.intValue();
    }

    boolean flag(String key) {
        JsonNode value = node.path(key);
        if (!value.isBoolean()) {
            throw refused(key, value, "true or false");
        }
        return value.booleanValue();
    }

    String text(String key) {
        JsonNode value = node.path(key);
        if (!value.isString()) {
            throw refused(key, value, "a text");
        }
        return value.asString();
    }

    @Nullable
    String textOrNull(String key) {
        return isNone(key) ? null : text(key);
    }

    List<String> texts(String key) {
        JsonNode list = node.path(key);
        List<String> texts = new ArrayList<>();
        for (JsonNode value : list.values()) {
            if (!value.isString()) {
                throw refused(key, value, "a text");
            }
            texts.add(value.asString());
        }
        if (!list.isArray()) {
            throw refused(key, list, "a list of texts");
        }
        return texts;
    }

    /** None if the key is not there, as in journals from before it was written. */
    List<String> textsIfAny(String key) {
        return isNone(key) ? List.of() : texts(key);
    }

    <E extends Enum<E>> E choice(String key, DiskNames<E> names) {
        return names.constant(text(key));
    }

    /** @throws java.time.DateTimeException if it is no time, or of no zone */
    SlotTime.@Nullable OnClock clockOrNull(String key) {
        if (isNone(key)) {
            return null;
        }
        EventFields clock = new EventFields(node.path(key));
        return new SlotTime.OnClock(LocalDateTime.parse(clock.text("at")), ZoneId.of(clock.text("zone")));
    }

    private boolean isNone(String key) {
        return node.path(key).isMissingNode() || node.path(key).isNull();
    }

    private static IllegalArgumentException refused(String key, JsonNode value, String allowed) {
        return new IllegalArgumentException(key + " is " + value + "; it must be " + allowed);
    }
}
