package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FactsCommandTest {
    private static final String DEMO = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";
    private static final String SOLO = "jackanapes-solo";

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private JsonNode json(String... args) {
        caught.clear();
        String[] all = Stream.concat(Stream.of("facts", DEMO, "--json"), Stream.of(args))
                .toArray(String[]::new);
        assertThat(run(all)).isEqualTo(ExitCode.FINE);
        assertThat(caught.err()).isEmpty();
        return new JsonMapper().readTree(caught.out());
    }

    @Test
    void factsArePrintedWithTheirNumbersAndTheCaution() {
        assertThat(run("facts", DEMO, "--act", SOLO)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("the whole act", "stall turn", "beginning 12 June 2027, 14:30", "Sunset 21:", "look low")
                .containsPattern("1,\\d\\d\\d\\.\\d ft +This is the highest point of the act: about \\w+ hundred feet")
                .contains("A load says nothing about a pilot's health.")
                .doesNotContain("Thistledown", "into the sun");
        assertThat(caught.err()).isEmpty();
    }

    @Test
    void aHeightTypedTenTimesTooSmallCostsTheFactsOfHeightAndNoOthers() throws IOException {
        Path slip = folder.resolve("slip.json");
        String demo = Files.readString(Path.of("src/test/resources/crowdline/shows/wrackenholt-evening.json"));
        Files.writeString(slip, demo.replace("\"heightFt\": 2350", "\"heightFt\": 235"));
        run("facts", slip.toString());
        assertThat(caught.err()).isEmpty();
        assertThat(caught.out())
                .containsPattern(
                        "no fact: it comes to -[0-9,]+ ft, below the ground, so no fact is made of its heights")
                .contains("as heavy")
                .contains("A load says nothing about a pilot's health.");
    }

    @Test
    void keysAreTheseInThisOrderAndNoOthers() {
        JsonNode all = json();
        assertThat(all.propertyNames()).containsExactly("acts");
        assertThat(all.get("acts").valueStream().map(act -> act.get("id").stringValue()))
                .containsExactly(SOLO, "thistledown-glider");
        for (JsonNode act : all.get("acts")) {
            assertThat(act.propertyNames())
                    .containsExactly("id", "variant", "begins", "daylight", "facts", "figures", "withoutFact");
            assertThat(act.get("daylight").propertyNames()).containsExactly("dawn", "sunrise", "sunset", "dusk");
            factsOf(act).forEach(FactsCommandTest::assertFact);
            for (JsonNode figure : act.get("figures")) {
                assertThat(figure.propertyNames())
                        .containsExactly("id", "name", "facts", "start", "highest", "withoutFact");
                factsOf(figure).forEach(FactsCommandTest::assertFact);
                for (String when : List.of("start", "highest")) {
                    assertThat(figure.get(when).propertyNames())
                            .containsExactly(
                                    "atS",
                                    "look",
                                    "clock",
                                    "rightDeg",
                                    "upDeg",
                                    "slantM",
                                    "soundDelayS",
                                    "sizeDeg",
                                    "sizeLike",
                                    "sunDeg",
                                    "intoSun");
                }
            }
        }
    }

    private static Stream<JsonNode> factsOf(JsonNode node) {
        return node.get("facts").valueStream();
    }

    private static void assertFact(JsonNode fact) {
        assertThat(fact.propertyNames())
                .containsExactly("id", "kind", "number", "unit", "rounded", "text", "shortText", "telling");
    }

    @Test
    void factsAgreeWithThePrediction() {
        JsonNode told = json("--act", SOLO).at("/acts/0/figures");
        caught.clear();
        run("predict", DEMO, "--act", SOLO, "--json", "--flights", "1");
        JsonNode predicted = new JsonMapper().readTree(caught.out()).at("/acts/0/figures");
        int checked = 0;
        for (int i = 0; i < predicted.size(); i++) {
            for (JsonNode fact : told.get(i).get("facts")) {
                if (fact.get("kind").stringValue().equals("highest")) {
                    assertThat(fact.get("number").doubleValue())
                            .isCloseTo(predicted.get(i).get("highestFt").doubleValue(), within(0.002));
                    checked++;
                }
            }
        }
        assertThat(checked).isGreaterThan(5);
    }

    @Test
    void anActFlownTowardsTheSettingSunSaysSo() {
        // The crowd looks north, and an hour and three quarters before sunset the midsummer sun is low on the left.
        JsonNode figures = json("--act", SOLO, "--at", "2027-06-12T19:30").at("/acts/0/figures");
        assertThat(figures.valueStream().filter(f -> f.at("/start/intoSun").booleanValue()))
                .isNotEmpty()
                .allSatisfy(f -> assertThat(f.at("/start/sunDeg").doubleValue()).isLessThan(15));

        caught.clear();
        run("facts", DEMO, "--act", SOLO, "--at", "2027-06-12T19:30");
        assertThat(caught.out()).contains("into the sun: shade your eyes, never look at the sun itself");
    }

    @Test
    void timeIsTakenByTheVenuesClockOrByItsOffset() {
        assertThat(json("--act", SOLO, "--at", "2027-06-12T15:00")
                        .at("/acts/0/begins")
                        .stringValue())
                .isEqualTo("2027-06-12T15:00:00+01:00");
        assertThat(json("--act", SOLO, "--at", "2027-06-12T14:00Z")
                        .at("/acts/0/begins")
                        .stringValue())
                .isEqualTo("2027-06-12T15:00:00+01:00");
    }

    @ParameterizedTest
    @ValueSource(strings = {"half past two", "14:30", "2027-06-12", "2027-13-45T14:30", ""})
    void timeThatIsNoneIsRefusedPlainly(String at) {
        assertThat(run("facts", DEMO, "--at", at)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .startsWith("crowdline: --at is " + at + "; it must be a day and a time such as 2027-06-12T14:30")
                .doesNotContain("Exception");
        assertThat(caught.out()).isEmpty();
    }

    @Test
    void unknownActAndVariantAreRefusedWithTheNearest() {
        assertThat(run("facts", DEMO, "--act", "jackanapes-sole")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no act jackanapes-sole", SOLO);
        caught.clear();
        assertThat(run("facts", DEMO, "--variant", "ful")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("no act has a variant ful", "full");
    }

    @Test
    void unreadableShowIsRefusedPlainly() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"crowdline\": 1, ");
        assertThat(run("facts", broken.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains(broken.toString()).doesNotContain("Exception");
        caught.clear();
        assertThat(run("facts", folder.resolve("gone.json").toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no file").doesNotContain("Exception");
    }

    @Test
    void airframeThatIsNotThereIsRefusedPlainly() throws IOException {
        String demo = Files.readString(Path.of(DEMO)).replace("\"airframe\": \"jackanapes\"", "\"airframe\": \"gone\"");
        Path other = Files.writeString(folder.resolve("other.json"), demo);
        assertThat(run("facts", other.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("gone").doesNotContain("Exception");
    }

    @Test
    void figureThatCannotBeFlownHasNoFactsAndBlocks() throws IOException {
        String slow = Files.readString(Path.of(DEMO))
                .replaceFirst("\"kt\": *115", "\"kt\": 40")
                .replaceFirst("\"dive-in\",\\s*\"first-loop\"", "\"first-loop\"");
        Path other = Files.writeString(folder.resolve("slow.json"), slow);
        assertThat(run("facts", other.toString(), "--act", SOLO)).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).contains("no facts: the prediction found no way to fly it to its end");
    }
}
