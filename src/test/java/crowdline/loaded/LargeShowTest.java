package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.flight.Workers;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Shows as large as no real one. */
@Timeout(value = 120, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class LargeShowTest {
    private static final Path DEMO = Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json");

    /** So many acts of two hours each, all of one figure that is only timed. */
    private static byte[] twoHourActs(int count) throws IOException {
        JsonMapper mapper = new JsonMapper();
        ObjectNode show = (ObjectNode) mapper.readTree(Files.readString(DEMO));
        ObjectNode act = (ObjectNode) show.path("acts").get(0);
        act.set("figures", mapper.readTree("[{\"id\": \"long\", \"figure\": \"loop\", \"durationS\": 7200}]"));
        act.set("variants", mapper.readTree("[{\"name\": \"full\", \"order\": [\"long\"]}]"));
        act.remove("remarks");
        ArrayNode acts = show.putArray("acts");
        for (int i = 0; i < count; i++) {
            acts.add(act.deepCopy().put("id", "act-" + i));
        }
        return mapper.writeValueAsString(show).getBytes(StandardCharsets.UTF_8);
    }

    private static ShowLoader.Result loaded(byte[] content) {
        return new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(Path.of("large.json"), content, 1);
    }

    @Test
    void aDayOfFlyingIsOpened() throws IOException {
        assertThat(loaded(twoHourActs(12)).loaded()).isNotNull();
    }

    @Test
    void moreThanADayOfFlyingIsRefusedInOneSentence() throws IOException {
        ShowLoader.Result result = loaded(twoHourActs(13));
        assertThat(result.loaded()).isNull();
        assertThat(result.findings())
                .filteredOn(found -> found.severity() == Severity.ERROR)
                .extracting(LocatedFinding::message)
                .singleElement()
                .asString()
                .startsWith("the acts up to \"")
                .endsWith(
                        "\" are predicted to last more than 24 hours together, every variant counted; that is the limit,"
                                + " so check their times or split the show");
    }

    /** The samples of forty acts take 60 MB. */
    @Tag("slow")
    @Test
    void actsOfWhichTheMemoryHoldsNotAllSamplesArePredictedAllTheSame() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xmx40m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ManyActs.class.getName(),
                        DEMO.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said).matches("[0-9]{5} s, every sample\\R");
        assertThat(process.waitFor()).isZero();
    }
}
