package crowdline.storage.show;

import com.networknt.schema.Error;
import crowdline.show.bounds.Nearest;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.storage.json.NumberSlip;
import crowdline.storage.json.Quoted;
import crowdline.storage.json.TreePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Turns a violation of the schema into a sentence: where, which value, what is allowed, the nearest valid name. */
final class SchemaMessages {
    /** The code of a list with more entries than any show has. */
    static final String TOO_MANY = "too-many-entries";

    private static final String LIKE = "such as ";
    /** Where a pattern stands for a list of names, they stand under this key. */
    private static final String EXAMPLES = "examples";

    private final JsonNode schema;

    SchemaMessages(JsonNode schema) {
        this.schema = schema;
    }

    Finding of(Error error, String path, JsonNode value) {
        JsonNode rule = error.getSchemaNode() == null ? schema.path("") : error.getSchemaNode();
        JsonNode around = around(error);
        String is = TreePath.spoken(path) + " is " + Quoted.value(value) + "; it must be ";
        return switch (error.getKeyword()) {
            case "type" -> error("wrong-type", type(is, value, around), path);
            case "required" -> missing(error, path);
            case "enum" -> error("not-allowed", is + oneOf(rule, value), path);
            case "const" -> error("not-allowed", is + Quoted.value(rule), path);
            case "minimum", "maximum", "exclusiveMinimum" -> error("out-of-range", is + range(around), path);
            case "pattern" -> pattern(is, path, value, around);
            case "minItems" ->
                error("empty-list", TreePath.spoken(path) + " is an empty list; it needs at least one entry", path);
            case "maxItems", "maxProperties" ->
                error(
                        TOO_MANY,
                        tooMany(
                                TreePath.spoken(path),
                                value.size(),
                                "has %,d entries; the limit is %,d. Take some out",
                                rule),
                        path);
            case "maxLength" ->
                error(
                        "too-long",
                        tooMany(
                                TreePath.spoken(path),
                                letters(value),
                                "is %,d letters long; the limit is %,d. Shorten it",
                                rule),
                        path);
            case "additionalProperties" -> unknown(error, path, around);
            default -> error("wrong-form", TreePath.spoken(path) + ": " + error.getMessage(), path);
        };
    }

    private static int letters(JsonNode value) {
        String text = value.asString("");
        return text.codePointCount(0, text.length());
    }

    private static String tooMany(String where, int count, String has, JsonNode most) {
        return where + " "
                + String.format(Locale.UK, has + ", or check that it is the right file", count, most.asInt(0));
    }

    /** The one finding of a choice between keys where the value has none of them or several. */
    Finding choice(Error error, String path, int depth, JsonNode value) {
        String pointer = error.getSchemaLocation().getFragment().toString();
        JsonNode options = schema.at(pointer.substring(0, pointer.lastIndexOf("/oneOf") + "/oneOf".length()));
        List<String> keys = new ArrayList<>();
        options.forEach(option -> option.path("required").forEach(key -> keys.add(key.asString())));
        List<String> given = keys.stream().filter(value::has).toList();
        String all = String.join(", ", keys);
        boolean mayHaveNone = options.valueStream().anyMatch(option -> option.has("not"));
        String message = given.isEmpty()
                ? " has none of " + all + "; it needs exactly one of them"
                : " has " + String.join(" and ", given)
                        + (mayHaveNone ? "; it may have one of " : "; it needs exactly one of ") + all;
        return error("choose-one", TreePath.spoken(path) + message, path);
    }

    private Finding missing(Error error, String path) {
        String key = property(error);
        String what = description(error, key);
        return error(
                "missing-key",
                TreePath.spoken(path) + " has no \"" + key + "\"" + (what.isEmpty() ? "" : " (" + what + ")")
                        + "; add it",
                path);
    }

    private static Finding unknown(Error error, String path, JsonNode around) {
        String key = property(error);
        List<String> allowed = new ArrayList<>(around.path("properties").propertyNames());
        String near = Nearest.hint(key, allowed);
        return new Finding(
                Severity.NOTE,
                "unknown-key",
                "the key " + Quoted.text(key) + " in " + TreePath.spoken(path) + " is not known to this program"
                        + (near.isEmpty() ? "; it is kept but not used" : near),
                TreePath.key(path, key));
    }

    private static Finding pattern(String is, String path, JsonNode value, JsonNode around) {
        if (value.asString("").isBlank()) {
            return error("empty-text", TreePath.spoken(path) + " is empty; it needs some text", path);
        }
        if (around.has(EXAMPLES)) {
            String more = "; of several of a kind, the later ones with their number";
            return error("not-allowed", is + oneOf(around.path(EXAMPLES), value) + more, path);
        }
        String what = around.path("description").asString("");
        int like = what.indexOf(LIKE);
        String form = like < 0 ? what : "written like " + what.substring(like + LIKE.length());
        return error("wrong-form", is + form, path);
    }

    private static String type(String is, JsonNode value, JsonNode around) {
        String type = around.path("type").asString("");
        String wanted = switch (type) {
            case "number" -> "a number";
            case "integer" -> "a whole number";
            case "string" -> "text in double quotes";
            case "boolean" -> "true or false";
            case "array" -> "a list in [ ]";
            default -> "an object in { }";
        };
        if (value.isNull()) {
            return is + wanted + ", or left out if it may be";
        }
        if (value.isString() && (type.equals("number") || type.equals("integer"))) {
            return is + wanted + NumberSlip.hint(value.asString());
        }
        boolean quotedWord =
                value.isString() && type.equals("boolean") && value.asString().matches("true|false");
        return is + wanted + (quotedWord ? "; take the quotes away" : "");
    }

    private static String oneOf(JsonNode options, JsonNode value) {
        List<String> names = options.valueStream().map(JsonNode::asString).toList();
        String allowed = "one of " + names.stream().collect(Collectors.joining(", "));
        return allowed + (value.isString() ? Nearest.hint(value.asString(), names) : "");
    }

    private static String range(JsonNode around) {
        @Nullable String least = text(around, "minimum");
        @Nullable String most = text(around, "maximum");
        if (least != null && most != null) {
            return "from " + least + " to " + most;
        }
        if (most != null) {
            String why = around.path("description").asString("");
            return "at most " + most + (why.isEmpty() ? "" : ", as " + why);
        }
        return least != null ? least + " or more" : "above " + text(around, "exclusiveMinimum");
    }

    private static @Nullable String text(JsonNode around, String key) {
        return around.has(key) ? around.path(key).toString() : null;
    }

    private static String property(Error error) {
        String property = error.getProperty();
        return property == null ? String.valueOf(error.getArguments()[0]) : property;
    }

    /** The schema object in which the violated keyword stands. */
    private JsonNode around(Error error) {
        String pointer = error.getSchemaLocation().getFragment().toString();
        return schema.at(pointer.substring(0, Math.max(0, pointer.lastIndexOf("/" + error.getKeyword()))));
    }

    /** What a key is for: said where the key is asked for, or in a rule around that. */
    private String description(Error error, String key) {
        String pointer = error.getSchemaLocation().getFragment().toString();
        while (!pointer.isEmpty()) {
            pointer = pointer.substring(0, pointer.lastIndexOf('/'));
            String what = schema.at(pointer)
                    .path("properties")
                    .path(key)
                    .path("description")
                    .asString("");
            if (!what.isEmpty()) {
                return what;
            }
        }
        return "";
    }

    private static Finding error(String code, String message, String path) {
        return new Finding(Severity.ERROR, code, message, path);
    }
}
