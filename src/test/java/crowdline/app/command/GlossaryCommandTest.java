package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class GlossaryCommandTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private JsonNode json() {
        return new ObjectMapper().readTree(caught.out());
    }

    private static Set<String> keys(JsonNode node) {
        return new TreeSet<>(node.propertyNames());
    }

    @Test
    void everythingIsPrintedWithAllItsKeys() {
        assertThat(run("glossary", "--json")).isEqualTo(ExitCode.FINE);
        assertThat(json().path("figures"))
                .hasSizeGreaterThan(70)
                .allSatisfy(figure -> assertThat(keys(figure))
                        .contains(
                                "name",
                                "aliases",
                                "whatItIs",
                                "lookFor",
                                "whyHard",
                                "handsAndFeet",
                                "pilotFeels",
                                "mixUps",
                                "sayIt",
                                "elements"));
        assertThat(json().path("terms"))
                .hasSizeGreaterThan(60)
                .allSatisfy(term -> assertThat(keys(term)).contains("name", "aliases", "whatItIs", "sayIt", "source"));
    }

    @Test
    void elementsAreThoseOfTheShowFile() {
        run("glossary", "loop", "--json");
        assertThat(json().path("figures")
                        .path(0)
                        .path("elements")
                        .path(0)
                        .path("do")
                        .asString(""))
                .isEqualTo("arc");
        assertThat(json().path("terms")).isEmpty();
    }

    @Test
    void aTermIsExplainedByAnyOfItsNames() {
        assertThat(run("glossary", "hammerhead")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .startsWith("stall turn (")
                .contains("Look for:", "See also:", "Where this comes from:");
        assertThat(run("glossary", "angle", "of", "attack")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).startsWith("angle of attack (");
    }

    @Test
    void aMisspeltTermIsNotFoundButGuessed() {
        assertThat(run("glossary", "ruder")).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.err()).contains("nothing in the glossary is called \"ruder\"; did you mean \"rudder\"?");
        assertThat(caught.out()).isEmpty();
    }

    @Test
    void nothingFoundIsStillJson() {
        assertThat(run("glossary", "--search", "qqqq", "--json")).isEqualTo(ExitCode.BLOCKED);
        assertThat(json().path("figures").isArray()).isTrue();
        assertThat(json().path("figures")).isEmpty();
        assertThat(caught.err()).contains("try fewer words");
    }

    @Test
    void searchLooksIntoTheTexts() {
        assertThat(run("glossary", "--search", "ruder")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).startsWith("rudder ");
        assertThat(run("glossary", "--search", "sycamore seed", "--json")).isEqualTo(ExitCode.FINE);
        assertThat(json().path("figures").path(0).path("name").asString("")).isEqualTo("spin");
    }

    @Test
    void wrongUseIsToldApart() {
        assertThat(run("glossary", "loop", "--search", "roll")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("glossary", "--search", " ")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("glossary", "--show", folder.resolve("none.json").toString()))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("glossary", "--nosuch")).isEqualTo(ExitCode.UNUSABLE);
    }

    @Test
    void aShowsOwnWordsComeFirst() throws IOException {
        String own = Files.readString(SHOW)
                .replaceFirst(
                        "\\{",
                        "{\"terms\": [{\"name\": \"the Elm\", \"whatItIs\": \"The tall tree.\"},"
                                + " {\"name\": \"datum\", \"whatItIs\": \"The flagpole, here.\"}],");
        Path show = Files.writeString(folder.resolve("own.json"), own);
        assertThat(run("glossary", "the elm", "--show", show.toString())).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("The tall tree.");
        assertThat(run("glossary", "datum", "--show", show.toString(), "--json"))
                .isEqualTo(ExitCode.FINE);
        assertThat(List.of(json().path("terms").path(0).path("whatItIs").asString("")))
                .containsExactly("The flagpole, here.");
    }

    /** The data within the page, as a browser reads it. */
    private static JsonNode data(String page) {
        String open = "<script type=\"application/json\" id=\"data\">";
        int from = page.indexOf(open) + open.length();
        return new ObjectMapper().readTree(page.substring(from, page.indexOf("</script>", from)));
    }

    @Test
    void pageForABrowserHoldsEverythingAndAsksForNothingElse() throws IOException {
        Path file = folder.resolve("glossary.html");
        assertThat(run("glossary", "--html", file.toString())).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains(" pages of the glossary, in " + file);
        String page = Files.readString(file);
        assertThat(page).contains("default-src 'none'").doesNotContain("http:", "https:", "src=", "@import", "url(");
        JsonNode data = data(page);
        assertThat(data.path("items"))
                .hasSizeGreaterThan(150)
                .allSatisfy(item -> assertThat(keys(item))
                        .contains(
                                "name",
                                "aliases",
                                "group",
                                "sections",
                                "sayIt",
                                "source",
                                "poses",
                                "captions",
                                "eyeM"));
        assertThat(data.path("items"))
                .filteredOn(item -> item.path("name").asString().equals("loop"))
                .singleElement()
                .satisfies(loop -> {
                    // Eleven numbers a pose: time, place, nose, up, load.
                    assertThat(loop.path("poses").size() % 11).isZero();
                    assertThat(loop.path("poses").size()).isGreaterThan(11 * 60);
                    assertThat(loop.path("captions")).hasSizeGreaterThan(3);
                });
    }

    @Test
    void wordsOfAShowReachThePageAsDataAndNeverAsMarkup() throws IOException {
        String nasty = "</script><script>alert(1)</script><!-- &amp; \u2028 <img src=x>";
        Path own = folder.resolve("own.json");
        String show = Files.readString(SHOW);
        Files.writeString(
                own,
                show.replaceFirst(
                        "\\{",
                        "{\"terms\": [{\"name\": \"zz trap\", \"whatItIs\": "
                                + Matcher.quoteReplacement(new ObjectMapper().writeValueAsString(nasty))
                                + "}],"));
        Path file = folder.resolve("glossary.html");
        assertThat(run("glossary", "zz", "trap", "--show", own.toString(), "--html", file.toString()))
                .as(caught.err())
                .isEqualTo(ExitCode.FINE);
        String page = Files.readString(file);
        assertThat(page).doesNotContain("alert(1)</script>", "<img src=x>");
        assertThat(data(page)
                        .path("items")
                        .get(0)
                        .path("sections")
                        .get(0)
                        .path("text")
                        .asString())
                .isEqualTo(nasty);
    }

    @Test
    void pagesToPrintHoldFiguresAndWords() throws IOException {
        Path file = folder.resolve("glossary.pdf");
        assertThat(run("glossary", "--search", "spin", "--pdf", file.toString()))
                .isEqualTo(ExitCode.FINE);
        assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
        assertThat(Files.size(file)).isGreaterThan(20_000);
    }

    @Test
    void aFileThatCannotBeWrittenAndAKindThatCannotFlyAreRefused() {
        assertThat(run("glossary", "--html", "page.txt")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("--html is page.txt; its name must end in .html");
        assertThat(run("glossary", "--pdf", folder.resolve("no/x.pdf").toString()))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no folder");
        assertThat(run("glossary", "--html", "x.html", "--aircraft", "helicopter"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("figures cannot be flown with a helicopter, which is only timed");
        assertThat(run("glossary", "--html", "x.html", "--aircraft", "glidr")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no kind \"glidr\"").contains("glider");
    }

    private Path showWith(String name, String terms) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(
                file,
                Files.readString(SHOW).replaceFirst("\\{", Matcher.quoteReplacement("{\"terms\": " + terms + ",")));
        return file;
    }

    @Test
    void wordsOfTwoShowsAreMergedAndWhereTheyDifferIsSaid() throws IOException {
        String mine = showWith("mine.json", "[{\"name\": \"the rope\", \"whatItIs\": \"Nobody crosses it.\"}]")
                .toString();
        String other = showWith(
                        "other.json",
                        "[{\"name\": \"the rope\", \"whatItIs\": \"Stay behind it.\"},"
                                + " {\"name\": \"crash gate\", \"whatItIs\": \"For fire engines.\"}]")
                .toString();
        assertThat(run("glossary", "--show", mine, "--merge", other, "--into", mine))
                .as(caught.err())
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains(
                        "new: crash gate: For fire engines.",
                        "explained otherwise: the rope",
                        "kept: Nobody crosses it.",
                        "other: Stay behind it.",
                        "1 new, 1 explained otherwise");
        assertThat(run("glossary", "the", "rope", "--show", mine)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("Nobody crosses it.");
        assertThat(run("glossary", "--show", mine, "--merge", other, "--theirs", "--into", mine))
                .isEqualTo(ExitCode.FINE);
        assertThat(run("glossary", "the", "rope", "--show", mine)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("Stay behind it.");
        assertThat(run("glossary", "--merge", other)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("name them with --show and --merge");
    }

    @Test
    void ownWordsGoOutAsJsonAndIntoAnotherShow() throws IOException {
        String mine = showWith("mine.json", "[{\"name\": \"the rope\", \"whatItIs\": \"Nobody crosses it.\"}]")
                .toString();
        assertThat(run("glossary", "--show", mine, "--json")).isEqualTo(ExitCode.FINE);
        Path all = Files.writeString(folder.resolve("all.json"), caught.out());
        String other = Files.copy(SHOW, folder.resolve("other.json")).toString();
        assertThat(run("glossary", "--show", other, "--merge", all.toString(), "--into", other))
                .as(caught.err())
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("new: the rope: Nobody crosses it.");
        assertThat(run("glossary", "the", "rope", "--show", other)).isEqualTo(ExitCode.FINE);

        Path bad = Files.writeString(
                folder.resolve("bad.json"), "{\"terms\": [{\"name\": \"the rope\"}, {\"whatItIs\": 7}]}");
        assertThat(run("glossary", "--show", other, "--merge", bad.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("the words in", "whatItIs of the rope is empty");
        for (String what : List.of("{\"figures\": 3}", "{\"terms\": [7]}", "{\"terms\": null}")) {
            Files.writeString(bad, what);
            assertThat(run("glossary", "--show", other, "--merge", bad.toString()))
                    .isEqualTo(ExitCode.UNUSABLE);
            assertThat(caught.err()).as(what).contains("must be a list");
        }
        Path cut = Files.writeString(folder.resolve("cut.json"), "{\"terms\": [");
        assertThat(run("glossary", "--show", other, "--merge", cut.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).isNotBlank();
    }

    @Test
    void ownWordsGoToASpreadsheetAndBack() throws IOException {
        String mine = showWith("mine.json", "[{\"name\": \"the rope\", \"whatItIs\": \"Nobody crosses it.\"}]")
                .toString();
        Path csv = folder.resolve("words.csv");
        assertThat(run("table", mine, "terms", "--out", csv.toString())).isEqualTo(ExitCode.FINE);
        Files.writeString(csv, Files.readString(csv).replace("Nobody crosses it.", "Please stay behind it."));
        assertThat(run("table", mine, "terms", "--from", csv.toString(), "--into", mine))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("changes the rope: Please stay behind it.", "1 of 1 rows can be taken.");
        assertThat(Files.readString(Path.of(mine))).contains("Please stay behind it.");
    }
}
