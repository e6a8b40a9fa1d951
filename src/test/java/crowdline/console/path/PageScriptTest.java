package crowdline.console.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.flight.body.Vec;
import crowdline.glossary.Explained;
import crowdline.glossary.Glossary;
import crowdline.sheet.still.Place;
import crowdline.sheet.still.Still;
import crowdline.sheet.still.Subject;
import crowdline.show.aircraft.Outline;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.FigureAlone;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.storage.page.GlossaryPage;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page for a browser puts everything where the program puts it. Its script is run by Node, where that is installed. */
class PageScriptTest {
    private static final double WIDE = 620;
    private static final double TALL = 410;
    /** Half a pixel: the page has its numbers in centimetres. */
    private static final double NEAR_PX = 0.5;

    private static final List<String> FIGURES = List.of(
            "loop",
            "slow roll",
            "stall turn",
            "tail slide",
            "torque roll",
            "lomcovak",
            "spin",
            "steep turn",
            "formation loop",
            "opposition pass",
            "mirror pass",
            "break",
            "bomb burst",
            "changing shape",
            "jump",
            "hover",
            "pedal turn",
            "bow",
            "spiral climb",
            "canopy landing",
            "take-off");

    /** Asks the page's own script where things are, in the order of the figures. */
    private static final String ASKED = """
        const told = data.items.map(item => {
          const whole = place(item, true, boxWide, boxTall), now = place(item, false, boxWide, boxTall);
          const drawn = still(item, boxWide, boxTall);
          const t = (item.poses[0] + item.poses[item.poses.length - NUMBERS]) / 2;
          const at = (where, p) => { const s = see(item, p); return [where.x(s[0]), where.y(s[1])]; };
          return { name: item.name, wholeSpan: whole.spanM, nowSpan: now.spanM,
            first: at(whole, pose(item, 0).place), ground: now.y(0),
            now: seen(item, now.spanM).map(one => at(now, poseAt(one, t).place)),
            standing: standing(drawn.item, drawn.at.spanM, drawn.extra).map(i => pose(item, i).t),
            stands: standing(drawn.item, drawn.at.spanM, drawn.extra).map(i => at(drawn.at, pose(drawn.item, i).place)), note: drawn.note,
            groups: groups(drawn.item, seen(drawn.item, drawn.at.spanM), drawn.at.spanM), };
        });
        console.log(JSON.stringify(told));
        """;

    private static final List<String> QUESTIONS = List.of(
            "",
            "loop",
            "hammerhead",
            "tale slide",
            "stal trun",
            "flat sin",
            "ruder",
            "smoke",
            "who is the display director",
            "tailwheel",
            "4 point",
            "8-point roll",
            "chandele",
            "HUMPTY",
            "g",
            "wing",
            "what is a stall",
            "gyrosopic",
            "xyzzy",
            "qban eight",
            "torc roll",
            "square lupe",
            "shandel",
            "nife ege",
            "dairy turn",
            "wrol",
            "zaphod",
            "luup",
            "the");

    @TempDir
    Path folder;

    private static boolean hasNode() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(dir -> Files.isExecutable(Path.of(dir, "node")));
    }

    private JsonNode told(String page) throws IOException, InterruptedException {
        return told(page, ASKED);
    }

    private JsonNode told(String page, String asked) throws IOException, InterruptedException {
        int script = page.indexOf("\"use strict\";");
        String data = page.substring(
                page.indexOf("id=\"data\">") + "id=\"data\">".length(),
                page.indexOf("</script>", page.indexOf("id=\"data\">")));
        Path file = folder.resolve("page.js");
        Files.writeString(
                file,
                "const document = { getElementById: () => ({ textContent: " + new JsonMapper().writeValueAsString(data)
                        + " }) };\n"
                        + page.substring(script + "\"use strict\";".length(), page.indexOf("// The picture."))
                        + "const boxWide = " + WIDE + ", boxTall = " + TALL + ";\n" + asked);
        Process node = new ProcessBuilder("node", file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(node.waitFor()).as(said).isZero();
        return new JsonMapper().readTree(said);
    }

    private static void near(JsonNode spot, double x, double y, String what) {
        assertThat(spot.get(0).asDouble()).as(what + ", across").isCloseTo(x, within(NEAR_PX));
        assertThat(spot.get(1).asDouble()).as(what + ", down").isCloseTo(y, within(NEAR_PX));
    }

    private static void near(JsonNode spot, SkyView view, Place place, Vec at, String what) {
        Eye.Spot seen = view.eye().see(at).orElseThrow();
        near(spot, place.frame().x(seen.alongM()), place.frame().y(seen.upM()), what);
    }

    @Test
    void everythingIsWhereTheProgramPaintsIt() throws Exception {
        assumeThat(hasNode()).as("Node is installed").isTrue();
        Catalogue catalogue = CatalogueFile.shipped();
        Glossary glossary = Glossary.of(catalogue, List.of(), List.of());
        FigureAlone alone = new FigureAlone(catalogue);
        List<Explained> items = new ArrayList<>();
        List<Flown> flown = new ArrayList<>();
        for (String figure : FIGURES) {
            items.add(glossary.find(figure).orElseThrow());
            flown.add(alone.fly(catalogue.find(figure).orElseThrow()).flown());
        }
        JsonNode told = told(GlossaryPage.of(
                "Figures",
                items,
                item -> {
                    Flown one = flown.get(items.indexOf(item));
                    return new GlossaryPage.Drawn(one, Eye.before(one).crowdM());
                },
                Outline.MONOPLANE));

        for (int i = 0; i < FIGURES.size(); i++) {
            String name = FIGURES.get(i);
            JsonNode page = told.get(i);
            SkyView whole = SkyView.whole(flown.get(i), Outline.MONOPLANE);
            double atS = (flown.get(i).fromS() + flown.get(i).toS()) / 2;
            SkyView now = whole.at(atS);
            Place wholePlace = Place.of(whole.subject(), true, 0, 0, WIDE, TALL);
            Place nowPlace = Place.of(now.subject(), false, 0, 0, WIDE, TALL);
            assertThat(page.get("name").asString()).isEqualTo(name);
            assertThat(page.get("wholeSpan").asDouble()).as(name).isCloseTo(wholePlace.spanM(), within(0.05));
            assertThat(page.get("nowSpan").asDouble()).as(name).isCloseTo(nowPlace.spanM(), within(0.05));
            near(
                    page.get("first"),
                    whole,
                    wholePlace,
                    flown.get(i).poses().get(0).place(),
                    name);
            assertThat(page.get("ground").asDouble())
                    .as(name)
                    .isCloseTo(nowPlace.frame().y(0), within(NEAR_PX));
            List<Subject.Seen> all = now.subject().all(nowPlace.spanM());
            assertThat(page.get("now")).as(name).hasSize(all.size());
            for (int k = 0; k < all.size(); k++) {
                near(
                        page.get("now").get(k),
                        now,
                        nowPlace,
                        all.get(k).flown().at(atS).place(),
                        name + " " + k);
            }
            still(page, Still.of(whole.subject(), 0, 0, WIDE, TALL), name);
        }
    }

    private static void still(JsonNode page, Still still, String name) {
        assertThat(page.get("note").asString()).as(name).isEqualTo(still.note());
        times(page.get("groups"), still.groups(), name);
        List<Still.Stand> stands = still.stands();
        times(page.get("standing"), stands.stream().map(Still.Stand::tS).toList(), name);
        for (int k = 0; k < stands.size(); k++) {
            near(page.get("stands").get(k), stands.get(k).x(), stands.get(k).y(), name + " stands " + k);
        }
    }

    private static void times(JsonNode told, List<Double> expected, String name) {
        assertThat(told).as(name).hasSize(expected.size());
        for (int k = 0; k < expected.size(); k++) {
            assertThat(told.get(k).asDouble()).as(name).isCloseTo(expected.get(k), within(0.11));
        }
    }

    @Test
    void whatIsFoundIsWhatTheProgramFinds() throws Exception {
        assumeThat(hasNode()).as("Node is installed").isTrue();
        Glossary glossary = Glossary.of(CatalogueFile.shipped(), TermsFile.shipped(), List.of());
        String page = GlossaryPage.of(
                "All", glossary.items(), item -> new GlossaryPage.Drawn(Flown.NONE, 0), Outline.MONOPLANE);
        JsonNode found = told(
                page,
                "console.log(JSON.stringify(" + new JsonMapper().writeValueAsString(QUESTIONS)
                        + ".map(q => find(q).map(item => item.name))));");

        for (int i = 0; i < QUESTIONS.size(); i++) {
            assertThat(found.get(i).values().stream().map(JsonNode::asString))
                    .as(QUESTIONS.get(i))
                    .containsExactlyElementsOf(glossary.search(QUESTIONS.get(i)).stream()
                            .map(Explained::name)
                            .toList());
        }
    }
}
