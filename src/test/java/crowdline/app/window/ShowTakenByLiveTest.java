package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.live.state.LiveState;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.show.ShowFile;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Edits of acts and figures on their way into Live, in the whole program. */
@Tag("window")
@Timeout(60)
class ShowTakenByLiveTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json");

    @TempDir
    private Path folder;

    private ConsoleOnScreen console;

    @BeforeEach
    void open() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
        console = new ConsoleOnScreen(folder, SHOW, Instant.parse("2026-05-02T12:00:00Z"));
    }

    @AfterEach
    void close() throws Exception {
        if (console != null) {
            console.close();
        }
    }

    private Show inLive() {
        return console.loaded().show();
    }

    private LiveState state() {
        return console.running().desk().snapshot().state();
    }

    private String said() throws Exception {
        return console.spoken("Messages");
    }

    private Show inFile() throws Exception {
        return Objects.requireNonNull(
                new ShowFile().read(folder.resolve(SHOW.getFileName())).show());
    }

    /** The first act without its second figure. */
    private static Show shorter(Show show) {
        Act act = show.acts().get(0);
        String gone = act.variants().get(0).order().get(1);
        List<Variant> variants = act.variants().stream()
                .map(v -> new Variant(
                        v.name(),
                        v.minCloudBaseFt(),
                        v.order().stream().filter(id -> !id.equals(gone)).toList()))
                .toList();
        List<Act> acts = new ArrayList<>(show.acts());
        acts.set(
                0,
                new Act(
                        act.id(),
                        act.title(),
                        act.performer(),
                        act.airframe(),
                        act.slotStart(),
                        act.slotMinutes(),
                        act.entry(),
                        act.figures().stream().filter(f -> !f.id().equals(gone)).toList(),
                        variants,
                        act.remarks()));
        return show.withActs(acts, show.remarks());
    }

    private static Show withoutFirstAct(Show show) {
        return show.withActs(show.acts().subList(1, show.acts().size()), show.remarks());
    }

    @Test
    void anActThatWaitsIsChosenAnewWithItsFiguresAsEdited() throws Exception {
        console.edit("Delete a figure", ShowTakenByLiveTest::shorter);
        Show edited = console.edited();
        List<String> before = state().course().figureIds();
        console.give("ctrl L");
        console.await("Live has it", () -> console.runs(edited));
        console.await(
                "the act is chosen anew",
                () -> state().course()
                        .figureIds()
                        .equals(edited.acts().get(0).variants().get(0).order()));
        assertThat(state().course().figureIds()).hasSize(before.size() - 1);
        assertThat(inFile()).isEqualTo(edited);
        console.press("F5");
        console.press("SPACE");
        console.await("the act is flown", () -> state().course().inTheAir());
    }

    @Test
    void anActInTheAirKeepsItsFiguresUntilItIsOverAndTheJournalGoesOn() throws Exception {
        console.press("SPACE");
        console.await("the act is flown", () -> state().course().inTheAir());
        Show before = inLive();
        console.edit("Delete a figure", ShowTakenByLiveTest::shorter);
        Show edited = console.edited();
        console.give("ctrl L");
        console.await("it is said", () -> said().contains("Saved, but an act is in the air"));
        assertThat(inLive()).isEqualTo(before);
        assertThat(inFile()).isEqualTo(edited);
        assertThat(state().course().inTheAir()).isTrue();
        console.at(console.nowS() + 5);
        console.press("E");
        console.await("the act is over", () -> !state().course().inTheAir());
        int flown = state().course().flownActs().size();
        assertThat(flown).isEqualTo(1);
        console.give("ctrl L");
        console.await("Live has it", () -> console.runs(edited));
        assertThat(state().course().flownActs()).hasSize(1);
    }

    @Test
    void anActThatWasFlownMayBeDeletedAndItsDebriefIsStillThere() throws Exception {
        console.press("SPACE");
        console.at(console.nowS() + 5);
        console.press("E");
        console.await("the act is over", () -> !state().course().inTheAir());
        console.edit("Delete the act", ShowTakenByLiveTest::withoutFirstAct);
        Show edited = console.edited();
        console.give("ctrl L");
        console.await("Live has it", () -> console.runs(edited));
        console.await("the next act is chosen", () -> edited.acts().get(0).id().equals(state().actId()));
        assertThat(state().course().flownActs()).hasSize(1);
        console.press("F6");
        console.press("F5");
        assertThat(console.shows("Next")).isTrue();
    }
}
