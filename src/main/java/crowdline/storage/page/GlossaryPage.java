package crowdline.storage.page;

import crowdline.flight.body.Vec;
import crowdline.glossary.Explained;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Company;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Facet;
import crowdline.sight.picture.Facet.Tone;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Solid;
import crowdline.sight.picture.Solids;
import crowdline.sight.picture.Track;
import crowdline.storage.json.DiskNames;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Everything a glossary explains as one page for a browser, with its figures drawn and moving. The page holds all it needs and
 * asks no network for anything. Texts reach it as data, never as markup.
 */
public final class GlossaryPage {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String TEMPLATE = "/crowdline/page/glossary.html";
    private static final String DATA = "@DATA@";

    private static final DiskNames<Tone> TONE = new DiskNames<>(Tone.class, tone -> switch (tone) {
        case TOP -> "top";
        case UNDERSIDE -> "underside";
        case BAND -> "band";
        case SIDE -> "side";
        case NOSE -> "nose";
        case TAIL -> "tail";
        case GLASS -> "glass";
    });

    private static final DiskNames<Outline> OUTLINE = new DiskNames<>(Outline.class, outline -> switch (outline) {
        case MONOPLANE -> "monoplane";
        case BIPLANE -> "biplane";
        case JET -> "jet";
        case GLIDER -> "glider";
        case HELICOPTER -> "helicopter";
        case CANOPY -> "canopy";
        case JUMPER -> "jumper";
    });

    private GlossaryPage() {}

    /**
     * A figure as the page flies it.
     *
     * @param flown how; {@link Flown#NONE} where it is not drawn
     * @param eyeM from the eye to the display line, metres
     */
    public record Drawn(Flown flown, double eyeM) {}

    /**
     * The page as HTML.
     *
     * @param title over it
     * @param items what is explained, in the order listed
     * @param drawn how each item is flown
     * @param outline the shape of what flies
     * @throws IllegalStateException if the program was put together without the page's form
     */
    public static String of(String title, List<Explained> items, Function<Explained, Drawn> drawn, Outline outline) {
        ObjectNode root = JSON.objectNode();
        root.put("title", title);
        root.put("eyeHeightM", Eye.STANDING_M);
        root.put("outline", OUTLINE.of(outline));
        ArrayNode all = root.putArray("items");
        Set<Outline> outlines = new TreeSet<>(Set.of(outline));
        for (Explained item : items) {
            Drawn how = drawn.apply(item);
            put(all.addObject(), item, how);
            how.flown().company().outline().ifPresent(outlines::add);
            how.flown().company().others().stream()
                    .flatMap(track -> Stream.ofNullable(track.outline()))
                    .forEach(outlines::add);
        }
        ObjectNode solids = root.putObject("solids");
        outlines.forEach(each -> put(solids.putArray(OUTLINE.of(each)), Solids.of(each)));
        // Nothing in it can end the script it stands in, nor begin anything else.
        String data = root.toString()
                .replace("&", "\\u0026")
                .replace("<", "\\u003c")
                .replace(">", "\\u003e")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
        return template().replace(DATA, data);
    }

    private static void put(ArrayNode facets, Solid solid) {
        for (Facet facet : solid.facets()) {
            ObjectNode node = facets.addObject();
            ArrayNode corners = node.putArray("corners");
            facet.corners().forEach(corner -> add(corners.addArray(), corner, 4));
            node.put("outside", TONE.of(facet.outside()));
            node.put("inside", TONE.of(facet.inside()));
        }
    }

    private static void put(ArrayNode numbers, List<Pose> poses) {
        for (Pose pose : poses) {
            numbers.add(rounded(pose.tS(), 3));
            add(numbers, pose.place(), 2);
            add(numbers, pose.nose(), 3);
            add(numbers, pose.up(), 3);
            numbers.add(rounded(pose.g(), 2));
        }
    }

    private static void put(ObjectNode node, Explained item, Drawn drawn) {
        node.put("name", item.name());
        item.aliases().forEach(node.putArray("aliases")::add);
        node.put("group", item.group());
        ArrayNode sections = node.putArray("sections");
        for (Explained.Section section : item.sections()) {
            sections.addObject().put("title", section.title()).put("text", section.text());
        }
        node.put("sayIt", item.sayIt());
        node.put("source", item.source());
        node.put("eyeM", rounded(drawn.eyeM(), 1));
        put(node.putArray("poses"), drawn.flown().poses());
        Company company = drawn.flown().company();
        node.put("sketched", company.sketched());
        company.outline().ifPresent(own -> node.put("outline", OUTLINE.of(own)));
        ArrayNode others = node.putArray("others");
        for (Track track : company.others()) {
            ObjectNode other = others.addObject();
            put(other.putArray("poses"), track.poses());
            ArrayNode slots = other.putArray("slots");
            track.slots().forEach(slot -> add(slots, slot, 3));
            Outline own = track.outline();
            if (own != null) {
                other.put("outline", OUTLINE.of(own));
            }
            other.put("spans", track.spans());
            other.put("onARope", track.onARope());
        }
        ArrayNode captions = node.putArray("captions");
        for (Caption caption : drawn.flown().captions()) {
            captions.addArray().add(rounded(caption.atS(), 3)).add(caption.words());
        }
    }

    private static void add(ArrayNode numbers, Vec vec, int digits) {
        numbers.add(rounded(vec.x(), digits)).add(rounded(vec.y(), digits)).add(rounded(vec.z(), digits));
    }

    private static double rounded(double value, int digits) {
        double per = Math.pow(10, digits);
        return Math.rint(value * per) / per + 0.0;
    }

    private static String template() {
        try (InputStream in = GlossaryPage.class.getResourceAsStream(TEMPLATE)) {
            if (in == null) {
                throw new IllegalStateException("the program was put together without " + TEMPLATE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the form of the glossary's page cannot be read", e);
        }
    }
}
