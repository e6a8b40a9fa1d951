package crowdline.storage.passes;

import crowdline.show.bounds.Nearest;
import crowdline.storage.json.DiskNames;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ObjectKeys;
import crowdline.storage.json.ParsedJson;
import crowdline.storage.json.Quoted;
import crowdline.timing.Pass;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Lines of a file of passes as JSON. */
final class PassCodec {
    private static final String PASS = "crowdlinePass";
    private static final String CHANGE = "crowdlinePassChange";
    private static final int VERSION = 1;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final DiskNames<Pass.How> HOW = new DiskNames<>(Pass.How.class, how -> switch (how) {
        case WALKED -> "walked";
        case BY_HAND -> "by-hand";
        case BY_LOG -> "by-log";
        case LIVE -> "live";
    });

    private PassCodec() {}

    /** Why a line is none. */
    static final class Unsound extends Exception {
        private static final long serialVersionUID = 1;
        private final int column;

        Unsound(int column, String message) {
            super(message, null, false, false);
            this.column = column;
        }

        int column() {
            return column;
        }
    }

    /** The line without its line feed. */
    static String write(PassLine line) {
        ObjectNode node = NODES.objectNode();
        if (line instanceof PassLine.Timed timed) {
            put(node, timed.pass());
        } else if (line instanceof PassLine.Change change) {
            node.put(CHANGE, VERSION);
            node.put("id", change.id());
            node.put("at", change.at().toString());
            if (change.counts() != null) {
                node.put("counts", change.counts());
            }
            if (change.note() != null) {
                node.put("note", change.note());
            }
        }
        return node.toString();
    }

    private static void put(ObjectNode node, Pass pass) {
        node.put(PASS, VERSION);
        node.put("id", pass.id());
        node.put("act", pass.actId());
        node.put("variant", pass.variant());
        node.put("how", HOW.of(pass.how()));
        node.put("begunAt", pass.begunAt().toString());
        node.put("counts", pass.counts());
        node.put("note", pass.note());
        node.set("markErrorS", ObjectKeys.numberNode(pass.markErrorS()));
        ArrayNode figures = node.putArray("figures");
        for (Pass.TimedFigure figure : pass.figures()) {
            ObjectNode item = figures.addObject();
            item.put("figure", figure.figureId());
            item.set("startS", ObjectKeys.numberNode(figure.startS()));
            item.set("endS", ObjectKeys.numberNode(figure.endS()));
        }
    }

    /** @throws Unsound if it is not a line of this version, with what is wrong and where */
    static PassLine read(String text) throws Unsound {
        ParsedJson parsed = JsonParsing.parse(text);
        JsonNode root = parsed.root();
        if (!parsed.findings().isEmpty()) {
            ParsedJson.PlacedFinding first = parsed.findings().get(0);
            throw new Unsound(first.where().column(), first.finding().message());
        }
        if (root == null || !(root.has(PASS) || root.has(CHANGE))) {
            throw new Unsound(1, "it is not a pass; one has \"" + PASS + "\": " + VERSION + " in it");
        }
        JsonNode version = root.has(PASS) ? root.path(PASS) : root.path(CHANGE);
        if (version.asInt(0) != VERSION) {
            throw new Unsound(
                    1,
                    "its version is " + Quoted.value(version) + "; this program reads " + VERSION
                            + ", a newer one may read it");
        }
        try {
            return root.has(PASS) ? new PassLine.Timed(pass(root)) : change(root);
        } catch (IllegalArgumentException e) {
            throw new Unsound(1, String.valueOf(e.getMessage()));
        }
    }

    private static PassLine.Change change(JsonNode node) throws Unsound {
        JsonNode counts = node.path("counts");
        JsonNode note = node.path("note");
        return new PassLine.Change(
                text(node, "id"),
                instant(node, "at"),
                counts.isBoolean() ? Boolean.valueOf(counts.asBoolean()) : null,
                note.isString() ? note.asString() : null);
    }

    private static Pass pass(JsonNode node) throws Unsound {
        Pass.How how = how(text(node, "how"));
        JsonNode counts = node.path("counts");
        JsonNode error = node.path("markErrorS");
        List<Pass.TimedFigure> figures = new ArrayList<>();
        JsonNode list = node.path("figures");
        if (!list.isArray()) {
            throw new Unsound(1, "it has no list of figures; add one as \"figures\": […]");
        }
        for (JsonNode item : list) {
            figures.add(new Pass.TimedFigure(text(item, "figure"), number(item, "startS"), number(item, "endS")));
        }
        return new Pass(
                text(node, "id"),
                text(node, "act"),
                text(node, "variant"),
                how,
                instant(node, "begunAt"),
                node.path("note").asString(""),
                figures,
                counts.isMissingNode() || counts.asBoolean(true),
                error.isMissingNode() ? how.markErrorS() : number(node, "markErrorS"));
    }

    private static Pass.How how(String written) throws Unsound {
        List<String> hows = HOW.all();
        if (!hows.contains(written)) {
            throw new Unsound(
                    1,
                    "how it was timed is " + Quoted.text(written) + "; it must be one of " + String.join(", ", hows)
                            + Nearest.hint(written, hows));
        }
        return HOW.constant(written);
    }

    private static String text(JsonNode node, String key) throws Unsound {
        JsonNode value = node.path(key);
        if (!value.isString() || value.asString().isBlank()) {
            throw new Unsound(1, "it has no " + key + "; add it as text");
        }
        return value.asString();
    }

    private static double number(JsonNode node, String key) throws Unsound {
        JsonNode value = node.path(key);
        if (!value.isNumber()) {
            throw new Unsound(1, "it has no " + key + where(node) + "; add it as a number of seconds");
        }
        return value.asDouble();
    }

    private static String where(JsonNode node) {
        String figure = node.path("figure").asString("");
        return figure.isEmpty() ? "" : " of figure " + Quoted.text(figure);
    }

    private static Instant instant(JsonNode node, String key) throws Unsound {
        String written = text(node, key);
        try {
            return Instant.parse(written);
        } catch (DateTimeException e) {
            throw new Unsound(
                    1, key + " is " + Quoted.text(written) + "; it must be a time such as 2030-06-01T12:00:00Z");
        }
    }
}
