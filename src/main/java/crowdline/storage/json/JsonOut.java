package crowdline.storage.json;

import crowdline.show.check.LocatedFinding;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON for what commands print. */
public final class JsonOut {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JsonOut() {}

    /** The findings of a check, under the key {@code findings}. */
    public static String findings(List<LocatedFinding> findings) {
        return of(Map.of("findings", findings));
    }

    /**
     * A value as JSON with a line end: maps in their order with text keys, lists, public records by the names of their
     * components, enums in lower case with hyphens, texts, numbers, truth values and null.
     *
     * @throws IllegalArgumentException if something in it has no form in JSON, such as NaN
     */
    public static String of(@Nullable Object value) {
        return JsonLayout.text(node(value));
    }

    /**
     * The same on one line, for output that goes on line by line.
     *
     * @throws IllegalArgumentException if something in it has no form in JSON, such as NaN
     */
    public static String line(@Nullable Object value) {
        return node(value) + "\n";
    }

    /**
     * A number as it is printed: to the nearest thousandth, halves to the even one, and never a negative zero.
     *
     * @param value finite
     */
    public static double thousandths(double value) {
        return Math.rint(value * 1000) / 1000 + 0.0;
    }

    private static JsonNode node(@Nullable Object value) {
        if (value == null) {
            return NODES.nullNode();
        }
        if (value instanceof String text) {
            return NODES.stringNode(text);
        }
        if (value instanceof Boolean flag) {
            return NODES.booleanNode(flag);
        }
        if (value instanceof Enum<?> choice) {
            return NODES.stringNode(name(choice));
        }
        if (value instanceof LocalTime hour) {
            return NODES.stringNode(hour.toString());
        }
        if (value instanceof Integer || value instanceof Long) {
            return NODES.numberNode(((Number) value).longValue());
        }
        if (value instanceof Number number) {
            double real = number.doubleValue();
            if (!Double.isFinite(real)) {
                throw new IllegalArgumentException(real + " has no form in JSON");
            }
            return ObjectKeys.numberNode(real);
        }
        if (value instanceof Map<?, ?> map) {
            ObjectNode object = NODES.objectNode();
            map.forEach((key, item) -> object.set(String.valueOf(key), node(item)));
            return object;
        }
        if (value instanceof Iterable<?> items) {
            ArrayNode array = NODES.arrayNode();
            items.forEach(item -> array.add(node(item)));
            return array;
        }
        if (value instanceof Record row) {
            return row(row);
        }
        throw new IllegalArgumentException(value.getClass().getName() + " has no form in JSON");
    }

    private static JsonNode row(Record row) {
        ObjectNode object = NODES.objectNode();
        for (RecordComponent component : row.getClass().getRecordComponents()) {
            try {
                object.set(component.getName(), node(component.getAccessor().invoke(row)));
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalArgumentException(row.getClass().getName() + " is not open to read", e);
            }
        }
        return object;
    }

    /** How an enum constant is printed: {@code WHEELS_DOWN} as {@code wheels-down}. */
    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
