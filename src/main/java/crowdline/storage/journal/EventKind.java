package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import crowdline.live.event.SlotTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * How one kind of event is written and read. Its time is the same for all.
 *
 * @param name in the journal
 * @param write puts everything but the time
 * @param read makes the event from its time and the rest
 */
record EventKind<E extends LiveEvent>(
        String name, Class<E> type, BiConsumer<E, ObjectNode> write, BiFunction<Double, EventFields, E> read) {
    private static final String AT = "atS";

    static <E extends LiveEvent> EventKind<E> of(
            String name, Class<E> type, BiConsumer<E, ObjectNode> write, BiFunction<Double, EventFields, E> read) {
        return new EventKind<>(name, type, write, read);
    }

    /** An event that has nothing but its time. */
    static <E extends LiveEvent> EventKind<E> bare(String name, Class<E> type, DoubleFunction<E> made) {
        return new EventKind<>(name, type, (event, of) -> {}, (atS, of) -> made.apply(atS));
    }

    ObjectNode values(LiveEvent event) {
        ObjectNode of = JsonNodeFactory.instance.objectNode();
        of.put(AT, event.atS());
        write.accept(type.cast(event), of);
        return of;
    }

    E event(EventFields of) {
        return read.apply(of.seconds(AT), of);
    }

    static ObjectNode texts(ObjectNode of, String key, List<String> texts) {
        texts.forEach(of.putArray(key)::add);
        return of;
    }

    /** Nothing at all if there are none, as in journals from before the key was there. */
    static ObjectNode textsIfAny(ObjectNode of, String key, List<String> texts) {
        return texts.isEmpty() ? of : texts(of, key, texts);
    }

    static JsonNode clock(SlotTime.@Nullable OnClock slot) {
        return slot == null
                ? JsonNodeFactory.instance.nullNode()
                : JsonNodeFactory.instance
                        .objectNode()
                        .put("at", DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(slot.at()))
                        .put("zone", slot.zone().getId());
    }
}
