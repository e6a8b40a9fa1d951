package crowdline.storage.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** The keys of one object whose form was checked before. */
public final class Fields {
    private final JsonNode node;
    private final String path;
    private final Refusals refusals;

    public Fields(JsonNode node, String path, Refusals refusals) {
        this.node = node;
        this.path = path;
        this.refusals = refusals;
    }

    public String path() {
        return path;
    }

    public Refusals refusals() {
        return refusals;
    }

    public boolean has(String key) {
        return node.has(key);
    }

    public String text(String key) {
        return node.path(key).asString("");
    }

    @Nullable
    public String textOrNull(String key) {
        return has(key) ? text(key) : null;
    }

    public double number(String key) {
        return node.path(key).asDouble(0);
    }

    public double number(String key, double otherwise) {
        return has(key) ? number(key) : otherwise;
    }

    @Nullable
    public Double numberOrNull(String key) {
        return has(key) ? Double.valueOf(number(key)) : null;
    }

    public int whole(String key, int otherwise) {
        return node.path(key).asInt(otherwise);
    }

    public boolean flag(String key) {
        return node.path(key).asBoolean(false);
    }

    public <E extends Enum<E>> E choice(String key, DiskNames<E> names) {
        return names.constant(text(key));
    }

    public <E extends Enum<E>> E choice(String key, DiskNames<E> names, E otherwise) {
        return has(key) ? choice(key, names) : otherwise;
    }

    /** The object under a key; an empty one if there is none. */
    public Fields group(String key) {
        return new Fields(node.path(key), TreePath.key(path, key), refusals);
    }

    /** What can be made of a list; entries that are refused are noted and left out. No list is an empty one. */
    public <T> List<T> list(String key, Function<Fields, T> maker) {
        JsonNode list = node.path(key);
        List<T> made = new ArrayList<>(list.size());
        for (int i = 0; i < list.size(); i++) {
            Fields item = new Fields(list.get(i), TreePath.item(TreePath.key(path, key), i), refusals);
            refusals.attempt(item.path, () -> maker.apply(item)).ifPresent(made::add);
        }
        return made;
    }

    public List<String> texts(String key) {
        return node.path(key).valueStream().map(item -> item.asString("")).toList();
    }

    /** The keys there are, in their order. */
    public List<String> keys() {
        return node.properties().stream().map(Map.Entry::getKey).toList();
    }

    public Map<String, String> textByKey(String key) {
        Map<String, String> texts = new LinkedHashMap<>();
        node.path(key)
                .properties()
                .forEach(e -> texts.put(e.getKey(), e.getValue().asString("")));
        return texts;
    }
}
