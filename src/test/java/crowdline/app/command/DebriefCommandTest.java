package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.app.shell.MonotonicTicker;
import crowdline.flight.Workers;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.ActDurations;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.running.LiveDesk;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.speech.pace.Paces;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command on a journal as the running console writes it. */
class DebriefCommandTest {
    @TempDir
    Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();
    private Path file = Path.of("");

    @BeforeEach
    void copyTheDemo() throws Exception {
        file = folder.resolve("day.json");
        Files.copy(Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json"), file);
    }

    private int run(String... args) {
        Folders folders = new Folders(folder.resolve("config"), folder.resolve("journals"), file);
        return new CommandLine(new DebriefCommand(caught.terminal(), folders)).execute(args);
    }

    private Act flown() throws Exception {
        LoadedShow loaded = new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(file, 1)
                .loaded();
        Show show = Objects.requireNonNull(loaded).show();
        Act act = show.acts().get(0);
        List<String> ids =
                act.inOrder(act.variants().get(0)).stream().map(Figure::id).toList();
        JournalShelf shelf =
                new JournalShelf(folder.resolve("journals"), JournalMachine.here(new MonotonicTicker()), 0);
        ActDurations none = (actId, variant, figureIds) -> index -> Double.NaN;
        try (LiveDesk desk = new LiveDesk(shelf.open(JournalShow.of(file, Files.readAllBytes(file))), none)) {
            Remark call = act.figures().stream()
                    .flatMap(f -> f.remarks().stream())
                    .findFirst()
                    .orElseThrow();
            for (LiveEvent event : List.of(
                    new ShowEvent.ShowOpened(
                            0, show.title(), show.acts().stream().map(Act::id).toList()),
                    new FlightEvent.ActChosen(0, act.id(), act.variants().get(0).name(), ids, 50.0),
                    new FlightEvent.ActStarted(60),
                    new TalkEvent.RemarkSaid(62, call.id(), RemarkForm.FULL),
                    new FlightEvent.Stepped(150),
                    new FlightEvent.ActEnded(170))) {
                desk.submit(event).get(20, TimeUnit.SECONDS);
            }
        }
        return act;
    }

    @Test
    void newestJournalIsComparedWithThePlan() throws Exception {
        Act act = flown();
        Path table = folder.resolve("out.csv");

        assertThat(run(file.toString(), "--table", table.toString())).isZero();
        assertThat(caught.out())
                .contains(act.title())
                .contains("1:50 flown")
                .contains("90.0 s")
                .containsPattern("Remarks: 1 of [0-9]+ marked,")
                .containsPattern("[0-9:]+  marked  ")
                .doesNotContain("said,")
                .contains("To change:");
        assertThat(Files.readAllLines(table))
                .hasSizeGreaterThan(act.inOrder(act.variants().get(0)).size());
        assertThat(Files.readAllLines(table).get(1)).contains(",flown,").contains(",90.00,");
    }

    @Test
    void jsonHasTheRunsUnderStableKeys() throws Exception {
        flown();

        assertThat(run(file.toString(), "--json")).isZero();
        assertThat(caught.out())
                .startsWith("{")
                .contains("\"sessionZero\"", "\"debrief\"", "\"runs\"", "\"flownS\": 90", "\"fate\": \"not-flown\"")
                .contains("\"day\"", "\"duties\"", "\"talk\"", "\"slot\": \"");
    }

    @Test
    void showWithoutAJournalIsNamed() {
        assertThat(run(file.toString())).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no journal of " + file).contains("run the show in Live first");
    }

    @Test
    void withoutAShowAndWithoutOneOpenedItAsksForOne() {
        assertThat(run()).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("name one");
    }

    @Test
    void anotherDayStandsBesideItActByAct() throws Exception {
        Act act = flown();
        Path journal;
        try (var files = Files.list(folder.resolve("journals"))) {
            journal = files.filter(path -> path.toString().endsWith(".journal"))
                    .findFirst()
                    .orElseThrow();
        }
        Path lastYear = Files.copy(journal, folder.resolve("last-year.journal"));

        assertThat(run(file.toString(), "--beside", lastYear.toString())).isZero();
        assertThat(caught.out())
                .contains("this day", "other day")
                .contains(act.title().substring(0, 20))
                .containsPattern("1:50 +[0-9]+% +[0-9:]+ +1:50 +[0-9]+%");
    }

    @Test
    void anotherDayGoesIntoTheTableOfTheDayAndTheJson() throws Exception {
        Act act = flown();
        Path journal;
        try (var files = Files.list(folder.resolve("journals"))) {
            journal = files.filter(path -> path.toString().endsWith(".journal"))
                    .findFirst()
                    .orElseThrow();
        }
        Path lastYear = Files.copy(journal, folder.resolve("last-year.journal"));
        Path day = folder.resolve("day.csv");
        assertThat(run(file.toString(), "--json", "--day", day.toString(), "--beside", lastYear.toString()))
                .isZero();
        JsonNode json = new JsonMapper().readTree(caught.out());
        assertThat(json.at("/debrief/showTitle").asString()).isNotEmpty();
        assertThat(json.at("/beside/debrief/runs")).isEqualTo(json.at("/debrief/runs"));
        List<String> lines = Files.readAllLines(day);
        assertThat(lines.get(0)).isEqualTo("what,name,planned,begins,ends,lateMinutes,percent,state,day");
        assertThat(lines).anyMatch(l -> l.startsWith("act,\"" + act.title()) && l.endsWith("flown,\"this day\""));
        assertThat(lines)
                .filteredOn(l -> l.endsWith(",\"" + json.at("/beside/name").asString() + "\""))
                .hasSize((lines.size() - 1) / 2);
    }

    @Test
    void whatCannotBeComparedOfAnotherDayIsSaid() throws Exception {
        flown();
        Path journal;
        try (var files = Files.list(folder.resolve("journals"))) {
            journal = files.filter(path -> path.toString().endsWith(".journal"))
                    .findFirst()
                    .orElseThrow();
        }
        Path other = folder.resolve("other-year.journal");
        Files.writeString(other, Files.readString(journal) + "no line\n");
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("thistledown-glider", "harrow-team")
                        .replace("Fenmarsh Air Day (an invented show)", "Fenmarsh at Dusk"));

        assertThat(run(file.toString(), "--beside", other.toString())).isZero();
        assertThat(caught.out())
                .contains("Not in this show, so not compared: thistledown-glider.")
                .contains(
                        "the show was called Fenmarsh Air Day (an invented show). Acts, figures and duties are compared where")
                .contains("cannot be read and are left out: 1.");
    }

    @Test
    void whatIsNoJournalIsRefusedInASentence() throws Exception {
        flown();
        Path other = Files.writeString(folder.resolve("other.journal"), "not a journal\n");
        assertThat(run(file.toString(), "--beside", other.toString())).isEqualTo(2);
        assertThat(caught.err()).contains("is no journal; they lie in");
        assertThat(run(file.toString(), "--beside", folder.resolve("gone").toString()))
                .isEqualTo(2);
        assertThat(caught.err()).contains("cannot be read; is it still there?");
    }

    @Test
    void theDayIsWrittenAsATable() throws Exception {
        Act act = flown();
        Path day = folder.resolve("day.csv");
        assertThat(run(file.toString(), "--day", day.toString())).isZero();
        assertThat(Files.readAllLines(day).get(0)).isEqualTo("what,name,planned,begins,ends,lateMinutes,percent,state");
        assertThat(Files.readAllLines(day))
                .anyMatch(line -> line.startsWith("act,\"" + act.title()) && line.endsWith("flown"));
    }
}
