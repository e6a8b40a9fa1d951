package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.Source;
import crowdline.live.state.Flown;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Note;
import crowdline.live.state.Sequence;
import crowdline.loaded.PassIds;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.passes.PassesFile;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LivePassesTest {
    private static final Instant ZERO = Instant.parse("2030-06-01T12:00:00Z");

    @TempDir
    private Path folder;

    private final PassIds ids =
            new PassIds(Clock.fixed(ZERO.plusSeconds(900), ZoneOffset.UTC), new AtomicInteger()::incrementAndGet);

    private PassesFile file() {
        return new PassesFile(folder.resolve("day.json"), folder.resolve("state"));
    }

    private List<Pass> passes() throws ShowFileException {
        return file().read().passes();
    }

    private static FlownAct act(double endedAtS, Source mark) {
        return new FlownAct(
                "dawn",
                "full",
                Sequence.planned(List.of("a", "b"), List.of()),
                100,
                endedAtS,
                List.of(new Flown("a", 100, 0, 112.0, Source.HAND), new Flown("b", 112, 0, endedAtS, mark)));
    }

    @Test
    void actThatIsOverIsKeptOnce() throws Exception {
        LivePasses live = new LivePasses(file(), ids, pass -> Optional.empty());
        assertThat(live.isNews(List.of(), List.of())).isFalse();
        assertThat(live.isNews(List.of(act(130, Source.HAND)), List.of())).isTrue();
        assertThat(live.isNews(List.of(act(130, Source.HAND)), List.of())).isFalse();
        assertThat(live.keep(List.of(act(130, Source.HAND)), List.of(), ZERO)).isEmpty();
        live.keep(List.of(act(130, Source.HAND)), List.of(), ZERO);
        assertThat(passes()).hasSize(1);
        Pass pass = passes().get(0);
        assertThat(pass.how()).isEqualTo(Pass.How.LIVE);
        assertThat(pass.begunAt()).isEqualTo(ZERO.plusSeconds(100));
        assertThat(pass.figures()).containsExactly(new Pass.TimedFigure("a", 0, 12), new Pass.TimedFigure("b", 12, 30));
    }

    @Test
    void showThatGoesOnAfterItWasKilledKeepsItOnce() throws Exception {
        new LivePasses(file(), ids, pass -> Optional.empty()).keep(List.of(act(130, Source.HAND)), List.of(), ZERO);
        new LivePasses(file(), ids, pass -> Optional.empty())
                .keep(List.of(act(130, Source.HAND)), List.of(), ZERO.plusMillis(3));
        assertThat(passes()).hasSize(1);
    }

    @Test
    void wordsThatAreFinishedAfterTheActStayWithItsPass() throws Exception {
        LivePasses live = new LivePasses(file(), ids, pass -> Optional.empty());
        List<FlownAct> acts = List.of(act(130, Source.HAND));
        List<Note> marked = List.of(new Note(121, "", "dawn", "b"));
        List<Note> written = List.of(new Note(121, "smoke on late", "dawn", "b"));
        assertThat(live.isNews(acts, marked)).isTrue();
        live.keep(acts, marked, ZERO);
        assertThat(passes()).extracting(Pass::note).containsExactly("0:21 noted");
        assertThat(live.isNews(acts, written)).isTrue();
        assertThat(live.isNews(acts, written)).isFalse();
        live.keep(acts, written, ZERO);
        assertThat(passes()).extracting(Pass::note).containsExactly("0:21 smoke on late");

        file().note(passes().get(0).id(), "my own words", ids.now());
        live.keep(acts, List.of(), ZERO);
        assertThat(passes())
                .extracting(Pass::note)
                .as("what somebody wrote stays")
                .containsExactly("my own words");
    }

    @Test
    void endThatWasTakenBackCountsNoMoreAndStaysInTheFile() throws Exception {
        LivePasses live = new LivePasses(file(), ids, pass -> Optional.empty());
        live.keep(List.of(act(125, Source.HAND)), List.of(), ZERO);
        live.keep(List.of(act(131, Source.HAND)), List.of(), ZERO);
        assertThat(passes()).hasSize(2);
        assertThat(passes().get(0).counts()).isFalse();
        assertThat(passes().get(0).note()).isEqualTo("its end was taken back");
        assertThat(passes().get(1).counts()).isTrue();
    }

    @Test
    void actThatTheClockMovedLeavesNoPass() throws Exception {
        FlownAct byClock = new FlownAct(
                "dawn",
                "full",
                Sequence.planned(List.of("a", "b"), List.of()),
                100,
                130,
                List.of(new Flown("a", 100, 0, 112.0, Source.HAND), new Flown("b", 112, 0, 130.0, Source.CLOCK)));
        new LivePasses(file(), ids, pass -> Optional.empty()).keep(List.of(byClock), List.of(), ZERO);
        assertThat(passes()).isEmpty();
    }

    @Test
    void whatIsHardlyAFlightIsKeptAndDoesNotCount() throws Exception {
        LivePasses live = new LivePasses(file(), ids, pass -> Optional.of("it was windy"));

        assertThat(live.keep(List.of(act(130, Source.HAND)), List.of(), ZERO))
                .get()
                .asString()
                .contains("kept, but not counted: it was windy.");
        assertThat(passes())
                .singleElement()
                .satisfies(pass -> assertThat(pass.counts()).isFalse());
        assertThat(live.keep(List.of(act(130, Source.HAND)), List.of(), ZERO))
                .as("said once")
                .isEmpty();
    }
}
