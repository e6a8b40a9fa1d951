package crowdline.storage.show;

import com.networknt.schema.Error;
import com.networknt.schema.ExecutionContext;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import crowdline.show.check.Finding;
import crowdline.storage.json.TreePath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** The JSON Schema of the show file, and what it finds wrong, in plain words. */
final class ShowSchema {
    private static final String RESOURCE = "/crowdline/show-schema.json";
    private static final int MOST_ERRORS = 2_000;

    private final Schema schema;
    private final SchemaMessages words;

    /**
     * What a schema found.
     *
     * @param findings in no order
     * @param unknownKeys the paths of the keys it does not know
     * @param isWhole false if there was so much to find that it was given up
     */
    record Verdict(List<Finding> findings, Set<String> unknownKeys, boolean isWhole) {}

    /** Errors until there are more than anybody reads, or than the memory holds. */
    private static final class Errors extends ArrayList<Error> {
        private static final long serialVersionUID = 1;

        @Override
        public boolean add(Error error) {
            if (size() >= MOST_ERRORS) {
                throw new Enough();
            }
            return super.add(error);
        }
    }

    private static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1;

        Enough() {
            super("enough errors", null, false, false);
        }
    }

    ShowSchema() {
        try (InputStream in = Objects.requireNonNull(ShowSchema.class.getResourceAsStream(RESOURCE), RESOURCE)) {
            schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in, InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        words = new SchemaMessages(schema.getSchemaNode());
    }

    /** @param spoilt paths about whose value enough was said already */
    Verdict judge(JsonNode root, Set<String> spoilt) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        Set<String> unknown = new HashSet<>();
        List<NodePath> choices = new ArrayList<>();
        Errors errors = new Errors();
        boolean isWhole = isValidated(root, errors);
        for (Error error : errors) {
            String path = path(error.getInstanceLocation());
            int choice = choiceDepth(error.getEvaluationPath());
            if (spoilt.contains(path)) {
                continue;
            }
            if (choice > 0) {
                // Every branch of a choice complains; one sentence about the choice says it all.
                NodePath place = upTo(error.getEvaluationPath(), choice);
                boolean said = choices.contains(place) && findings.containsKey(path + " " + place);
                choices.add(place);
                if (!said) {
                    findings.put(path + " " + place, words.choice(error, path, choice, at(root, error)));
                }
                continue;
            }
            Finding finding = words.of(error, path, at(root, error));
            if (error.getKeyword().equals("additionalProperties")) {
                unknown.add(finding.path());
            }
            findings.putIfAbsent(finding.path() + " " + finding.message(), finding);
        }
        List<Finding> tooMany = findings.values().stream()
                .filter(found -> found.code().equals(SchemaMessages.TOO_MANY))
                .toList();
        // What is wrong in each entry of a list that is no show's hides that it is none.
        return new Verdict(tooMany.isEmpty() ? List.copyOf(findings.values()) : tooMany, unknown, isWhole);
    }

    private boolean isValidated(JsonNode root, Errors errors) {
        try {
            schema.validate(root, (ExecutionContext context) -> context.setErrors(errors));
            return true;
        } catch (Enough e) {
            return false;
        }
    }

    private static JsonNode at(JsonNode root, Error error) {
        JsonNode node = root;
        NodePath location = error.getInstanceLocation();
        for (int i = 0; i < location.getNameCount(); i++) {
            node = location.getElement(i) instanceof Integer index ? node.path(index) : node.path(location.getName(i));
        }
        return node;
    }

    private static String path(NodePath location) {
        String path = "";
        for (int i = 0; i < location.getNameCount(); i++) {
            path = location.getElement(i) instanceof Integer index
                    ? TreePath.item(path, index)
                    : TreePath.key(path, location.getName(i));
        }
        return path;
    }

    /** How many steps of an evaluation path lead to its choice, that one included; 0 without one. */
    private static int choiceDepth(NodePath path) {
        for (int i = 0; i < path.getNameCount(); i++) {
            if (path.getName(i).equals("oneOf")) {
                return i + 1;
            }
        }
        return 0;
    }

    private static NodePath upTo(NodePath path, int count) {
        NodePath shortened = path;
        while (shortened.getNameCount() > count) {
            shortened = shortened.getParent();
        }
        return shortened;
    }
}
