package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.loaded.FlownLog;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class LearnCommandTest {
    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();
    private String show = "";

    @BeforeEach
    void writeShow() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                LearnCommandTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            show = Files.write(folder.resolve("day.json"), in.readAllBytes()).toString();
        }
    }

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (file, t) -> ExitCode.UNUSABLE);
    }

    private int add(String times, String... more) throws IOException {
        String table = Files.writeString(folder.resolve("times.csv"), times).toString();
        String[] args = {"learn", show, "--act", "ada-solo", "--add", table};
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return run(all);
    }

    private String passes() throws IOException {
        return Files.readString(folder.resolve("day.json.passes"), StandardCharsets.UTF_8);
    }

    private String id(int line) throws IOException {
        Matcher id = Pattern.compile("\"id\":\"([^\"]+)\"")
                .matcher(passes().lines().toList().get(line));
        assertThat(id.find()).isTrue();
        return id.group(1);
    }

    private double learnedLoopS() {
        assertThat(run("learn", show, "--json")).isEqualTo(ExitCode.FINE);
        Matcher s = Pattern.compile("\"id\": \"loop-1\".*?\"learnedS\": ([0-9.]+)", Pattern.DOTALL)
                .matcher(caught.out());
        assertThat(s.find()).isTrue();
        return Double.parseDouble(s.group(1));
    }

    /** It said that the pipe is read until it ends, and then that it is not read. */
    @Test
    void timesFromAPipeAreRefusedInOneSentence() throws IOException {
        assertThat(run("learn", show, "--act", "ada-solo", "--add", "/dev/null"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err().strip())
                .isEqualTo("crowdline: /dev/null is a pipe or a device and not a file; name a file");
    }

    @Test
    void withoutPassesNothingIsLearned() {
        assertThat(run("learn", show)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("nothing learned yet");
    }

    @Test
    void addedPassesMoveTheDurationAndAreNamed() throws IOException {
        double predictedS = learnedLoopS();
        for (String end : new String[] {"40", "40.5", "41"}) {
            assertThat(add("figure,startS,endS\nloop-1,3," + end + "\n")).isEqualTo(ExitCode.FINE);
        }
        assertThat(caught.out()).contains("learned from 3 of 3 passes", "by hand", "1 figure,", "Kept pass " + id(2));
        assertThat(learnedLoopS()).isGreaterThan(predictedS).isLessThan(38);

        assertThat(run("predict", show)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("learned from 3 passes");
        assertThat(run("predict", show, "--json")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("\"passes\": 3");
    }

    @Test
    void ignoredPassIsKeptAndTeachesNoMore() throws IOException {
        double predictedS = learnedLoopS();
        add("loop-1,0,40\n", "--note", "gusty");
        assertThat(run("learn", show, "--ignore", id(0))).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("ignored", "gusty");
        assertThat(learnedLoopS()).isEqualTo(predictedS);
        assertThat(run("learn", show, "--count", id(0))).isEqualTo(ExitCode.FINE);
        assertThat(learnedLoopS()).isGreaterThan(predictedS);
        assertThat(passes().lines()).hasSize(3);
    }

    @Test
    void walkedPassTeachesNoDurations() throws IOException {
        double predictedS = learnedLoopS();
        assertThat(add("loop-1,0,40\n", "--walked")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("walked", "times not used");
        assertThat(learnedLoopS()).isEqualTo(predictedS);
    }

    @Test
    void oddPassIsNamedWithItsReason() throws IOException {
        add("loop-1,0,12\n");
        add("loop-1,0,12.5\n");
        add("loop-1,0,29.2\n");
        add("loop-1,0,13\n");
        assertThat(caught.out()).contains("odd, pass 3: 29.2 s, others 12.0–13.0 s");
        assertThat(run("learn", show, "--json")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("\"odd\": \"pass 3: 29.2 s, others 12.0–13.0 s\"");
    }

    @Test
    void wrongUseIsOneSentence() throws IOException {
        assertThat(add("loup-1,0,12\n")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .contains("times.csv, line 1: there is no figure loup-1")
                .contains("loop-1");
        assertThat(run("learn", show, "--ignore", "nobody")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no pass nobody; none has been kept yet");
        assertThat(run("learn", show, "--walked")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("--add");
        assertThat(run("learn", show, "--add", "x.csv")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("name it with --act");
        assertThat(folder.resolve("day.json.passes")).doesNotExist();
    }

    @Test
    void damagedLineIsSaidAndTheRestIsUsed() throws IOException {
        add("loop-1,0,40\n");
        Files.writeString(folder.resolve("day.json.passes"), passes() + "rubbish\n");
        assertThat(run("learn", show)).isEqualTo(ExitCode.FINE);
        assertThat(caught.err()).contains("day.json.passes, line 2").contains("kept but not used");
        assertThat(caught.out()).contains("learned from 1 of 1 pass");
    }

    @Test
    void aFlightLogAddsAPass() throws Exception {
        Show demo = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        Path file = Files.copy(
                Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"), folder.resolve("fen.json"));
        Act act = demo.act("thistledown-glider").orElseThrow();
        Flight flight =
                new Predictor(demo, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        Path log = Files.write(folder.resolve("pass.nmea"), FlownLog.nmea(flight, demo.venue(), 2, 2, 3));
        assertThat(run("learn", file.toString(), log.toString(), "--act", "thistledown-glider", "--json"))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("pass.nmea");
        // The day it was flown, as its sentences say, not the day it was read.
        assertThat(Files.readString(folder.resolve("fen.json.passes"))).contains("\"begunAt\":\"2027-06-12T12:00:0");
        assertThat(run("learn", file.toString(), log.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("name it with --act");
        assertThat(run("learn", file.toString(), log.toString(), "--act", "thistledown-glider", "--walked"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(run("learn", file.toString(), log.toString(), "--act", "thistledown-glider"))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.err()).contains("pass.nmea has been read before, as pass ");
        assertThat(Files.readAllLines(folder.resolve("fen.json.passes"))).hasSize(1);
    }

    @Test
    void aLogThatCannotBeReadDoesNotKeepTheOthersOut() throws Exception {
        Path file = Files.copy(
                Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"), folder.resolve("fen.json"));
        Show demo = Objects.requireNonNull(new ShowFile().read(file).show());
        Act act = demo.act("thistledown-glider").orElseThrow();
        Flight flight =
                new Predictor(demo, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        String bad = Files.createFile(folder.resolve("empty.igc")).toString();
        byte[] whole = FlownLog.nmea(flight, demo.venue(), 2, 2, 3);
        String good = Files.write(folder.resolve("start.nmea"), Arrays.copyOf(whole, whole.length / 4))
                .toString();
        assertThat(run("learn", file.toString(), bad, good, "--act", "thistledown-glider"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .contains("empty.igc is empty")
                .contains(good + " was not added: ")
                .contains(" of the 10 figures whose path is known were found in it in the order planned")
                .contains("--anyway adds it all the same. The middle of the log lies ");
        assertThat(folder.resolve("fen.json.passes")).doesNotExist();
        assertThat(run("learn", file.toString(), good, "--act", "thistledown-glider", "--anyway"))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("start.nmea");
    }
}
