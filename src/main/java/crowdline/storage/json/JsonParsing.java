package crowdline.storage.json;

import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.storage.file.Where;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One pass over a text: its tree and the place of everything in it. It goes on where it can (a key given twice, a
 * number that is none) and stops where it must (not JSON, too deep, too much).
 */
public final class JsonParsing {
    /** No show file nests deeper than about 10 levels. */
    static final int GREATEST_DEPTH = 64;
    /** A season's show file has some ten thousand values; tuned so that any file is read and shown within 256 MB. */
    static final int MOST_VALUES = 200_000;

    private static final int LONGEST_NUMBER = 60;
    /** Nothing in any file is as large as a long; what checks whole numbers fails on more. */
    private static final double LARGEST_NUMBER = Long.MAX_VALUE;

    private static final int LARGEST_EXPONENT = 300;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private final String text;
    private final JsonNodeFactory nodes = JsonNodeFactory.instance;
    private final Map<String, Where> places = new HashMap<>();
    private final List<ParsedJson.PlacedFinding> findings = new ArrayList<>();
    private final Set<String> spoilt = new HashSet<>();
    private int values;

    private JsonParsing(String text) {
        this.text = text;
    }

    public static ParsedJson parse(String text) {
        return new JsonParsing(text).parse();
    }

    private ParsedJson parse() {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            if (parser.nextToken() == null) {
                throw new Stopped("empty-file", "the file is empty; it must begin with {", Where.START);
            }
            JsonNode root = value(parser, "", 1);
            if (parser.nextToken() != null) {
                throw new Stopped(
                        "text-after-end",
                        "there is something after the closing bracket of the file; take it out",
                        where(parser.currentTokenLocation()));
            }
            return new ParsedJson(root, places, findings, spoilt);
        } catch (Stopped stopped) {
            findings.add(stopped.finding());
        } catch (JacksonException e) {
            Where where = where(e.getLocation());
            String message = SyntaxMessages.of(text, e, where);
            findings.add(new ParsedJson.PlacedFinding(new Finding(Severity.ERROR, "not-json", message, ""), where));
        }
        return new ParsedJson(null, places, findings, spoilt);
    }

    private JsonNode value(JsonParser parser, String path, int depth) throws Stopped {
        Where where = where(parser.currentTokenLocation());
        places.put(path, where);
        if (++values > MOST_VALUES) {
            throw new Stopped(
                    "too-many-values",
                    String.format(
                            Locale.UK,
                            "the file holds more than %,d values; a show file has a few thousand, so this is something"
                                    + " else",
                            MOST_VALUES),
                    where);
        }
        JsonToken token = parser.currentToken();
        if (token.isStructStart() && depth > GREATEST_DEPTH) {
            throw new Stopped(
                    "too-deep",
                    "the file nests brackets deeper than " + GREATEST_DEPTH + " levels; a show file needs about 10, so"
                            + " this is something else",
                    where);
        }
        return switch (token) {
            case START_OBJECT -> object(parser, path, depth);
            case START_ARRAY -> array(parser, path, depth);
            case VALUE_STRING -> nodes.stringNode(parser.getString());
            case VALUE_TRUE -> nodes.booleanNode(true);
            case VALUE_FALSE -> nodes.booleanNode(false);
            case VALUE_NULL -> nodes.nullNode();
            default -> number(parser.getString(), path, where);
        };
    }

    private ObjectNode object(JsonParser parser, String path, int depth) throws Stopped {
        ObjectNode object = nodes.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String keyPath = TreePath.key(path, key);
            Where keyPlace = where(parser.currentTokenLocation());
            boolean again = object.has(key);
            parser.nextToken();
            if (again) {
                Where first = places.getOrDefault(keyPath + ParsedJson.KEY_MARK, Where.START);
                error(
                        "duplicate-key",
                        "the key " + Quoted.text(key) + " appears twice in " + TreePath.spoken(path)
                                + ", first in line " + first.line() + "; keep one of them",
                        keyPath,
                        keyPlace);
                // What is below the second one is read to find the end of it, under a path that names nothing.
                value(parser, keyPath + " again", depth + 1);
            } else {
                places.put(keyPath + ParsedJson.KEY_MARK, keyPlace);
                object.set(key, value(parser, keyPath, depth + 1));
            }
        }
        return object;
    }

    private ArrayNode array(JsonParser parser, String path, int depth) throws Stopped {
        ArrayNode array = nodes.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(parser, TreePath.item(path, array.size()), depth + 1));
        }
        return array;
    }

    private JsonNode number(String written, String path, Where where) {
        boolean none = written.indexOf('N') >= 0 || written.indexOf('I') >= 0;
        double value = none ? Double.NaN : Double.parseDouble(written);
        if (!(Math.abs(value) <= LARGEST_NUMBER)) {
            error(
                    "not-a-number",
                    TreePath.spoken(path) + " is " + written + (none ? "" : ", too large a number")
                            + "; it must be an ordinary number",
                    path,
                    where);
            return nodes.numberNode(1);
        }
        if (written.length() > LONGEST_NUMBER) {
            return nodes.numberNode(value);
        }
        if (written.chars().allMatch(c -> c == '-' || Character.isDigit(c)) && written.length() <= 18) {
            return nodes.numberNode(Long.parseLong(written));
        }
        // Decimal keeps 0.10 as it was written; beyond these exponents its digits would fill the memory.
        int exponent = Math.abs(Math.getExponent(value));
        return value == 0 || exponent > LARGEST_EXPONENT
                ? nodes.numberNode(value)
                : nodes.numberNode(new BigDecimal(written));
    }

    private void error(String code, String message, String path, Where where) {
        spoilt.add(path);
        findings.add(new ParsedJson.PlacedFinding(new Finding(Severity.ERROR, code, message, path), where));
    }

    private static Where where(TokenStreamLocation location) {
        return new Where(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    /** Reading cannot go on. */
    private static final class Stopped extends Exception {
        private static final long serialVersionUID = 1;
        private final transient ParsedJson.PlacedFinding finding;

        Stopped(String code, String message, Where where) {
            super(message, null, false, false);
            this.finding = new ParsedJson.PlacedFinding(new Finding(Severity.ERROR, code, message, ""), where);
        }

        ParsedJson.PlacedFinding finding() {
            return finding;
        }
    }
}
