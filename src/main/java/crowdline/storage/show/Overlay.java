package crowdline.storage.show;

import crowdline.storage.json.TreePath;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Lays a show over the file it came from. What did not change stays as it was written, keys keep their order, keys the
 * program does not know stay where they are. Entries of a list are the same if they have the same id or name; those
 * without either are matched from both ends of the list inwards, as most edits leave the rest of a list alone.
 */
final class Overlay {
    private static final List<String> NAMES = List.of("id", "name", "role");
    /** Known to the schema and of no meaning to a show. */
    private static final String SCHEMA_KEY = "$schema";

    private final IdentityHashMap<ObjectNode, Set<String>> implied;
    private final Set<String> unknownKeys;

    private Overlay(IdentityHashMap<ObjectNode, Set<String>> implied, Set<String> unknownKeys) {
        this.implied = implied;
        this.unknownKeys = unknownKeys;
    }

    /**
     * @param original the tree as it stood in the file, or null for a new file
     * @param unknownKeys paths in it of the keys to keep
     */
    static JsonNode lay(ShowToTree.Fresh fresh, @Nullable JsonNode original, Set<String> unknownKeys) {
        return new Overlay(fresh.implied(), unknownKeys).merge(original, fresh.root(), "");
    }

    private JsonNode merge(@Nullable JsonNode original, JsonNode fresh, String path) {
        if (fresh instanceof ObjectNode object) {
            return object(original instanceof ObjectNode was ? was : null, object, path);
        }
        if (fresh instanceof ArrayNode array) {
            return array(original instanceof ArrayNode was ? was : null, array, path);
        }
        return original != null && same(original, fresh) ? original : fresh;
    }

    private ObjectNode object(@Nullable ObjectNode original, ObjectNode fresh, String path) {
        ObjectNode merged = JsonNodeFactory.instance.objectNode();
        Set<String> defaults = implied.getOrDefault(fresh, Set.of());
        List<String> order = new ArrayList<>();
        if (original != null) {
            for (String key : original.propertyNames()) {
                boolean unknown = unknownKeys.contains(TreePath.key(path, key)) || key.equals(SCHEMA_KEY);
                if (unknown || fresh.has(key)) {
                    order.add(key);
                }
            }
        }
        int after = 0;
        for (String key : fresh.propertyNames()) {
            int at = order.indexOf(key);
            if (at >= 0) {
                after = at + 1;
            } else if (!defaults.contains(key)) {
                order.add(after++, key);
            }
        }
        for (String key : order) {
            @Nullable JsonNode was = original == null ? null : original.get(key);
            @Nullable JsonNode now = fresh.get(key);
            if (now != null) {
                merged.set(key, merge(was, now, TreePath.key(path, key)));
            } else if (was != null) {
                merged.set(key, was);
            }
        }
        return merged;
    }

    private ArrayNode array(@Nullable ArrayNode original, ArrayNode fresh, String path) {
        ArrayNode merged = JsonNodeFactory.instance.arrayNode();
        int[] match = original == null ? none(fresh.size()) : matches(original, fresh);
        for (int i = 0; i < fresh.size(); i++) {
            int was = match[i];
            @Nullable JsonNode old = original == null || was < 0 ? null : original.get(was);
            merged.add(merge(old, fresh.get(i), TreePath.item(path, was)));
        }
        return merged;
    }

    private int[] matches(ArrayNode original, ArrayNode fresh) {
        String name = NAMES.stream()
                .filter(key -> !fresh.isEmpty() && fresh.get(0).has(key))
                .findFirst()
                .orElse("");
        return name.isEmpty() ? byPlace(original, fresh) : byName(original, fresh, name);
    }

    private static int[] byName(ArrayNode original, ArrayNode fresh, String name) {
        Map<String, Deque<Integer>> places = new HashMap<>();
        for (int i = 0; i < original.size(); i++) {
            String key = original.get(i).path(name).asString("");
            places.computeIfAbsent(key, k -> new ArrayDeque<>()).add(i);
        }
        int[] match = none(fresh.size());
        for (int i = 0; i < match.length; i++) {
            Deque<Integer> same = places.get(fresh.get(i).path(name).asString(""));
            match[i] = same == null || same.isEmpty() ? -1 : same.remove();
        }
        return match;
    }

    private int[] byPlace(ArrayNode original, ArrayNode fresh) {
        int[] match = none(fresh.size());
        int shorter = Math.min(original.size(), fresh.size());
        int front = 0;
        while (front < shorter && covers(original.get(front), fresh.get(front))) {
            match[front] = front;
            front++;
        }
        int back = 0;
        while (back < shorter - front
                && covers(original.get(original.size() - 1 - back), fresh.get(fresh.size() - 1 - back))) {
            match[fresh.size() - 1 - back] = original.size() - 1 - back;
            back++;
        }
        if (original.size() == fresh.size()) {
            for (int i = front; i < fresh.size() - back; i++) {
                match[i] = original.get(i).path("do").equals(fresh.get(i).path("do")) ? i : -1;
            }
        }
        return match;
    }

    /** Whether the original says what the new one says, apart from what it has besides and from defaults left out. */
    private boolean covers(JsonNode original, JsonNode fresh) {
        if (fresh instanceof ObjectNode object) {
            Set<String> defaults = implied.getOrDefault(object, Set.of());
            return object.properties().stream().allMatch(e -> {
                JsonNode was = original.get(e.getKey());
                return was == null ? defaults.contains(e.getKey()) : covers(was, e.getValue());
            });
        }
        if (fresh.isArray()) {
            boolean alike = original.size() == fresh.size();
            for (int i = 0; alike && i < fresh.size(); i++) {
                alike = covers(original.get(i), fresh.get(i));
            }
            return alike;
        }
        return same(original, fresh);
    }

    private static boolean same(JsonNode a, JsonNode b) {
        if (a.isNumber() && b.isNumber()) {
            return a.asDouble() == b.asDouble();
        }
        return a.equals(b);
    }

    private static int[] none(int size) {
        int[] match = new int[size];
        Arrays.fill(match, -1);
        return match;
    }
}
