package crowdline.storage.json;

import java.util.Iterator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * JSON laid out for people: two spaces a level, and what fits on one line stays on it, so that an element of a figure is
 * one line.
 */
public final class JsonLayout {
    private static final int WIDTH = 110;

    private JsonLayout() {}

    /** The tree as text with a line end at its end. */
    public static String text(JsonNode root) {
        StringBuilder out = new StringBuilder();
        write(root, 0, 0, out);
        return out.append('\n').toString();
    }

    private static void write(JsonNode node, int indent, int used, StringBuilder out) {
        if (!node.isContainer() || node.isEmpty()) {
            out.append(node);
            return;
        }
        StringBuilder oneLine = new StringBuilder();
        if (flat(node, oneLine, WIDTH - used) && oneLine.length() <= WIDTH - used) {
            out.append(oneLine);
            return;
        }
        String pad = "  ".repeat(indent + 1);
        out.append(node.isObject() ? "{" : "[");
        String separator = "\n";
        if (node.isObject()) {
            for (var entry : node.properties()) {
                String key = key(entry.getKey());
                out.append(separator).append(pad).append(key).append(": ");
                write(entry.getValue(), indent + 1, pad.length() + key.length() + 2, out);
                separator = ",\n";
            }
        } else {
            for (JsonNode item : node) {
                out.append(separator).append(pad);
                write(item, indent + 1, pad.length(), out);
                separator = ",\n";
            }
        }
        out.append('\n').append("  ".repeat(indent)).append(node.isObject() ? "}" : "]");
    }

    /** Writes on one line; gives up and answers false once it is longer than {@code room}. */
    private static boolean flat(JsonNode node, StringBuilder out, int room) {
        if (out.length() > room) {
            return false;
        }
        if (!node.isContainer()) {
            out.append(node);
            return true;
        }
        boolean fits = true;
        if (node.isObject()) {
            out.append('{');
            for (var it = node.properties().iterator(); fits && it.hasNext(); ) {
                var entry = it.next();
                out.append(key(entry.getKey())).append(": ");
                fits = flat(entry.getValue(), out, room);
                out.append(it.hasNext() ? ", " : "");
            }
            out.append('}');
        } else {
            out.append('[');
            for (Iterator<JsonNode> it = node.iterator(); fits && it.hasNext(); ) {
                fits = flat(it.next(), out, room);
                out.append(it.hasNext() ? ", " : "");
            }
            out.append(']');
        }
        return fits;
    }

    private static String key(String key) {
        return JsonNodeFactory.instance.stringNode(key).toString();
    }
}
