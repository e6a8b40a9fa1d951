package crowdline.storage.json;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The keys of one object on their way into a file. Values that are the default are marked as implied: they are written
 * only where the file had them already.
 */
public final class ObjectKeys {
    private static final double LARGEST_WHOLE = 1e15;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final ObjectNode node = NODES.objectNode();
    private final Set<String> implied = new HashSet<>();

    /** @param impliedByNode takes the marks, by identity of the node */
    public ObjectKeys(IdentityHashMap<ObjectNode, Set<String>> impliedByNode) {
        impliedByNode.put(node, implied);
    }

    public ObjectNode node() {
        return node;
    }

    public ObjectKeys text(String key, @Nullable String value) {
        if (value != null) {
            node.put(key, value);
        }
        return this;
    }

    public ObjectKeys text(String key, String value, String otherwise) {
        node.put(key, value);
        return impliedIf(key, value.equals(otherwise));
    }

    public ObjectKeys number(String key, @Nullable Double value) {
        if (value != null) {
            node.set(key, numberNode(value));
        }
        return this;
    }

    public ObjectKeys number(String key, double value, double otherwise) {
        number(key, value);
        return impliedIf(key, value == otherwise);
    }

    public ObjectKeys flag(String key, boolean value) {
        node.put(key, value);
        return impliedIf(key, !value);
    }

    public ObjectKeys flag(String key, boolean value, boolean otherwise) {
        node.put(key, value);
        return impliedIf(key, value == otherwise);
    }

    public <E extends Enum<E>> ObjectKeys choice(String key, DiskNames<E> names, E value) {
        return text(key, names.of(value));
    }

    public <E extends Enum<E>> ObjectKeys choice(String key, DiskNames<E> names, E value, E otherwise) {
        choice(key, names, value);
        return impliedIf(key, value.equals(otherwise));
    }

    public ObjectKeys group(String key, JsonNode group, boolean isDefault) {
        node.set(key, group);
        return impliedIf(key, isDefault);
    }

    public ObjectKeys texts(String key, List<String> texts, boolean needed) {
        ArrayNode array = NODES.arrayNode();
        texts.forEach(array::add);
        node.set(key, array);
        return impliedIf(key, texts.isEmpty() && !needed);
    }

    public <T> ObjectKeys list(String key, List<T> items, boolean needed, Function<T, JsonNode> maker) {
        ArrayNode array = NODES.arrayNode();
        items.forEach(item -> array.add(maker.apply(item)));
        node.set(key, array);
        return impliedIf(key, items.isEmpty() && !needed);
    }

    private ObjectKeys impliedIf(String key, boolean isDefault) {
        if (isDefault) {
            implied.add(key);
        }
        return this;
    }

    /** Whole numbers without a decimal point, as a person writes them. */
    public static JsonNode numberNode(double value) {
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE) {
            return NODES.numberNode((long) value);
        }
        return NODES.numberNode(BigDecimal.valueOf(value));
    }
}
