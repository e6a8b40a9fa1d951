package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.loaded.FlownLog;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class FollowCommandTest {
    private static final String DEMO = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";
    private static final String GLIDER = "thistledown-glider";

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private static Show show() throws ShowFileException {
        return Objects.requireNonNull(new ShowFile().read(Path.of(DEMO)).show());
    }

    private static Flight flight(Show show) {
        Act act = show.act(GLIDER).orElseThrow();
        return new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
    }

    private String log(Show show, Flight flight) throws IOException {
        Path log = folder.resolve("pass.nmea");
        Files.write(log, FlownLog.nmea(flight, show.venue(), 2, 2, 7));
        return log.toString();
    }

    /** The log is of the prediction with the noise of a receiver: what is found must be what was flown. */
    @Test
    void figuresAreFoundWhereTheyWereFlown() throws Exception {
        Show show = show();
        Flight flight = flight(show);
        assertThat(run("follow", DEMO, log(show, flight), "--act", GLIDER, "--start", "0", "--json"))
                .isEqualTo(ExitCode.FINE);
        String summary = caught.out().substring(caught.out().indexOf("{\"summary\""));
        for (FigureFlight figure : flight.figures()) {
            Matcher found = Pattern.compile("\"figure\":\"" + figure.figureId() + "\",\"startS\":([0-9.]+)")
                    .matcher(summary);
            assertThat(found.find()).as(figure.figureId()).isTrue();
            assertThat(Double.parseDouble(found.group(1))).isCloseTo(figure.startS(), within(1.0));
        }
        assertThat(summary).contains("\"missed\":[]");
    }

    @Test
    void wordsComeOnlyWhereSomethingElseIsFlown() throws Exception {
        Show show = show();
        Flight flight = flight(show);
        run("follow", DEMO, log(show, flight), "--act", GLIDER);
        List<String> lines =
                caught.out().lines().takeWhile(line -> !line.isBlank()).toList();
        // One note on the log, before and after the act, and for each figure at most a moment of doubt and one of
        // error.
        assertThat(lines)
                .hasSizeBetween(
                        flight.figures().size() + 1, 3 + 3 * flight.figures().size());
        List<String> told = lines.stream()
                .map(line -> line.replaceAll("^[ 0-9.]+ s|[0-9]+ %", ""))
                .toList();
        for (int i = 1; i < told.size(); i++) {
            assertThat(told.get(i)).isNotEqualTo(told.get(i - 1));
        }
    }

    @Test
    void aLineComesAtLeastEverySecond() throws Exception {
        Show show = show();
        Flight flight = flight(show);
        run("follow", DEMO, log(show, flight), "--act", GLIDER, "--json");
        Matcher line = Pattern.compile(
                        "(?m)^\\{\"tS\":([0-9.]+),\"figure\":(?:\"[a-z0-9-]+\"|null),\"element\":\\d+,"
                                + "\"confidence\":[0-9.E-]+,\"state\":\"(?:before|on-plan|off-plan|unsure|after)\",\"or\":(?:\"[a-z0-9-]+\"|null)}$")
                .matcher(caught.out());
        double last = 0;
        int lines = 0;
        while (line.find()) {
            double now = Double.parseDouble(line.group(1));
            assertThat(now - last).isLessThan(1.3);
            last = now;
            lines++;
        }
        assertThat(last).isCloseTo(flight.totalS(), within(1.5));
        assertThat(caught.out().lines().count()).isEqualTo(lines + 1);
    }

    @Test
    void wordsNameTheFiguresAndTheHeights() throws Exception {
        Show show = show();
        Flight flight = flight(show);
        assertThat(run("follow", DEMO, log(show, flight), "--act", GLIDER)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("NMEA 0183, heights above mean sea level", "Found in the log:")
                .contains(flight.figures().get(1).name());
    }

    /** A take-off and a landing are found in nearly any log, for nothing but their time is planned. */
    @Test
    void flightOfAnotherActIsSaidToBeOne() throws Exception {
        Show show = show();
        String log = log(show, flight(show));
        assertThat(run("follow", DEMO, log, "--act", "jackanapes-solo")).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out())
                .contains("Too little was found for it to be this act: ", "The middle of the log lies ");
        assertThat(run("follow", DEMO, log, "--act", "jackanapes-solo", "--json"))
                .isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out())
                .containsPattern("\"showsAct\":false,\"distance\":\\{\"outsideM\":[0-9.]+,\"aboveM\":[0-9.-]+,"
                        + "\"steepShare\":0[0-9.]+,\"plannedSteepShare\":0\\.[0-9]+}");
        assertThat(run("follow", DEMO, log, "--act", GLIDER)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).doesNotContain("Too little was found", "The middle of the log");
    }

    @Test
    void aFileThatIsNoFlightLogIsRefusedInOneSentence() {
        assertThat(run("follow", DEMO, "pom.xml", "--act", GLIDER)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("pom.xml").doesNotContain("Exception");
        assertThat(caught.err().strip().lines().count()).isEqualTo(1);
    }

    @Test
    void aMissingLogIsRefusedInOneSentence() {
        assertThat(run("follow", DEMO, "nowhere.nmea", "--act", GLIDER)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no file nowhere.nmea; check its name");
    }

    @Test
    void oneActMustBeNamed() {
        assertThat(run("follow", DEMO, "pom.xml")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("name it with --act");
    }

    @Test
    void aStartThatIsNoTimeIsRefused() {
        assertThat(run("follow", DEMO, "pom.xml", "--act", GLIDER, "--start", "-5"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err().toLowerCase(Locale.ROOT)).contains("--start is -5.0");
    }
}
