package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PredictCommandTest {
    private static final String DEMO = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private String printed() {
        return caught.out();
    }

    private String complained() {
        return caught.err();
    }

    @Test
    void demoActIsPredictedWithoutAFindingThatBlocks() {
        assertThat(run("predict", DEMO, "--flights", "5")).isEqualTo(ExitCode.FINE);
        assertThat(printed()).contains("stall turn", "Predicted for commentary only");
    }

    @Test
    void speedsAndHeightsArePrintedInTheUnitsAskedFor() {
        assertThat(run("predict", DEMO, "--act", "jackanapes-solo", "--flights", "5", "--units", "km/h,m"))
                .isEqualTo(ExitCode.FINE);
        assertThat(printed()).contains("km/h in/out", "m low-high").doesNotContainPattern("\\d (kt|ft)\\b");
        assertThat(printed().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void findingsAreToldInTheUnitsAskedForAsTheTableAboveThemIs() {
        assertThat(run(
                        "predict",
                        DEMO,
                        "--act",
                        "thistledown-glider",
                        "--flights",
                        "1",
                        "--units",
                        "km/h,m",
                        "--metar",
                        "24012KT BKN011 17/09 Q1009"))
                .isEqualTo(ExitCode.FINE);
        assertThat(printed()).contains("the cloud base of the day is 335 m").doesNotContainPattern("\\d (kt|ft)\\b");
    }

    @Test
    void unitThatIsNoneIsRefusedWithThoseThereAre() {
        assertThat(run("predict", DEMO, "--units", "leagues")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained()).contains("“leagues” is no unit; speeds are in kt, km/h or mph");
    }

    @Test
    void jsonHasItsStableKeys() {
        assertThat(run("predict", DEMO, "--act", "jackanapes-solo", "--json", "--flights", "5"))
                .isEqualTo(ExitCode.FINE);
        for (String key : List.of(
                "acts",
                "id",
                "variant",
                "figures",
                "name",
                "startS",
                "endS",
                "durationS",
                "bandLowS",
                "bandHighS",
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
                "findings")) {
            assertThat(printed()).contains("\"" + key + "\"");
        }
    }

    @Test
    void metarPutsItsAirInThePlaceOfTheShows() {
        assertThat(run(
                        "predict",
                        DEMO,
                        "--act",
                        "thistledown-glider",
                        "--flights",
                        "1",
                        "--metar",
                        "METAR XXXX 121220Z 24012G20KT 9999 BKN011 17/09 Q1009"))
                .isEqualTo(ExitCode.FINE);
        assertThat(printed())
                .contains(
                        "Air: QNH 1009 hPa, 17 C, wind from 240 true at 12 kt, cloud base 1100 ft.",
                        "The gusts of 24012G20KT are not used; the wind blows at its mean.",
                        "Not used: XXXX, 9999.",
                        "the cloud base of the day is 1,100 ft",
                        "Heights are above the display datum.");
    }

    @Test
    void singleOptionsWinOverTheMetar() {
        run(
                "predict",
                DEMO,
                "--act",
                "thistledown-glider",
                "--flights",
                "1",
                "--metar",
                "24012KT 17/09 Q1009",
                "--wind-from",
                "90",
                "--wind-kt",
                "3",
                "--qnh",
                "1020.5",
                "--temp",
                "-2");
        assertThat(printed()).contains("Air: QNH 1021 hPa, -2 C, wind from 090 true at 3 kt");
    }

    @Test
    void wrongAirIsRefusedInOneSentence() {
        assertThat(run("predict", DEMO, "--wind-kt", "300")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("predict", DEMO, "--qnh", "NaN")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("predict", DEMO, "--metar", "24O12KT")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained())
                .contains(
                        "--wind-kt is 300; it must be from 0 to 100",
                        "--qnh is NaN; it must be from 850 to 1100",
                        "--metar: 24O12KT is not a wind");
    }

    @Test
    void calmCarriesNothing() {
        run("predict", DEMO, "--act", "jackanapes-solo", "--json", "--flights", "1", "--wind-kt", "0");
        assertThat(printed()).contains("\"driftAM\": 0,").doesNotContainPattern("\"drift[AB]M\": -?[1-9]");
    }

    @Test
    void sameSeedGivesTheSameJson() {
        run("predict", DEMO, "--act", "thistledown-glider", "--json", "--flights", "20", "--seed", "7");
        String first = printed();
        caught.clear();
        run("predict", DEMO, "--act", "thistledown-glider", "--json", "--flights", "20", "--seed", "7");
        assertThat(printed()).isEqualTo(first);
    }

    @Test
    void traceHasARowEveryTenthOfASecond() throws IOException {
        Path trace = folder.resolve("trace.csv");
        assertThat(run("predict", DEMO, "--act", "thistledown-glider", "--flights", "1", "--trace", trace.toString()))
                .isEqualTo(ExitCode.FINE);
        List<String> lines = Files.readAllLines(trace);
        assertThat(lines.get(0)).isEqualTo("tS,xM,yM,zM,speedMps,pathAngleDeg,rollDeg,g,thrustN,dragN");
        for (int i = 1; i < 1000; i++) {
            String time = lines.get(i).substring(0, lines.get(i).indexOf(','));
            assertThat(Double.parseDouble(time)).isCloseTo((i - 1) / 10.0, within(1e-9));
        }
    }

    @Test
    void unknownActIsRefusedWithTheNearest() {
        assertThat(run("predict", DEMO, "--act", "jackanapes-sole")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained()).contains("there is no act jackanapes-sole", "did you mean", "jackanapes-solo");
    }

    @Test
    void incidentTemplateSaysItMustBeAgreed() {
        assertThat(run("incident-template")).isEqualTo(ExitCode.FINE);
        assertThat(printed())
                .contains("\"incident\"", "\"words\"", "\"contacts\"", "\"announcements\"", "Lost child")
                .doesNotContain("agreedWith");
        assertThat(complained()).contains("agreed", "display director");
    }

    @Test
    void noFlightsAreRefused() {
        assertThat(run("predict", DEMO, "--flights", "0")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained()).contains("--flights is 0; it must be from 1 to 100000");
    }

    @Test
    void loopFromFortyKnotsIsToldPlainly() throws IOException {
        String show = Files.readString(Path.of(DEMO))
                .replaceFirst("\"kt\": *115", "\"kt\": 40")
                .replaceFirst("\"dive-in\",\\s*\"first-loop\"", "\"first-loop\"");
        Path slow = folder.resolve("slow.json");
        Files.writeString(slow, show);
        int code = run("predict", slow.toString(), "--act", "jackanapes-solo", "--flights", "1");
        assertThat(printed()).contains("runs out of speed in the pull");
        assertThat(code).isEqualTo(ExitCode.BLOCKED);
        assertThat(complained()).doesNotContain("Exception");
    }

    @Test
    void unknownVariantIsRefusedWithTheNearest() {
        assertThat(run("predict", DEMO, "--act", "jackanapes-solo", "--variant", "rollin", "--flights", "1"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(printed()).isEmpty();
        assertThat(complained())
                .contains("act jackanapes-solo has no variant rollin; it has full, rolling, flat")
                .contains("did you mean \"rolling\"?");
    }

    @Test
    void variantNoActHasIsRefusedToo() {
        assertThat(run("predict", DEMO, "--variant", "sideways", "--flights", "1"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(printed()).isEmpty();
        assertThat(complained()).contains("no act has a variant sideways; there are full, rolling, flat");
    }

    @Test
    void variantIsFlownWhereAnActHasItAndTheFirstElsewhere() {
        assertThat(run("predict", DEMO, "--variant", "flat", "--flights", "1")).isEqualTo(ExitCode.FINE);
        assertThat(printed()).contains("Variant \"flat\"", "Variant \"full\"");
    }

    @Test
    void traceOfSeveralActsIsRefused() {
        Path trace = folder.resolve("trace.csv");
        assertThat(run("predict", DEMO, "--flights", "1", "--trace", trace.toString()))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained()).contains("--trace writes one act; name it with --act");
        assertThat(trace).doesNotExist();
    }

    @Test
    void traceThatCannotBeWrittenIsRefusedPlainly() {
        Path trace = folder.resolve("nowhere").resolve("trace.csv");
        assertThat(run("predict", DEMO, "--act", "thistledown-glider", "--flights", "1", "--trace", trace.toString()))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained())
                .contains("the trace cannot be written to " + trace + "; choose a folder you may write to")
                .doesNotContain("Exception");
    }

    @Test
    void unreadableShowIsRefusedPlainly() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"crowdline\": 1, ");
        assertThat(run("predict", broken.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained()).contains(broken.toString()).doesNotContain("Exception");

        caught.clear();
        assertThat(run("predict", folder.resolve("gone.json").toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(complained()).contains("there is no file").doesNotContain("Exception");
        assertThat(printed()).isEmpty();
    }
}
