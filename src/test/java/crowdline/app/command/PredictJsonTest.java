package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What {@code predict --json} says, read by a JSON parser as another program would. */
class PredictJsonTest {
    private static final String DEMO = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";

    @TempDir
    private Path folder;

    private int code;

    private JsonNode json(String... args) {
        CaughtTerminal caught = new CaughtTerminal();
        code = Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
        assertThat(caught.err()).isEmpty();
        return new JsonMapper().readTree(caught.out());
    }

    private JsonNode solo() {
        return json("predict", DEMO, "--act", "jackanapes-solo", "--json", "--flights", "30");
    }

    @Test
    void keysAreTheseInThisOrderAndNoOthers() {
        JsonNode all = json("predict", DEMO, "--json", "--flights", "2");

        assertThat(code).isEqualTo(ExitCode.FINE);
        assertThat(all.propertyNames()).containsExactly("acts", "findings", "air", "airNotes", "heights");
        assertThat(all.get("acts").valueStream().map(act -> act.get("id").stringValue()))
                .containsExactly("jackanapes-solo", "thistledown-glider");
        assertThat(all.get("acts").valueStream()).allSatisfy(act -> {
            assertThat(act.propertyNames()).containsExactly("id", "variant", "passes", "figures", "assumed");
            assertThat(act.get("variant").stringValue()).isEqualTo("full");
            assertThat(act.get("figures").valueStream())
                    .isNotEmpty()
                    .allSatisfy(figure -> assertThat(figure.propertyNames())
                            .containsExactly(
                                    "id",
                                    "name",
                                    "startS",
                                    "endS",
                                    "durationS",
                                    "bandLowS",
                                    "bandHighS",
                                    "passes",
                                    "learnedStartS",
                                    "learnedS",
                                    "learnedLowS",
                                    "learnedHighS",
                                    "entryKt",
                                    "exitKt",
                                    "minKt",
                                    "maxKt",
                                    "lowestFt",
                                    "highestFt",
                                    "maxG",
                                    "minG",
                                    "energyInFt",
                                    "energyOutFt",
                                    "alongAM",
                                    "alongBM",
                                    "driftAM",
                                    "driftBM"));
        });
    }

    @Test
    void eachFigureStartsWhereTheOneBeforeEnds() {
        double endS = 0;
        for (JsonNode figure : solo().at("/acts/0/figures")) {
            assertThat(number(figure, "startS"))
                    .as(figure.get("id").stringValue())
                    .isEqualTo(endS);
            endS = number(figure, "endS");
            // Three rounded numbers: half a millisecond each.
            assertThat(number(figure, "durationS")).isCloseTo(endS - number(figure, "startS"), within(0.0016));
        }
        assertThat(endS).isBetween(10.5 * 60, 12.0 * 60);
    }

    @Test
    void speedAndEnergyAreHandedOnFromFigureToFigure() {
        JsonNode figures = solo().at("/acts/0/figures");
        for (int i = 1; i < figures.size(); i++) {
            JsonNode before = figures.get(i - 1);
            assertThat(number(figures.get(i), "entryKt")).isEqualTo(number(before, "exitKt"));
            assertThat(number(figures.get(i), "energyInFt")).isEqualTo(number(before, "energyOutFt"));
        }
    }

    @Test
    void bandsAreInOrderAndNearTheDuration() {
        for (JsonNode figure : solo().at("/acts/0/figures")) {
            double low = number(figure, "bandLowS");
            double high = number(figure, "bandHighS");
            double durationS = number(figure, "durationS");
            assertThat(low).isPositive().isLessThanOrEqualTo(high);
            // A middle flight may lie a little outside; a third of the figure and two seconds is "near".
            double near = 2 + durationS / 3;
            assertThat(durationS).as(figure.get("id").stringValue()).isBetween(low - near, high + near);
        }
    }

    @Test
    void soloIsWhatALightBiplaneCanDo() {
        JsonNode figures = solo().at("/acts/0/figures");

        assertThat(figures.size()).isGreaterThanOrEqualTo(18);
        for (JsonNode figure : figures) {
            assertThat(number(figure, "minKt")).isBetween(0.0, number(figure, "maxKt"));
            assertThat(number(figure, "maxKt"))
                    .as(figure.get("id").stringValue())
                    .isLessThan(175);
            assertThat(number(figure, "maxG")).isLessThanOrEqualTo(6);
            assertThat(number(figure, "minG")).isBetween(-4.0, number(figure, "maxG"));
            assertThat(number(figure, "lowestFt")).isBetween(-0.5, number(figure, "highestFt"));
            assertThat(number(figure, "highestFt")).isLessThan(3500);
        }
    }

    @Test
    void figureThatCannotBeFlownIsAFindingAndTheRestIsStillJson() throws IOException {
        JsonNode all = json("predict", slow().toString(), "--act", "jackanapes-solo", "--json", "--flights", "3");

        assertThat(code).isEqualTo(ExitCode.BLOCKED);
        JsonNode found = all.get("findings")
                .valueStream()
                .filter(f -> f.get("code").stringValue().equals("cannot-be-flown"))
                .findFirst()
                .orElseThrow();
        assertThat(found.propertyNames()).containsExactly("severity", "code", "act", "figure", "message");
        assertThat(found.get("severity").stringValue()).isEqualTo("error");
        assertThat(found.get("act").stringValue()).isEqualTo("jackanapes-solo");
        assertThat(found.get("figure").stringValue()).isEqualTo("first-loop");
        assertThat(found.get("message").stringValue()).contains("loop");
    }

    /** The demo with its first loop begun at 40 kt straight after take-off. */
    private Path slow() throws IOException {
        String demo = Files.readString(Path.of(DEMO));
        String show = demo.replaceFirst("\"kt\": *115", "\"kt\": 40")
                .replaceFirst("\"dive-in\",\\s*\"first-loop\"", "\"first-loop\"");
        assertThat(show).hasSizeLessThan(demo.length() - 8);
        return Files.writeString(folder.resolve("slow.json"), show);
    }

    private static double number(JsonNode figure, String key) {
        return figure.get(key).doubleValue();
    }
}
