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
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class ArrangeCommandTest {
    private static final String MAIL = """
            Hi Sam,
            take-off, dive in from the left, loop, stall turn right end, slow roll, half Cuban, four point roll,
            humpty bump, spin 2 turns, low pass.
            Cheers, Jo
            """;

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private String list(String text) throws IOException {
        return Files.writeString(folder.resolve("list.txt"), text).toString();
    }

    @Test
    void anEmailBecomesAShowThatCanBeCheckedPredictedPlannedAndDrawn() throws Exception {
        String show = folder.resolve("show.json").toString();
        assertThat(run("arrange", list(MAIL), "--aircraft", "light aerobatic biplane", "--out", show))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("\"stall turn right end\": stall turn", "note: Hi Sam,", "Written to " + show);
        assertThat(run("check", show)).isEqualTo(ExitCode.FINE);
        assertThat(run("predict", show, "--flights", "2")).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("humpty bump").doesNotContain("warning:");
        assertThat(run("plan", show)).isEqualTo(ExitCode.FINE);
        String act = "light-aerobatic-biplane";
        Path picture = folder.resolve("act.svg");
        assertThat(run("predict", show, "--act", act, "--flights", "2", "--picture", picture.toString()))
                .isEqualTo(ExitCode.FINE);
        assertThat(picture).isNotEmptyFile();
    }

    @Test
    void asJsonItHasTheLinesTheActAndWhatWasFound() throws Exception {
        assertThat(run("arrange", list("2 turn spin to the left, torque roll"), "--aircraft", "old trainer", "--json"))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("\"figure\": \"spin\"")
                .contains("\"count\": 2")
                .contains("\"side\": \"left\"")
                .contains("\"place\": null")
                .contains("\"sure\": true")
                .contains("\"transit\": true")
                .contains("torque roll is not flown at displays by such an aircraft");
    }

    @Test
    void whatTheLetterSaysOfTheActCountsUnlessItIsGiven() throws Exception {
        String letter =
                "Hi Sam, I have the slot at 15:20, about 9 min.\nloop, stall turn, slow roll, landing\nCheers, Ada Quillan";
        run("arrange", list(letter), "--aircraft", "old trainer", "--json");
        assertThat(caught.out())
                .contains("\"performer\": \"Ada Quillan\"")
                .contains("\"title\": \"Ada Quillan, old trainer\"")
                .contains("\"slotStart\": \"15:20\"")
                .contains("\"slotMinutes\": 9");
        run("arrange", list(letter), "--aircraft", "old trainer");
        assertThat(caught.out())
                .contains("the list says: it is flown by Ada Quillan")
                .contains("the list says: it begins at 15:20")
                .contains("the list says: all of it takes 9 minutes");
        run("arrange", list(letter), "--aircraft", "old trainer", "--slot", "9:05", "--performer", "Bo", "--json");
        assertThat(caught.out()).contains("\"performer\": \"Bo\"").contains("\"slotStart\": \"09:05\"");
        run("arrange", list("loop, slow roll"), "--aircraft", "old trainer", "--json");
        assertThat(caught.out()).contains("\"slotStart\": \"14:00\"").contains("\"performer\": \"the pilot\"");
    }

    @Test
    void aSecondActGoesIntoTheShowThatIsThere() throws Exception {
        Path show = folder.resolve("show.json");
        run("arrange", list(MAIL), "--aircraft", "biplane", "--title", "The first", "--out", show.toString());
        assertThat(run(
                        "arrange",
                        list("join-up, loop (30 s), break"),
                        "--aircraft",
                        "formation of 5",
                        "--title",
                        "The second",
                        "--slot",
                        "14:20",
                        "--into",
                        show.toString()))
                .isEqualTo(ExitCode.FINE);
        assertThat(Files.readString(show))
                .contains("\"The first\"", "\"The second\"", "\"14:20\"", "\"formation of 5\"");
        assertThat(run("check", show.toString())).isEqualTo(ExitCode.FINE);
    }

    @Test
    void aFileThatIsThereIsNeverWrittenOver() throws Exception {
        Path there = Files.writeString(folder.resolve("there.json"), "mine");
        assertThat(run("arrange", list(MAIL), "--aircraft", "old trainer", "--out", there.toString()))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(there).hasContent("mine");
        assertThat(caught.err()).contains("is there already");
    }

    @ParameterizedTest
    @CsvSource({
        "jet fighter, 14:00, 'there is no kind \"jet fighter\"; nearest: fast jet'",
        "old trainer, 25:00, '--slot is \"25:00\"; give the time as hours and minutes'",
    })
    void anOptionThatCannotBeUsedIsRefusedInASentence(String kind, String slot, String sentence) throws Exception {
        assertThat(run("arrange", list(MAIL), "--aircraft", kind, "--slot", slot))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains(sentence);
        assertThat(caught.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'', The list is empty",
        "'2 pints of milk\nbread\ncat food\nlight bulbs', No figure was recognised in 4 lines",
    })
    void whatIsNoListEndsWithOneAndWritesNothing(String text, String sentence) throws Exception {
        Path show = folder.resolve("show.json");
        assertThat(run(
                        "arrange",
                        list(text.replace("\\n", "\n")),
                        "--aircraft",
                        "old trainer",
                        "--out",
                        show.toString()))
                .isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).contains(sentence);
        assertThat(show).doesNotExist();
    }

    @Test
    void whatCannotBeReadIsSaid() throws Exception {
        assertThat(run("arrange", folder.resolve("nothing.txt").toString(), "--aircraft", "old trainer"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("cannot be read");
        Path rich = Files.writeString(folder.resolve("mail.rtf"), "{\\rtf1 loop}");
        assertThat(run("arrange", rich.toString(), "--aircraft", "old trainer")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("mail.rtf is rich text; save the list itself as plain text");
    }

    @Test
    void aDashReadsStandardInput() {
        Clock clock = Clock.fixed(Instant.parse("2027-05-02T08:00:00Z"), ZoneOffset.UTC);
        ByteArrayInputStream in = new ByteArrayInputStream("loop, slow roll".getBytes(StandardCharsets.UTF_8));
        int code = new CommandLine(new ArrangeCommand(caught.terminal(), in, clock))
                .execute("-", "--aircraft", "old trainer");
        assertThat(code).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("slow roll");
    }

    /** The log of a flight of another show: what comes back is an act of this one. */
    @Tag("slow")
    @Test
    void aFlightLogBecomesAnActOfTheFiguresFoundInIt() throws Exception {
        String demo = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";
        Show show = Objects.requireNonNull(new ShowFile().read(Path.of(demo)).show());
        Act act = show.act("jackanapes-solo").orElseThrow();
        Flight flight =
                new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        Path log = folder.resolve("flight.nmea");
        Files.write(log, FlownLog.nmea(flight, show.venue(), 2, 2, 7));
        String out = folder.resolve("found.json").toString();
        assertThat(run("arrange", "--from", log.toString(), "--aircraft", "light aerobatic biplane", "--out", out))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains(": loop", "half Cuban", "stall turn", "spin", "a line, perhaps with rolls", "Written to");
        // The time a figure took that day is no wish that the arranger could not fulfil.
        assertThat(caught.out()).contains("ask the pilot\n").doesNotContain("so it takes its usual time", "only every");
        assertThat(run("predict", out, "--flights", "2")).isEqualTo(ExitCode.FINE);
        Files.write(log, FlownLog.nmea(flight, show.venue(), 40, 2, 7));
        assertThat(run("arrange", "--from", log.toString(), "--aircraft", "light aerobatic biplane"))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("warning: the log has a place only every 4 s");
    }

    @Test
    void aLogThatHoldsNoFigureOrIsNoneIsSaidSo() throws Exception {
        Path level = folder.resolve("level.gpx");
        StringBuilder gpx = new StringBuilder("<gpx version=\"1.1\" creator=\"t\"><trk><trkseg>");
        for (int i = 0; i < 200; i++) {
            gpx.append(String.format(
                    Locale.ROOT,
                    "<trkpt lat=\"52.0\" lon=\"%.6f\"><ele>300</ele><time>2026-06-01T10:%02d:%02dZ</time></trkpt>",
                    0.0008 * i,
                    i / 60,
                    i % 60));
        }
        Files.writeString(level, gpx.append("</trkseg></trk></gpx>"));
        String[] kind = {"--aircraft", "light aerobatic biplane"};
        assertThat(run("arrange", "--from", level.toString(), kind[0], kind[1])).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).contains("no figure was found in level.gpx").doesNotContain("warning");
        Path cut = folder.resolve("cut.gpx");
        Files.writeString(cut, gpx.substring(0, gpx.length() - 60));
        assertThat(run("arrange", "--from", cut.toString(), kind[0], kind[1])).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).contains("warning: cut.gpx, the file is broken at line 1");
        String empty = Files.writeString(folder.resolve("empty.nmea"), "").toString();
        assertThat(run("arrange", "--from", empty, kind[0], kind[1])).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("empty.nmea is empty");
        assertThat(run("arrange", "--from", list(MAIL), kind[0], kind[1])).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("is not a flight log this program can read");
        assertThat(run("arrange", "--from", level.toString(), list(MAIL), kind[0], kind[1]))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("give one of the two");
        assertThat(run("arrange", kind[0], kind[1])).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("give one of the two");
        assertThat(run("arrange", "--from", level.toString(), "--aircraft", "helicopter"))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("only timed");
    }

    /** A loop every 20 s for longer than any display: three logs put together, or the wrong one. */
    @Tag("slow")
    @Test
    void aLogOfMoreThanADisplayIsRefusedInASentence() throws Exception {
        StringBuilder gpx = new StringBuilder("<gpx version=\"1.1\" creator=\"t\"><trk><trkseg>");
        double eastM = 0;
        for (int t = 0; t < 20 * 104; t++) {
            double angle = 2 * Math.PI * Math.max(0, t % 20 - 8) / 12.0;
            double east = eastM + 90 * Math.sin(angle);
            eastM += t % 20 < 8 ? 50 : 0;
            gpx.append(String.format(
                    Locale.ROOT,
                    "<trkpt lat=\"52.0\" lon=\"%.7f\"><ele>%.1f</ele><time>2026-06-01T10:%02d:%02dZ</time></trkpt>",
                    east / 68_500,
                    300 + 90 * (1 - Math.cos(angle)),
                    t / 60,
                    t % 60));
        }
        Path log = folder.resolve("all-day.gpx");
        Files.writeString(log, gpx.append("</trkseg></trk></gpx>"));
        assertThat(run("arrange", "--from", log.toString(), "--aircraft", "light aerobatic biplane"))
                .isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out())
                .contains("were found in all-day.gpx, from 0:0", "at most 100; keep only the part of the log");
    }
}
